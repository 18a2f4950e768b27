package dev.warmlane.weather;

import java.time.LocalDateTime;

/**
 * A part of time, local standard time.
 *
 * @param from when it begins
 * @param to when it ends, later than {@code from}
 */
public record RecordPeriod(LocalDateTime from, LocalDateTime to) {

    /** All time. */
    public static final RecordPeriod ALL = new RecordPeriod(LocalDateTime.MIN, LocalDateTime.MAX);

    /** Checks the order. */
    public RecordPeriod {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException(
                    "a period must end after it begins, was from " + from + " to " + to + ": exchange the two");
        }
    }

    /** Whether an hour that begins then lies in it as a whole. */
    boolean holdsHour(LocalDateTime start) {
        return !start.isBefore(from)
                && (to.equals(LocalDateTime.MAX) || !start.plusHours(1).isAfter(to));
    }
}
