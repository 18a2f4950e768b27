package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.time.DateTimeException;

/** Puts the rows of a file into the 8760 hours of a typical year in local standard time, by their labels. */
final class TimeResolver {

    /** Beyond this the file is another kind of file, not a year with gaps. */
    private static final int MISSING_ROWS_AT_MOST = 438;

    private static final int FIRST_YEAR = 1800;
    private static final int LAST_YEAR = 2300;

    private TimeResolver() {}

    static HourTable resolve(RawWeather raw, WeatherReadOptions options, Findings findings)
            throws WeatherFileException {
        RawHeader header = raw.header();
        Double given = options.utcOffsetHours();
        double offset = given != null
                ? given
                : header.utc()
                        ? Math.round(header.site().longitudeDeg() / 15)
                        : header.site().utcOffsetHours();
        Site stated = header.site();
        Site site = new Site(stated.name(), stated.latitudeDeg(), stated.longitudeDeg(), stated.elevationM(), offset);
        int roll = 0;
        double part = 0;
        if (header.utc()) {
            roll = (int) Math.floor(offset);
            part = offset - roll;
            findings.note(
                    header.siteLine(),
                    0,
                    "the file is in UTC; it was rolled to local standard time " + ClockWords.utc(offset)
                            + (given == null
                                    ? ", which goes with the longitude; if the place keeps another, "
                                            + Advice.UTC_OFFSET
                                    : ", as given"));
        } else if (given != null && given != stated.utcOffsetHours()) {
            findings.note(
                    header.siteLine(),
                    0,
                    "the header says " + ClockWords.utc(stated.utcOffsetHours()) + "; " + ClockWords.utc(offset)
                            + " is used, as given");
        }
        HourTable table =
                new HourTable(header, raw.codes(), site, header.centreHours() + part, header.labelHours() + part);
        place(raw, table, roll, findings);
        return table;
    }

    private static void place(RawWeather raw, HourTable table, int roll, Findings findings)
            throws WeatherFileException {
        FileText text = raw.text();
        int leapHours = 0;
        int leapLine = 0;
        int placed = 0;
        int previous = -1;
        int backwards = 0;
        int backwardsLine = 0;
        WeatherColumn[] columns = WeatherColumn.values();
        for (int row = 0; row < raw.rows(); row++) {
            int line = raw.line(row);
            if (raw.month(row) == 2 && raw.day(row) == 29) {
                leapLine = leapHours++ == 0 ? line : leapLine;
                continue;
            }
            int atStamp = hour(raw, row);
            int hour = Math.floorMod(atStamp + roll, HourOfYear.HOURS);
            if (table.line[hour] != 0) {
                throw text.error(
                        line,
                        "",
                        "the hour " + HourOfYear.label(hour) + " a second time, first on line " + table.line[hour],
                        "every hour of the year once",
                        "Remove one of the two; a change to daylight saving time doubles an hour.");
            }
            table.line[hour] = line;
            table.year[hour] = year(raw, row) + Math.floorDiv(atStamp + roll, HourOfYear.HOURS);
            for (WeatherColumn column : columns) {
                table.column(column)[hour] = raw.value(column, row);
            }
            if (placed > 0 && atStamp < previous) {
                backwards++;
                backwardsLine = line;
            }
            previous = atStamp;
            placed++;
        }
        int missing = HourOfYear.HOURS - placed;
        if (missing > MISSING_ROWS_AT_MOST) {
            throw text.error(
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
                    leapHours + " hours of 29 February were left out: a typical year has 365 days");
        }
        if (backwards > 1) {
            findings.warning(
                    backwardsLine,
                    backwards,
                    "the rows are not in the order of time; they were placed by their labels");
        }
        if (missing > 0) {
            nameMissingRows(table, missing, findings);
        }
    }

    private static void nameMissingRows(HourTable table, int missing, Findings findings) {
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

    private static int hour(RawWeather raw, int row) throws WeatherFileException {
        try {
            return HourOfYear.of(raw.month(row), raw.day(row), raw.hour(row));
        } catch (DateTimeException e) {
            throw raw.text()
                    .error(
                            raw.line(row),
                            "date and hour",
                            "month " + raw.month(row) + ", day " + raw.day(row) + ", hour "
                                    + Occurrences.number(
                                            raw.hour(row) + raw.header().labelHours()),
                            raw.header().labelHours() > 0
                                    ? "a date of the year and an hour of 1 to 24"
                                    : "a date of the year and an hour of 0 to 23",
                            "Correct the row.");
        }
    }

    private static int year(RawWeather raw, int row) throws WeatherFileException {
        int year = raw.year(row);
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw raw.text()
                    .error(
                            raw.line(row),
                            "year",
                            Integer.toString(year),
                            FIRST_YEAR + " to " + LAST_YEAR,
                            "Correct the year: the sun's position is taken for it.");
        }
        return year;
    }
}
