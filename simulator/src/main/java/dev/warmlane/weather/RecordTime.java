package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Real hours as the calendar has them. */
final class RecordTime {

    private static final DateTimeFormatter LABEL = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private RecordTime() {}

    /** The hour of a year of 365 days; 29 February has the hours of 28 February. */
    static int hourOfYear(LocalDateTime time) {
        boolean leapDay = time.getMonthValue() == 2 && time.getDayOfMonth() == 29;
        return HourOfYear.of(time.getMonthValue(), leapDay ? 28 : time.getDayOfMonth(), time.getHour());
    }

    /** For example {@code 2016-12-31 23:00}. */
    static String label(LocalDateTime time) {
        return LABEL.format(time);
    }
}
