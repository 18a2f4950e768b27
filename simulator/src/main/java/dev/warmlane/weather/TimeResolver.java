package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Puts the rows of a file into the 8760 hours of a year in local standard time, or of several, by their labels. */
final class TimeResolver {

    private static final int FIRST_YEAR = 1800;
    private static final int LAST_YEAR = 2300;

    private final RawWeather raw;
    private final Site site;
    /** Whole hours from the file's clock to local standard time, and what is left of one. */
    private final int roll;

    private final double part;

    TimeResolver(RawWeather raw, WeatherReadOptions options, Findings findings) {
        this.raw = raw;
        raw.notes().forEach(note -> findings.note(0, 0, note));
        RawHeader header = raw.header();
        Site stated = header.site();
        Double given = options.utcOffsetHours();
        double offset = given != null
                ? given
                : header.clock() == RawHeader.Clock.UTC
                        ? Math.round(stated.longitudeDeg() / 15)
                        : stated.utcOffsetHours();
        this.site = new Site(stated.name(), stated.latitudeDeg(), stated.longitudeDeg(), stated.elevationM(), offset);
        boolean utc = header.clock() != RawHeader.Clock.LOCAL_STANDARD;
        this.roll = utc ? (int) Math.floor(offset) : 0;
        this.part = utc ? offset - roll : 0;
        if (utc) {
            String why = given != null
                    ? ", as given"
                    : header.clock() == RawHeader.Clock.UTC_WITH_OFFSET
                            ? ", as the file tells it"
                            : ", which goes with the longitude; if the place keeps another, " + Advice.UTC_OFFSET;
            findings.note(
                    header.siteLine(),
                    0,
                    "the file is in UTC; it was rolled to local standard time " + ClockWords.utc(offset) + why);
        } else if (given != null && given != stated.utcOffsetHours()) {
            findings.note(
                    header.siteLine(),
                    0,
                    "the header says " + ClockWords.utc(stated.utcOffsetHours()) + "; " + ClockWords.utc(offset)
                            + " is used, as given");
        }
    }

    /** A file of one year, typical or real. */
    static HourTable resolve(RawWeather raw, WeatherReadOptions options, Findings findings)
            throws WeatherFileException {
        TimeResolver time = new TimeResolver(raw, options, findings);
        YearRows rows = new YearRows(raw, time.emptyTable());
        for (int row = 0; row < raw.rows(); row++) {
            if (isLeapDay(raw, row)) {
                rows.leaveOutLeapHour(row);
            } else {
                int rolled = time.rolled(row);
                int stamped = year(raw, row);
                rows.place(
                        row,
                        Math.floorMod(rolled, HourOfYear.HOURS),
                        stamped + Math.floorDiv(rolled, HourOfYear.HOURS),
                        rolled - time.roll);
            }
        }
        return rows.finish(findings);
    }

    /** One calendar year of a file, still unchecked. */
    record Year(int year, YearRows rows, Findings findings) {}

    /**
     * The calendar years of a file, the earliest first. Where the clock is rolled, hours that fall out of the file's first
     * or last year are put at the other end of its years, where as many are lacking.
     */
    static List<Year> years(RawWeather raw, WeatherReadOptions options) throws WeatherFileException {
        Findings findings = new Findings();
        TimeResolver time = new TimeResolver(raw, options, findings);
        int first = LAST_YEAR;
        int last = FIRST_YEAR;
        for (int row = 0; row < raw.rows(); row++) {
            int stamped = year(raw, row);
            first = Math.min(first, stamped);
            last = Math.max(last, stamped);
        }
        Map<Integer, YearRows> years = new TreeMap<>();
        for (int row = 0; row < raw.rows(); row++) {
            int stamped = year(raw, row);
            if (isLeapDay(raw, row)) {
                time.of(years, stamped).leaveOutLeapHour(row);
                continue;
            }
            int rolled = time.rolled(row);
            int local = stamped + Math.floorDiv(rolled, HourOfYear.HOURS);
            int placed = local < first ? last : local > last ? first : local;
            time.of(years, placed).place(row, Math.floorMod(rolled, HourOfYear.HOURS), local, rolled - time.roll);
        }
        List<Year> all = new ArrayList<>();
        years.forEach((year, rows) -> all.add(new Year(year, rows, findings.copy())));
        return all;
    }

    /** When the hour of a row begins, local standard time; what is left of an hour goes with the labels. */
    LocalDateTime start(int row) throws WeatherFileException {
        if (!isLeapDay(raw, row)) {
            hour(raw, row);
        }
        try {
            return LocalDateTime.of(year(raw, row), raw.month(row), raw.day(row), raw.hour(row), 0)
                    .plusHours(roll);
        } catch (DateTimeException e) {
            throw raw.text()
                    .error(
                            raw.line(row),
                            "date",
                            raw.year(row) + "-" + raw.month(row) + "-" + raw.day(row),
                            "a day of the calendar",
                            "Correct the row.");
        }
    }

    /** A table for hours that begin then. */
    HourTable recordTable(TableHours hours) {
        RawHeader header = raw.header();
        return new HourTable(raw, site, header.centreHours() + part, header.labelHours() + part, hours);
    }

    private YearRows of(Map<Integer, YearRows> years, int year) {
        return years.computeIfAbsent(year, any -> new YearRows(raw, emptyTable()));
    }

    private HourTable emptyTable() {
        RawHeader header = raw.header();
        return new HourTable(raw, site, header.centreHours() + part, header.labelHours() + part);
    }

    private static boolean isLeapDay(RawWeather raw, int row) {
        return raw.month(row) == 2 && raw.day(row) == 29;
    }

    /** The hour of a row's year in local time, below 0 or beyond the year where another one has it. */
    private int rolled(int row) throws WeatherFileException {
        return hour(raw, row) + roll;
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
