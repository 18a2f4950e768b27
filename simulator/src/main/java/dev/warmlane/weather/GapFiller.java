package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;

/** Fills short gaps by straight lines and refuses long ones. How long is short is our own judgement. */
final class GapFiller {

    /** Six hours at most: a straight line over more than a quarter of a day loses the day's rhythm. */
    private static final int GAP_AT_MOST = 6;

    /** One value in twenty at most. */
    static final int MISSING_AT_MOST = HourOfYear.HOURS / 20;

    private GapFiller() {}

    static void fill(HourTable table, WeatherColumn column, Findings findings) throws Refusal {
        double[] values = table.column(column);
        if (table.isEmpty(column)) {
            throw tooLong(table, column, 0, HourOfYear.HOURS);
        }
        Occurrences missing = new Occurrences(table);
        Occurrences untold = new Occurrences(table);
        Occurrences impossible = new Occurrences(table);
        int known = 0;
        while (Double.isNaN(values[known])) {
            known++;
        }
        // once round the year from a known hour, so that a gap may cross New Year
        int last = known;
        for (int step = 1; step <= HourOfYear.HOURS; step++) {
            int hour = (known + step) % HourOfYear.HOURS;
            if (Double.isNaN(values[hour])) {
                missing.add(hour, Double.NaN);
                if (!table.isTold(column, hour)) {
                    untold.add(hour, Double.NaN);
                }
                note(table, column, hour, impossible);
                continue;
            }
            int gap = Math.floorMod(hour - last, HourOfYear.HOURS) - 1;
            if (gap > GAP_AT_MOST) {
                int first = (last + 1) % HourOfYear.HOURS;
                throw tooLong(table, column, first, gap);
            }
            for (int i = 1; i <= gap; i++) {
                values[(last + i) % HourOfYear.HOURS] = values[last] + (values[hour] - values[last]) * i / (gap + 1);
            }
            last = hour;
        }
        if (missing.count() > MISSING_AT_MOST) {
            throw table.refuse(
                    missing.firstHour(),
                    column.label(),
                    missing.count() + " missing values" + told(table, column, impossible),
                    "at most " + MISSING_AT_MOST + " in the year",
                    Refusal.sentence(table.remedy()));
        }
        if (untold.count() > 0) {
            findings.repair(
                    untold,
                    "missing " + column.label() + " " + untold.places() + ": filled by straight lines over gaps of at"
                            + " most " + GAP_AT_MOST + " hours");
        }
    }

    static Refusal tooLong(HourTable table, WeatherColumn column, int firstHour, int gap) {
        Occurrences impossible = new Occurrences(table);
        for (int i = 0; i < gap; i++) {
            note(table, column, (firstHour + i) % HourOfYear.HOURS, impossible);
        }
        return table.refuse(
                firstHour,
                column.label(),
                gap + " hours in a row without a value from " + HourOfYear.label(firstHour)
                        + told(table, column, impossible),
                "gaps of at most " + GAP_AT_MOST + " hours (3 in daylight for irradiance)",
                impossible.count() > 0
                        ? "Check the column's unit: " + table.remedy() + "."
                        : "Fill the gap from a neighbouring station, or " + table.remedy() + ".");
    }

    private static void note(HourTable table, WeatherColumn column, int hour, Occurrences impossible) {
        double value = table.thrownOut(column, hour);
        if (!Double.isNaN(value)) {
            impossible.add(hour, value);
        }
    }

    /** What was there before it was taken out. */
    private static String told(HourTable table, WeatherColumn column, Occurrences impossible) {
        return impossible.count() == 0
                ? ""
                : "; " + impossible.count() + " of them were thrown out because they cannot be, " + impossible.first()
                        + " " + column.unit() + " first " + table.on(impossible.firstHour()) + " (" + column.range()
                        + " can be, no jumps)";
    }
}
