package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;

/** The rows of one year of a file while they are put into its hours, and what is to be said of them. */
final class YearRows {

    /** Beyond this the file is another kind of file, not a year with gaps. */
    private static final int MISSING_ROWS_AT_MOST = 438;

    private final RawWeather raw;
    private final HourTable table;
    private int leapHours;
    private int leapLine;
    private int placed;
    private int previous = -1;
    private int backwards;
    private int backwardsLine;

    YearRows(RawWeather raw, HourTable table) {
        this.raw = raw;
        this.table = table;
    }

    void leaveOutLeapHour(int row) {
        leapLine = leapHours++ == 0 ? raw.line(row) : leapLine;
    }

    /**
     * Puts a row into an hour.
     *
     * @param year the calendar year that the sun is taken for
     * @param atStamp the hour of the row's own stamp, by which rows should be in order
     */
    void place(int row, int hour, int year, int atStamp) throws WeatherFileException {
        int line = raw.line(row);
        if (table.line[hour] != 0) {
            throw twice(hour, year, line);
        }
        table.line[hour] = line;
        table.year[hour] = year;
        for (WeatherColumn column : WeatherColumn.values()) {
            table.column(column)[hour] = raw.value(column, row);
        }
        if (placed > 0 && atStamp < previous) {
            backwards++;
            backwardsLine = line;
        }
        previous = atStamp;
        placed++;
    }

    private WeatherFileException twice(int hour, int year, int line) {
        String found = "the hour " + HourOfYear.label(hour) + " a second time, first on line " + table.line[hour];
        if (table.year[hour] != year) {
            return raw.text()
                    .error(
                            line,
                            "",
                            found + ": of the years " + table.year[hour] + " and " + year,
                            "one year",
                            "A file of several real years is read where years are asked for; for one season give a file of"
                                    + " one of them, or a typical year. The command weather shows them all with --years.");
        }
        return raw.text()
                .error(
                        line,
                        "",
                        found,
                        "every hour of the year once",
                        "Remove one of the two; a change to daylight saving time doubles an hour.");
    }

    /** The table of the year, with its missing rows named. */
    HourTable finish(Findings findings) throws WeatherFileException {
        int missing = HourOfYear.HOURS - placed;
        if (missing > MISSING_ROWS_AT_MOST) {
            throw raw.text()
                    .error(
                            0,
                            "",
                            placed + " hourly rows; " + new MissingHours(table.line).told(),
                            "8760, one for every hour of a year",
                            "Fetch a typical year, whole and hourly.");
        }
        if (leapHours > 0) {
            findings.repair(
                    leapLine,
                    leapHours,
                    leapHours + " hours of 29 February were left out: a year has 365 days here, as a typical one has");
        }
        if (backwards > 1) {
            findings.warning(
                    backwardsLine,
                    backwards,
                    "the rows are not in the order of time; they were placed by their labels");
        }
        if (missing > 0) {
            nameMissingRows(missing, findings);
        }
        return table;
    }

    private void nameMissingRows(int missing, Findings findings) {
        MissingHours hours = new MissingHours(table.line);
        int first = hours.first();
        String which = hours.told();
        int before = 0;
        int year = 0;
        for (int hour = HourOfYear.HOURS - 1; year == 0; hour--) {
            year = table.year[hour];
        }
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (table.line[hour] == 0) {
                table.withoutRow.set(hour);
                table.line[hour] = Math.max(before, 1);
                table.year[hour] = year;
            } else {
                before = table.line[hour];
                year = table.year[hour];
            }
        }
        findings.repair(
                table.line[first],
                missing,
                (missing == 1 ? "a row is missing, after line " : missing + " rows are missing, the first after line ")
                        + table.line[first] + ": " + which + "; filled from the hours before and after");
    }
}
