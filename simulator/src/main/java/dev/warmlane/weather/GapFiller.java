package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;

/** Fills short gaps by straight lines and refuses long ones. How long is short is our own judgement. */
final class GapFiller {

    /** Six hours at most: a straight line over more than a quarter of a day loses the day's rhythm. */
    private static final int GAP_AT_MOST = 6;

    /** One value in twenty at most. */
    private static final int MISSING_AT_MOST = HourOfYear.HOURS / 20;

    private GapFiller() {}

    static void fill(HourTable table, WeatherColumn column, Findings findings) throws WeatherFileException {
        double[] values = table.column(column);
        Occurrences filled = new Occurrences();
        int known = 0;
        while (Double.isNaN(values[known])) {
            known++;
        }
        // once round the year from a known hour, so that a gap may cross New Year
        int last = known;
        for (int step = 1; step <= HourOfYear.HOURS; step++) {
            int hour = (known + step) % HourOfYear.HOURS;
            if (Double.isNaN(values[hour])) {
                filled.add(table.line[hour], Double.NaN);
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
        if (filled.count() > MISSING_AT_MOST) {
            throw table.text.error(
                    filled.firstLine(),
                    column.label(),
                    filled.count() + " missing values",
                    "at most " + MISSING_AT_MOST + " in the year",
                    "Fetch a file that is complete.");
        }
        if (filled.count() > 0) {
            findings.repair(
                    filled.firstLine(),
                    filled.count(),
                    "missing " + column.label() + " on " + filled.lines() + ": filled by straight lines over gaps of at"
                            + " most " + GAP_AT_MOST + " hours");
        }
    }

    static WeatherFileException tooLong(HourTable table, WeatherColumn column, int firstHour, int gap) {
        return table.text.error(
                table.line[firstHour],
                column.label(),
                gap + " hours in a row without a value from " + HourOfYear.label(firstHour),
                "gaps of at most " + GAP_AT_MOST + " hours (3 in daylight for irradiance)",
                "Fill the gap from a neighbouring station, or fetch a complete file.");
    }
}
