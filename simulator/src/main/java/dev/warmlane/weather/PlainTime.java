package dev.warmlane.weather;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The time of a row of the plain csv: in columns of month, day and hour, and of the year if there is one, or as one stamp. */
final class PlainTime implements CsvRows.TimeCells {

    private static final String STAMP = "time";

    private final List<String> names;
    private final boolean atTheEnd;
    private final boolean stamped;
    private final boolean hasYear;

    /** With labels at the start of the hour, or at its end. */
    PlainTime(List<String> names, boolean atTheEnd) {
        this.names = names;
        this.atTheEnd = atTheEnd;
        this.stamped = names.contains(STAMP);
        this.hasYear = names.contains("year");
    }

    /** Where the time stands in a row. */
    int[] places(FileText text, int line) throws WeatherFileException {
        if (stamped) {
            return new int[] {names.indexOf(STAMP)};
        }
        int month = place(text, line, "month");
        int day = place(text, line, "day");
        int hour = place(text, line, "hour");
        return hasYear ? new int[] {month, day, hour, names.indexOf("year")} : new int[] {month, day, hour};
    }

    private int place(FileText text, int line, String name) throws WeatherFileException {
        int place = names.indexOf(name);
        if (place < 0) {
            throw text.error(
                    line,
                    name,
                    "no such column",
                    "columns month, day and hour, or time",
                    "Add it to the row of column names.");
        }
        return place;
    }

    @Override
    public void add(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException {
        FileText text = raw.text();
        if (stamped) {
            LocalDateTime time = Stamps.fullHour(text, line, STAMP, cells[0]).minusHours(atTheEnd ? 1 : 0);
            raw.add(line, time.getYear(), time.getMonthValue(), time.getDayOfMonth(), time.getHour());
            return;
        }
        int year = hasYear ? CsvRows.whole(text, line, "year", cells[3]) : PlainFormat.YEAR_UNLESS_GIVEN;
        int month = CsvRows.whole(text, line, "month", cells[0]);
        int day = CsvRows.whole(text, line, "day", cells[1]);
        int hour = CsvRows.whole(text, line, "hour", cells[2]) - (atTheEnd ? 1 : 0);
        if (hour == -1 && atTheEnd) {
            try {
                LocalDateTime before = LocalDateTime.of(year, month, day, 0, 0).minusHours(1);
                add(raw, line, before.getYear(), before.getMonthValue(), before.getDayOfMonth(), before.getHour());
                return;
            } catch (DateTimeException e) {
                // no date: told where the row is placed
            }
        }
        add(raw, line, year, month, day, hour);
    }

    private void add(RawWeather raw, int line, int year, int month, int day, int hour) {
        raw.add(line, year, month, day, hour);
        if (!hasYear) {
            raw.hasNoYears();
        }
    }
}
