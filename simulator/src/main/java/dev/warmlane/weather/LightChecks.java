package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Irradiance that the sun cannot make, once it is known where the sun stands. */
final class LightChecks {

    /**
     * Share of the light outside the atmosphere that the brightest day of a year has on the ground. In seven published
     * years it is 0.70 to 0.80; a cloudless sky lets 0.6 and more through, and even clean dry air, which scatters and
     * absorbs alone, little more than 0.85 (own choice within these). More than 1 is more light than arrives.
     */
    private static final double BRIGHTEST_DAY_REFUSED_BELOW = 0.3;

    private static final double BRIGHTEST_DAY_AT_LEAST = 0.45;
    private static final double BRIGHTEST_DAY_AT_MOST = 0.85;
    private static final double BRIGHTEST_DAY_REFUSED_ABOVE = 1;
    /** Days with less light outside the atmosphere tell little, Wh/m². */
    private static final double DAY_FROM_WH = 2000;

    /** The sun 6 degrees up; 0.5 W/m² is then 0.4 % of the light outside the atmosphere. */
    private static final double HIGH_SUN = 0.1;
    /**
     * What rounds to nothing, W/m². Thick cloud lets about 1/(1 + 0.11 τ) through (two streams, asymmetry 0.85): 0.4 %
     * asks for an optical thickness τ of 2,000, and thunderclouds have some hundreds.
     */
    private static final double NO_LIGHT_WM2 = 0.5;
    /** The longest in a generated year is two hours. */
    private static final int DARK_HOURS_AT_MOST = 3;
    /** A published year from satellites has 39 in May; three long days (own choice). */
    private static final int DARK_HOURS_OF_A_SATELLITE = 45;

    /** Direct and diffuse make so much more than a global irradiance of next to nothing: it is not of this hour, W/m². */
    private static final double CONTRADICTION_WM2 = 40;

    /**
     * A month this bright has direct light: by the monthly split of Erbs, Klein and Duffie 1982 (from memory) two fifths
     * and more.
     */
    private static final double BRIGHT_MONTH = 0.4;

    /** The longest in seven published years is 3 hours. */
    private static final int STILL_HOURS = 6;
    /** Of the cosine of the zenith angle: an hour or two of a day's course. */
    private static final double STILL_SUN = 0.2;

    private final HourTable table;
    private final SunPath sun;
    private final Findings findings;
    private final double[] global;
    private final double[] direct;
    private final double[] diffuse;

    private LightChecks(HourTable table, SunPath sun, Findings findings) {
        this.table = table;
        this.sun = sun;
        this.findings = findings;
        this.global = table.column(WeatherColumn.GLOBAL);
        this.direct = table.column(WeatherColumn.DIRECT);
        this.diffuse = table.column(WeatherColumn.DIFFUSE);
    }

    /** What the hour of the sun decides is left alone where a user insists on it against the file. */
    static void check(HourTable table, SunPath sun, boolean insisted, Findings findings) throws Refusal {
        LightChecks checks = new LightChecks(table, sun, findings);
        checks.brightestDay();
        if (!insisted) {
            checks.contradictions();
            checks.darkness();
        }
        checks.monthsWithoutDirect();
        checks.standstill(WeatherColumn.GLOBAL);
        checks.standstill(WeatherColumn.DIFFUSE);
    }

    private void brightestDay() throws Refusal {
        double brightest = Double.NaN;
        int firstHour = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 24) {
            if (outside(hour, hour + 24) > DAY_FROM_WH) {
                double share = clearness(hour, hour + 24);
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
                HourOfYear.label(firstHour).substring(0, 5));
        if (brightest < BRIGHTEST_DAY_REFUSED_BELOW || brightest > BRIGHTEST_DAY_REFUSED_ABOVE) {
            throw table.refuse(
                    firstHour,
                    WeatherColumn.GLOBAL.label(),
                    found,
                    Occurrences.number(BRIGHTEST_DAY_AT_LEAST) + " to " + Occurrences.number(BRIGHTEST_DAY_AT_MOST),
                    UnitGuess.ofClearness(brightest) + " Correct the columns of irradiance to W/m².");
        }
        if (brightest < BRIGHTEST_DAY_AT_LEAST || brightest > BRIGHTEST_DAY_AT_MOST) {
            findings.warning(
                    table.line[firstHour],
                    0,
                    "global irradiance has " + found + ", but " + Occurrences.number(BRIGHTEST_DAY_AT_LEAST) + " to "
                            + Occurrences.number(BRIGHTEST_DAY_AT_MOST) + " is usual: kept; "
                            + "is irradiance in another unit, or scaled?");
        }
    }

