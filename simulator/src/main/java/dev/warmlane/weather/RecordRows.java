package dev.warmlane.weather;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/** Puts the rows of a file into the hours of a record, one after another. */
final class RecordRows {

    private final HourTable table;
    private final LocalDateTime start;

    private RecordRows(HourTable table, LocalDateTime start) {
        this.table = table;
        this.start = start;
    }

    HourTable table() {
        return table;
    }

    LocalDateTime start() {
        return start;
    }

    static RecordRows of(RawWeather raw, RecordOptions options, Findings findings) throws WeatherFileException {
        if (raw.isOfAnyYear()) {
            raw.isOf(options.year().orElseThrow(() -> raw.text()
                    .error(
                            0,
                            "",
                            "no year in its rows",
                            "a record of real hours, each with its year",
                            "A typical year cannot stand for them. If all rows were measured in one year, add a column"
                                    + " \"year\", or say which it was.")));
        }
        TimeResolver time = new TimeResolver(raw, options.reading(), findings);
        LocalDateTime first = LocalDateTime.MAX;
        LocalDateTime last = LocalDateTime.MIN;
        for (int row = 0; row < raw.rows(); row++) {
            LocalDateTime start = time.start(row);
            if (options.period().holdsHour(start)) {
                first = start.isBefore(first) ? start : first;
                last = start.isAfter(last) ? start : last;
            }
        }
        long hours = first.isAfter(last) ? 0 : ChronoUnit.HOURS.between(first, last) + 1;
        if (hours < WeatherRecord.FEWEST_HOURS || hours > WeatherRecord.MOST_HOURS) {
            throw raw.text()
                    .error(
                            0,
                            "",
                            hours + " hours"
                                    + (hours == 0
                                            ? ""
                                            : " from " + RecordTime.label(first) + " to " + RecordTime.label(last)),
                            "a record of " + WeatherRecord.FEWEST_HOURS + " to " + WeatherRecord.MOST_HOURS
                                    + " hours in the period that is taken",
                            "Check the years of the rows, and the period.");
        }
        HourTable table = time.recordTable(TableHours.ofRecord((int) hours, first, options));
        int placed = 0;
        for (int row = 0; row < raw.rows(); row++) {
            LocalDateTime start = time.start(row);
            if (options.period().holdsHour(start)) {
                place(raw, row, start, (int) ChronoUnit.HOURS.between(first, start), table);
                placed++;
            }
        }
        if (placed < hours) {
            nameMissing((int) hours - placed, table, findings);
        }
        return new RecordRows(table, first);
    }

    private static void place(RawWeather raw, int row, LocalDateTime start, int hour, HourTable table)
            throws WeatherFileException {
        if (table.line[hour] != 0) {
            throw raw.text()
                    .error(
                            raw.line(row),
                            "",
                            "the hour " + RecordTime.label(start) + " a second time, first on line " + table.line[hour],
                            "every hour once",
                            "Remove one of the two; a change to daylight saving time doubles an hour.");
        }
        table.line[hour] = raw.line(row);
        table.year[hour] = start.getYear();
        for (WeatherColumn column : WeatherColumn.values()) {
            table.column(column)[hour] = raw.value(column, row);
        }
    }

    private static void nameMissing(int missing, HourTable table, Findings findings) {
        int before = 1;
        int first = -1;
        for (int hour = 0; hour < table.line.length; hour++) {
            if (table.line[hour] == 0) {
                first = first < 0 ? hour : first;
                table.withoutRow.set(hour);
                table.line[hour] = before;
            } else {
                before = table.line[hour];
            }
        }
        findings.repair(
                table.line[first],
                missing,
                (missing == 1 ? "a row is missing" : missing + " rows are missing") + ", the first that of "
                        + table.hours().label(first) + " after line " + table.line[first]
                        + ": filled from the hours before and after");
    }
}
