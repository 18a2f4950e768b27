package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import java.util.ArrayList;
import java.util.List;

/** Irradiance that the sun cannot make, once it is known where the sun stands. */
final class LightChecks {

    /**
     * A month this bright has direct light: by the monthly split of Erbs, Klein and Duffie 1982 (from memory) two fifths
     * and more.
     */
    private static final double BRIGHT_MONTH = 0.4;

    private LightChecks() {}

    /** What the hour of the sun decides is left alone where a user insists on it against the file. */
    static void check(HourTable table, SunPath sun, boolean insisted, Findings findings) throws Refusal {
        BrightestDay.check(table, sun, findings);
        LostGlobal.check(table, sun, insisted, findings);
        Darkness.check(table, sun, insisted, findings);
        monthsWithoutDirect(table, new LightOutside(table, sun), findings);
        StillLight.check(table, WeatherColumn.GLOBAL, sun, findings);
        StillLight.check(table, WeatherColumn.DIFFUSE, sun, findings);
    }

    /**
     * Those that need no whole year, of a record. Daylight without light was taken out of it before ({@link DarkStation}),
     * and what a month should have of direct light is not asked of parts of months.
     */
    static void checkRecord(HourTable table, SunPath sun, boolean insisted, Findings findings) throws Refusal {
        BrightestDay.check(table, sun, findings);
        LostGlobal.check(table, sun, insisted, findings);
        StillLight.check(table, WeatherColumn.GLOBAL, sun, findings);
        StillLight.check(table, WeatherColumn.DIFFUSE, sun, findings);
    }

    private static void monthsWithoutDirect(HourTable table, LightOutside outside, Findings findings) {
        double[] direct = table.column(WeatherColumn.DIRECT);
        List<Integer> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            int start = HourOfYear.firstHourOf(month);
            int end = HourOfYear.firstHourOf(month + 1);
            double beam = 0;
            for (int hour = start; hour < end; hour++) {
                beam += Double.isNaN(direct[hour]) ? 0 : direct[hour];
            }
            if (beam == 0 && outside.clearness(start, end) > BRIGHT_MONTH) {
                months.add(month);
            }
        }
        if (!months.isEmpty()) {
            findings.warning(
                    0,
                    0,
                    "no direct irradiance in all of " + ClockWords.months(months) + ", though more than "
                            + Occurrences.number(BRIGHT_MONTH)
                            + " of the light outside the atmosphere arrives: kept, but"
                            + " tilted collectors come out wrong; was global taken for diffuse?");
        }
    }
}
