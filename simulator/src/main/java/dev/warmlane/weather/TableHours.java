package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** Which hours a table has, and how far its gaps may be filled: those of a year, which closes upon itself, or of a record. */
final class TableHours {

    private final int count;
    private final @Nullable LocalDateTime start;
    private final RecordOptions options;

    private TableHours(int count, @Nullable LocalDateTime start, RecordOptions options) {
        this.count = count;
        this.start = start;
        this.options = options;
    }

    /** The 8760 of a year. */
    static TableHours ofYear() {
        return new TableHours(HourOfYear.HOURS, null, RecordOptions.USUAL);
    }

    /** So many from a time on, local standard time. */
    static TableHours ofRecord(int count, LocalDateTime start, RecordOptions options) {
        return new TableHours(count, start, options);
    }

    int count() {
        return count;
    }

    /** What is done with gaps, light and the like. */
    RecordOptions options() {
        return options;
    }

    /** Whether the last hour is followed by the first. */
    boolean closed() {
        return start == null;
    }

    /** The hour of the year. */
    int ofYear(int hour) {
        return start == null ? hour : RecordTime.hourOfYear(start.plusHours(hour));
    }

    /** The hour of the day, 0 to 23. */
    int ofDay(int hour) {
        return start == null ? HourOfYear.hourOfDay(hour) : (start.getHour() + hour) % 24;
    }

    String label(int hour) {
        return start == null ? HourOfYear.label(hour) : RecordTime.label(start.plusHours(hour));
    }

    /** What a message calls all of them. */
    String word() {
        return start == null ? "year" : "record";
    }

    /** How many values may be missing or impossible: one in twenty. */
    int missingAtMost() {
        return count / 20;
    }

    /** The sun of irradiance that belongs to a time after the start of its hour, h. */
    SunPath sun(Site site, int[] yearOfHour, double centre, boolean mean) {
        if (start != null) {
            return SunPath.ofRecord(site, start, count, centre, mean);
        }
        return mean ? SunPath.ofHourlyMeans(site, yearOfHour, centre) : SunPath.ofInstants(site, yearOfHour, centre);
    }
}
