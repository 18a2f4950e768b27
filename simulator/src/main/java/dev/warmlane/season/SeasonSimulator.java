package dev.warmlane.season;

import dev.warmlane.plant.StartWater;
import dev.warmlane.site.HourOfYear;

/** Steps an installation through its season, hour by hour. Stateless and safe to use from many threads. */
public final class SeasonSimulator {

    private SeasonSimulator() {}

    /**
     * Simulates a season.
     *
     * @param installation what is built
     * @param forcing what the weather does to it, prepared for the same pool, cover and collectors
     * @return every flow of every hour
     * @throws IllegalArgumentException if the forcing was prepared for other arrays, another roof or pool, or in two weather
     *     years; the message says what differs
     * @throws ImpossibleSeasonException if the water becomes hotter than any pool
     */
    public static SeasonLedger simulate(Installation installation, SeasonForcing forcing) {
        forcing.checkServes(installation);
        PoolHour hour = new PoolHour(installation, forcing);
        int first = installation.season().firstHour();
        hour.waterC = startC(installation, forcing, hour, first);
        SeasonLedger ledger = new SeasonLedger(installation, forcing.pool().heatCapacityJm2K(), hour.waterC);
        for (int index = 0; index < ledger.hours(); index++) {
            open(installation, hour, ledger.hourOfYear(index));
            ledger.enter(index, hour);
            if (hour.waterC > ImpossibleSeasonException.HOTTEST_C) {
                throw new ImpossibleSeasonException(ledger.hourOfYear(index));
            }
        }
        return ledger;
    }

    private static double startC(Installation installation, SeasonForcing forcing, PoolHour hour, int first) {
        if (installation.startWater() instanceof StartWater.Given given) {
            return given.temperatureC();
        }
        boolean neverCloses = installation.season().hours() == HourOfYear.HOURS;
        // filled from the mains; a month later that hardly matters
        int before = ((StartWater.StandingFilled) installation.startWater()).days() * 24;
        hour.waterC = forcing.pool().mainsC(Math.floorMod(first - before, HourOfYear.HOURS));
        for (int index = before; index > 0; index--) {
            int hourOfYear = Math.floorMod(first - index, HourOfYear.HOURS);
            if (neverCloses) {
                open(installation, hour, hourOfYear);
            } else {
                hour.run(hourOfYear, 0, false);
            }
        }
        return hour.waterC;
    }

    private static void open(Installation installation, PoolHour hour, int hourOfYear) {
        hour.run(hourOfYear, 1, installation.control().pumping().at(hourOfYear) > 0);
    }
}