    /** Next to no global irradiance beside strong direct: neither is believed. */
    private void contradictions() throws Refusal {
        Occurrences lost = new Occurrences(table);
        int[] hours =
                IntStream.range(0, HourOfYear.HOURS).filter(this::contradicts).toArray();
        int run = 0;
        int longest = 0;
        for (int i = 0; i < hours.length; i++) {
            lost.add(hours[i], global[hours[i]]);
            run = i > 0 && hours[i] == hours[i - 1] + 1 ? run + 1 : 1;
            longest = Math.max(longest, run);
        }
        if (hours.length == 0) {
            return;
        }
        String beside = lost.first() + " W/m² beside direct " + Occurrences.number(direct[hours[0]]) + " and diffuse "
                + Occurrences.number(diffuse[hours[0]]);
        if (longest > IrradianceRepair.DAY_GAP_AT_MOST || hours.length > GapFiller.MISSING_AT_MOST) {
            throw table.refuse(
                    hours[0],
                    WeatherColumn.GLOBAL.label(),
                    beside + ", and the like in " + hours.length + " hours",
                    "diffuse plus direct times the cosine of the sun's zenith angle",
                    "A column lost its values: correct it, or fetch the file again.");
        }
        for (int hour : hours) {
            table.throwOut(WeatherColumn.GLOBAL, hour);
            table.throwOut(WeatherColumn.DIRECT, hour);
            table.throwOut(WeatherColumn.DIFFUSE, hour);
        }
        findings.repair(
                lost,
                "global irradiance contradicts direct and diffuse " + lost.places() + " (" + beside
                        + " first): all three taken as missing and filled");
    }

    private boolean contradicts(int hour) {
        double parts = diffuse[hour] + direct[hour] * sun.cosZenith(hour);
        return global[hour] <= ClosureScan.GLOBAL_ABOVE_WM2 && parts - global[hour] > CONTRADICTION_WM2;
    }

    /** No light for hours on end while the sun is up: told, and refused where it is much of the year. */
    private void darkness() throws Refusal {
        int[] up = IntStream.range(0, HourOfYear.HOURS)
                .filter(hour -> sun.cosZenith(hour) >= HIGH_SUN)
                .toArray();
        Occurrences dark = new Occurrences(table);
        int longest = 0;
        int longestFrom = 0;
        int start = 0;
        for (int i = 0; i <= up.length; i++) {
            if (i < up.length && global[up[i]] < NO_LIGHT_WM2) {
                continue;
            }
            int length = i - start;
            for (int d = start; length > DARK_HOURS_AT_MOST && d < i; d++) {
                dark.add(up[d], global[up[d]]);
            }
            if (length > longest) {
                longest = length;
                longestFrom = up[start];
            }
            start = i + 1;
        }
        if (dark.count() == 0) {
            return;
        }
        String found = "no light for " + longest + " hours of daylight on end from " + HourOfYear.label(longestFrom)
                + (dark.count() > longest ? ", and " + dark.count() + " such hours in all" : "");
        if (dark.count() * 20 > up.length) {
            throw table.refuse(
                    longestFrom,
                    WeatherColumn.GLOBAL.label(),
                    found,
                    "some light under any cloud",
                    "The values were lost: fetch the file again, or another one.");
        }
        findings.add(
                longest > DARK_HOURS_OF_A_SATELLITE ? Kind.WARNING : Kind.NOTE,
                dark,
                found + " (" + table.at(longestFrom) + "): kept, but no cloud is so dark; values were lost, or a"
                        + " satellite took thick cloud for night");
    }

    /** One value for hours while the sun moves; at night and near the pole there is nothing to see. */
    private void standstill(WeatherColumn column) {
        double[] values = table.column(column);
        Occurrences still = new Occurrences(table);
        int start = 0;
        for (int hour = 1; hour <= values.length; hour++) {
            if (hour < values.length && values[hour] == values[start]) {
                continue;
            }
            if (values[start] > 0 && hour - start >= STILL_HOURS && sunMoves(start, hour)) {
                for (int h = start; h < hour; h++) {
                    still.add(h, values[h]);
                }
            }
            start = hour;
        }
        findings.warning(
                still,
                column.label() + " stands still while the sun moves " + still.places() + " (" + still.first()
                        + " W/m² first): kept, but hardly measured");
    }

    private boolean sunMoves(int start, int end) {
        DoubleSummaryStatistics height =
                IntStream.range(start, end).mapToDouble(sun::cosZenith).summaryStatistics();
        return height.getMax() - height.getMin() > STILL_SUN;
    }

    private void monthsWithoutDirect() {
        List<String> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            int start = HourOfYear.firstHourOf(month);
            int end = HourOfYear.firstHourOf(month + 1);
            double beam = 0;
            for (int hour = start; hour < end; hour++) {
                beam += Double.isNaN(direct[hour]) ? 0 : direct[hour];
            }
            if (beam == 0 && clearness(start, end) > BRIGHT_MONTH) {
                months.add(Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH));
            }
        }
        if (!months.isEmpty()) {
            findings.warning(
                    0,
                    0,
                    "no direct irradiance in all of " + String.join(", ", months) + ", though more than "
                            + Occurrences.number(BRIGHT_MONTH)
                            + " of the light outside the atmosphere arrives: kept, but"
                            + " tilted collectors come out wrong; was global taken for diffuse?");
        }
    }

    private double clearness(int start, int end) {
        double measured = 0;
        for (int hour = start; hour < end; hour++) {
            measured += Double.isNaN(global[hour]) ? 0 : global[hour];
        }
        return measured / outside(start, end);
    }

    /** On the horizontal, Wh/m². */
    private double outside(int start, int end) {
        double sum = 0;
        for (int hour = start; hour < end; hour++) {
            sum += sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
        }
        return sum;
    }
}
