package dev.warmlane.fit;

import dev.warmlane.units.Quantity;
import dev.warmlane.weather.WeatherRecord;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * What a fit is held against: hourly means of the log in standard time, as far as there is measured weather for them,
 * and the meter periods that lie within.
 */
final class Observations {

    /** Own choice: below a week the pool of a day is told from its start, not from wind and sun. */
    static final int FEWEST_DAYS = 7;

    /** Own choice, about two readings a day over two weeks. */
    static final int FEWEST_READINGS = 30;

    /** When the run begins and ends, full hours. */
    final LocalDateTime from;

    final LocalDateTime to;
    /** Times of the hourly means by the stated time zone, and hours after {@link #from}. */
    final LocalDateTime[] stated;

    final double[] hours;
    final double[] waterC;
    final List<Metered> bills;
    final List<Metered> meter;
    /** Hours of the log without weather, and those whose weather had a gap. */
    final int outside;

    final int inGaps;

    Observations(
            WaterLog log, WeatherRecord weather, List<Metered> allBills, List<Metered> allMeter, double clockHours) {
        long zoneSeconds = Math.round((weather.site().utcOffsetHours() - log.utcOffsetHours()) * 3600);
        long clockSeconds = (long) Math.ceil(clockHours) * 3600;
        List<LocalDateTime> times = new ArrayList<>();
        List<Double> water = new ArrayList<>();
        int without = 0;
        int gaps = 0;
        for (WaterLog.Reading mean : log.hourly().readings()) {
            LocalDateTime time = mean.clock().plusSeconds(zoneSeconds);
            if (time.minusSeconds(clockSeconds).isBefore(weather.start())
                    || !time.plusSeconds(clockSeconds).isBefore(weather.end())) {
                without++;
            } else if (weather.isFilled(weather.hourAt(time))) {
                gaps++;
            } else {
                times.add(time);
                water.add(mean.waterC());
            }
        }
        outside = without;
        inGaps = gaps;
        if (times.isEmpty()) {
            throw new FitRefusal(
                    FitRefusal.Reason.NO_OVERLAP,
                    "the log runs from " + log.readings().get(0).clock() + " to "
                            + log.readings().get(log.readings().size() - 1).clock() + " (UTC"
                            + signed(log.utcOffsetHours()) + "), the weather from " + weather.start() + " to "
                            + weather.end() + " (UTC" + signed(weather.site().utcOffsetHours())
                            + "): they have no hour in common in which the weather was measured. Take the weather of the"
                            + " hours in which the pool was logged; a typical year has"
                            + " none of them");
        }
        LocalDateTime first = times.get(0);
        LocalDateTime last = times.get(times.size() - 1);
        if (times.size() < FEWEST_READINGS || ChronoUnit.HOURS.between(first, last) < 24 * FEWEST_DAYS) {
            throw new FitRefusal(
                    FitRefusal.Reason.TOO_FEW,
                    "the log has " + times.size() + " hours with a reading and with weather, from " + first + " to "
                            + last
                            + "; a fit needs " + FEWEST_READINGS + " of them over " + FEWEST_DAYS
                            + " days at least: log for longer");
        }
        from = first.truncatedTo(ChronoUnit.HOURS).minusSeconds(clockSeconds);
        to = last.truncatedTo(ChronoUnit.HOURS).plusHours(1).plusSeconds(clockSeconds);
        stated = times.toArray(LocalDateTime[]::new);
        hours = times.stream()
                .mapToDouble(time -> ChronoUnit.SECONDS.between(from, time) / 3600.0)
                .toArray();
        waterC = water.stream().mapToDouble(Double::doubleValue).toArray();
        Predicate<Metered> within = period -> !period.from().atStartOfDay().isBefore(from)
                && !period.to().atStartOfDay().isAfter(to);
        bills = allBills.stream().filter(within).toList();
        meter = allMeter.stream().filter(within).toList();
    }

    /** How many numbers a fit is held against. */
    int count() {
        return hours.length + bills.size() + meter.size();
    }

    /** The first of the run's hours that a meter period has, counted from 0, or the one after its last. */
    int hour(LocalDate day) {
        return (int) ChronoUnit.HOURS.between(from, day.atStartOfDay());
    }

    private static String signed(double hours) {
        return (hours < 0 ? "-" : "+") + Quantity.plain(Math.abs(hours));
    }
}
