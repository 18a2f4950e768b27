package dev.warmlane.fit;

import dev.warmlane.units.Checks;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Water temperatures as a logger wrote them, at any interval and with gaps.
 *
 * @param source in a few words what it is
 * @param utcOffsetHours the time zone that its clock is said to keep, hours ahead of UTC; a fit finds by how much it does not
 * @param readings the readings, each later than the one before
 */
public record WaterLog(String source, double utcOffsetHours, List<Reading> readings) {

    /** The most readings; a year of one each minute is half of it. */
    public static final int MOST_READINGS = 1_000_000;

    /**
     * A reading.
     *
     * @param clock what the logger's clock showed
     * @param waterC what its sensor showed, °C, -20 to 80
     */
    public record Reading(LocalDateTime clock, double waterC) {

        /** Checks that it is a temperature. */
        public Reading {
            Checks.within("logged water temperature of " + clock, waterC, -20, 80, "degC");
        }
    }

    /** Checks the order, and keeps its own copy of the list. */
    public WaterLog {
        readings = List.copyOf(readings);
        Checks.within("hours ahead of UTC", utcOffsetHours, -12, 14, "h");
        Checks.within("readings of a log", readings.size(), 1, MOST_READINGS, "");
        for (int i = 1; i < readings.size(); i++) {
            if (!readings.get(i - 1).clock.isBefore(readings.get(i).clock)) {
                throw new IllegalArgumentException("the log has " + readings.get(i).clock + " after "
                        + readings.get(i - 1).clock + ": sort the rows and keep one of each time");
            }
        }
    }

    /** The same log from one time of its clock to before another. */
    public WaterLog between(LocalDateTime from, LocalDateTime to) {
        return new WaterLog(
                source,
                utcOffsetHours,
                readings.stream()
                        .filter(reading -> !reading.clock.isBefore(from) && reading.clock.isBefore(to))
                        .toList());
    }

    /** One reading for each clock hour that has any: the means of their times and temperatures. */
    WaterLog hourly() {
        List<Reading> means = new ArrayList<>();
        int from = 0;
        while (from < readings.size()) {
            LocalDateTime hour = readings.get(from).clock.truncatedTo(ChronoUnit.HOURS);
            double seconds = 0;
            double sumC = 0;
            int to = from;
            while (to < readings.size() && readings.get(to).clock.isBefore(hour.plusHours(1))) {
                seconds += ChronoUnit.SECONDS.between(hour, readings.get(to).clock);
                sumC += readings.get(to).waterC;
                to++;
            }
            means.add(new Reading(hour.plusSeconds(Math.round(seconds / (to - from))), sumC / (to - from)));
            from = to;
        }
        return new WaterLog(source, utcOffsetHours, means);
    }
}
