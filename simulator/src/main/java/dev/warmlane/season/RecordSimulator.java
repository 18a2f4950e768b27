package dev.warmlane.season;

import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherRecord;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/**
 * Steps an installation through real hours, from any to any other: the same hours as {@link SeasonSimulator} has, on the
 * calendar of a {@link WeatherRecord}. Whatever the calendar rules (season, bathers, cover, heater) goes by the date of
 * each year; out of its season the pool stands filled. Stateless and safe to use from many threads.
 */
public final class RecordSimulator {

    private RecordSimulator() {}

    /**
     * Runs from a state to a time.
     *
     * @param installation what is built; a pool alone is {@link Installation#builder(String, dev.warmlane.pool.Pool)}
     * @param forcing what the weather does to it, prepared in a weather record: {@link SeasonForcing#of}
     * @param start where it begins, at a full hour: {@link RecordState#water}, or the end of another run
     * @param end when it ends, at a full hour, local standard time; at most the end of the record
     * @return every flow of every hour
     * @throws IllegalArgumentException if the forcing was prepared in a weather year or for something else, the period is not
     *     within the record, or the state has other circuits; the message says what differs
     * @throws ImpossibleSeasonException if the water becomes hotter than any pool, or freezes to the ground
     */
    public static RecordLedger simulate(
            Installation installation, SeasonForcing forcing, RecordState start, LocalDateTime end) {
        WeatherRecord weather = forcing.record();
        forcing.checkServes(installation);
        start.checkCircuits(installation);
        int first = weather.hourAt(fullHour(start.time()));
        long count = ChronoUnit.HOURS.between(start.time(), fullHour(end));
        if (count < 1 || count > weather.hours() - first) {
            throw new IllegalArgumentException("a run from " + start.time() + " to " + end
                    + " must end after it begins and by the end of the weather record, " + weather.end());
        }
        PoolHour hour = new PoolHour(installation, forcing);
        hour.resume(start.waterC(), start.iceJm2(), start.pumpsRunning(), start.groundC());
        SeasonLedger ledger = new SeasonLedger(installation, forcing.pool().heatCapacityJm2K(), hour, 0, (int) count);
        LedgerRow row = ledger.rows();
        OpeningSeason season = installation.season();
        for (int index = 0; index < count; index++) {
            row.open(index);
            run(installation, season, weather, first + index, hour, row);
            ledger.enter(index, hour);
        }
        ledger.close(hour);
        return new RecordLedger(ledger, start.time(), hour.pumpsRunning(), hour.groundC());
    }

    private static void run(
            Installation installation,
            OpeningSeason season,
            WeatherRecord weather,
            int which,
            PoolHour hour,
            LedgerRow row) {
        int hourOfYear = weather.hourOfYear(which);
        int sinceOpening = Math.floorMod(hourOfYear - season.firstHour(), HourOfYear.HOURS);
        if (sinceOpening < season.hours()) {
            hour.run(which, 1, SeasonSimulator.mayPump(installation, hourOfYear), true, row);
        } else {
            int untilOpening = HourOfYear.HOURS - sinceOpening;
            boolean mayPump =
                    season.before().collectorsMay(untilOpening) && SeasonSimulator.mayPump(installation, hourOfYear);
            hour.run(which, 0, mayPump, season.before().heaterMay(untilOpening), row);
        }
        SeasonSimulator.check(installation, hour, which);
    }

    private static LocalDateTime fullHour(LocalDateTime time) {
        if (!time.equals(time.truncatedTo(ChronoUnit.HOURS))) {
            throw new IllegalArgumentException("a run begins and ends at a full hour, was " + time);
        }
        return time;
    }
}
