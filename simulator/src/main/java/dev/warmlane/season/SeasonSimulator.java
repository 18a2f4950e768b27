package dev.warmlane.season;

import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.site.HourOfYear;
import java.util.OptionalDouble;

/** Steps an installation through its season, hour by hour. Stateless and safe to use from many threads. */
public final class SeasonSimulator {

    private SeasonSimulator() {}

    /**
     * Simulates a season from the water it opens with.
     *
     * @param installation what is built
     * @param forcing what the weather does to it, prepared for the same pool, cover and collectors
     * @return every flow of every hour
     * @throws IllegalArgumentException if the forcing was prepared for other arrays, another roof or pool, or in two weather
     *     years; the message says what differs
     * @throws ImpossibleSeasonException if the water becomes hotter than any pool, or freezes to the ground
     */
    public static SeasonLedger simulate(Installation installation, SeasonForcing forcing) {
        forcing.checkServesSeason(installation);
        PoolHour hour = new PoolHour(installation, forcing);
        fill(installation, forcing, hour);
        return run(installation, forcing, hour);
    }

    /**
     * Goes on from the state that another season ended in, whatever the water the installation opens with: the two are then
     * to the last bit the one season that they are parts of. Year follows year in this way, and anything but the number of
     * arrays may be built otherwise from one to the next.
     *
     * @param installation what is built; its season begins where the state stands
     * @param forcing what the weather does to it, prepared for the same pool, cover and collectors
     * @param start where it begins, see {@link SeasonLedger#endState}
     * @return every flow of every hour
     * @throws IllegalArgumentException if the state stands at another hour or has other circuits, or the forcing was
     *     prepared for something else; the message says what differs
     * @throws ImpossibleSeasonException if the water becomes hotter than any pool, or freezes to the ground
     */
    public static SeasonLedger resume(Installation installation, SeasonForcing forcing, SeasonState start) {
        forcing.checkServesSeason(installation);
        start.checkBegins(installation);
        PoolHour hour = new PoolHour(installation, forcing);
        hour.resume(start.waterC(), start.iceJm2(), start.pumpsRunning(), start.groundC());
        return run(installation, forcing, hour);
    }

    private static SeasonLedger run(Installation installation, SeasonForcing forcing, PoolHour hour) {
        SeasonLedger ledger = new SeasonLedger(installation, forcing.pool().heatCapacityJm2K(), hour);
        LedgerRow row = ledger.rows();
        BeforeOpening before = installation.season().before();
        for (int index = 0; index < ledger.hours(); index++) {
            row.open(index);
            int untilOpening = ledger.opening() - index;
            if (untilOpening > 0) {
                warmUp(installation, hour, ledger.hourOfYear(index), before, untilOpening, row);
            } else {
                open(installation, hour, ledger.hourOfYear(index), row);
            }
            ledger.enter(index, hour);
        }
        ledger.close(hour);
        return ledger;
    }

    /** Fills the pool and lets it stand, or takes the temperature that is given. */
    private static void fill(Installation installation, SeasonForcing forcing, PoolHour hour) {
        OptionalDouble given = installation
                .startWater()
                .match(start -> OptionalDouble.of(start.temperatureC()), standing -> {
                    stand(installation, forcing, hour, standing.days());
                    return OptionalDouble.empty();
                });
        given.ifPresent(hour::fill);
    }

    /** Lets the filled pool take the temperature that it has by itself after some days. */
    private static void stand(Installation installation, SeasonForcing forcing, PoolHour hour, int days) {
        boolean neverCloses = installation.season().hours() == HourOfYear.HOURS;
        int first = installation.season().beginHour();
        // filled from the mains; a month later that hardly matters
        int before = days * 24;
        hour.fill(forcing.pool().mainsC(Math.floorMod(first - before, HourOfYear.HOURS)));
        LedgerRow row = LedgerRow.alone(installation.arrays().size());
        for (int index = before; index > 0; index--) {
            int hourOfYear = Math.floorMod(first - index, HourOfYear.HOURS);
            row.open(0);
            if (neverCloses) {
                open(installation, hour, hourOfYear, row);
            } else {
                hour.run(hourOfYear, 0, false, false, row);
                check(installation, hour, hourOfYear);
            }
        }
    }

    private static void open(Installation installation, PoolHour hour, int hourOfYear, LedgerRow row) {
        hour.run(hourOfYear, 1, mayPump(installation, hourOfYear), true, row);
        check(installation, hour, hourOfYear);
    }

    /** An hour before opening: the pool stands filled and is warmed already. */
    private static void warmUp(
            Installation installation,
            PoolHour hour,
            int hourOfYear,
            BeforeOpening before,
            int untilOpening,
            LedgerRow row) {
        boolean mayPump = before.collectorsMay(untilOpening) && mayPump(installation, hourOfYear);
        hour.run(hourOfYear, 0, mayPump, before.heaterMay(untilOpening), row);
        check(installation, hour, hourOfYear);
    }

    static boolean mayPump(Installation installation, int hourOfYear) {
        return installation.control().pumping().at(hourOfYear) > 0;
    }

    /** Refuses water that no pool has after an hour. */
    static void check(Installation installation, PoolHour hour, int which) {
        if (hour.waterC > ImpossibleSeasonException.HOTTEST_C) {
            throw ImpossibleSeasonException.tooHot(hour.weather.label(which));
        }
        if (hour.ice.heatJm2() > Ice.allOfJm2(installation.pool().depthM())) {
            throw ImpossibleSeasonException.frozen(
                    hour.weather.label(which), installation.pool().depthM());
        }
    }
}
