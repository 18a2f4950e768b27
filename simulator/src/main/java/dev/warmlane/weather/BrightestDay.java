package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.util.Locale;

/**
 * A year has a cloudless day: what arrives on it shows irradiance in another unit, or scaled. A record of fewer days than
 * {@link #CLOUDLESS_FROM_DAYS} may have none, and is asked only for more light than can arrive, or next to none.
 */
final class BrightestDay {

    /**
     * Share of the light outside the atmosphere that the brightest day of a year has on the ground. In seven published
     * years it is 0.70 to 0.80; a cloudless sky lets 0.6 and more through, and even clean dry air, which scatters and
     * absorbs alone, little more than 0.85 (own choice within these). More than 1 is more light than arrives.
     */
    private static final double REFUSED_BELOW = 0.3;

    private static final double AT_LEAST = 0.45;
    private static final double AT_MOST = 0.85;
    private static final double REFUSED_ABOVE = 1;
    /** Days with less light outside the atmosphere tell little, Wh/m² (own choice). */
    private static final double DAY_FROM_WH = 2000;

    /** Nearly a year, so that its clear season is among them (own choice). */
    private static final int CLOUDLESS_FROM_DAYS = 300;

    private BrightestDay() {}

    static void check(HourTable table, SunPath sun, Findings findings) throws Refusal {
        LightOutside outside = new LightOutside(table, sun);
        double brightest = Double.NaN;
        int firstHour = 0;
        int midnight = Math.floorMod(-table.hours().ofDay(0), 24);
        for (int hour = midnight; hour + 24 <= table.hours().count(); hour += 24) {
            if (outside.wh(hour, hour + 24) > DAY_FROM_WH) {
                double share = outside.clearness(hour, hour + 24);
                if (!(share <= brightest)) {
                    brightest = share;
                    firstHour = hour;
                }
            }
        }
        String found = String.format(
                Locale.ROOT,
                "%.3f of the light outside the atmosphere on the brightest day, %s",
                brightest,
                day(table, firstHour));
        boolean cloudless = table.hours().count() >= 24 * CLOUDLESS_FROM_DAYS;
        if (brightest < (cloudless ? REFUSED_BELOW : UnitGuess.KILOWATTS_BELOW) || brightest > REFUSED_ABOVE) {
            throw table.refuse(
                    firstHour,
                    WeatherColumn.GLOBAL.label(),
                    found,
                    Occurrences.number(AT_LEAST) + " to " + Occurrences.number(AT_MOST),
                    UnitGuess.ofClearness(brightest) + " Correct the columns of irradiance to W/m².");
        }
        if ((cloudless && brightest < AT_LEAST) || brightest > AT_MOST) {
            findings.warning(
                    table.line[firstHour],
                    0,
                    "global irradiance has " + found + ", but " + Occurrences.number(AT_LEAST) + " to "
                            + Occurrences.number(AT_MOST) + " is usual: kept; "
                            + "is irradiance in another unit, or scaled?");
        }
    }

    /** A label without its time of day. */
    private static String day(HourTable table, int hour) {
        String label = table.hours().label(hour);
        return label.substring(0, label.length() - " 00:00".length());
    }
}
