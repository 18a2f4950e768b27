package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.weather.HourlyWeather;
import dev.warmlane.weather.WeatherRecord;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a season needs for every hour that does not depend on the pool's temperature. Immutable and shared: runs that
 * differ only in collector area, heater, control or season use the same one.
 *
 * @param pool the pool's side
 * @param collectors each collector array's side, in the installation's order
 */
public record SeasonForcing(PoolForcing pool, List<CollectorForcing> collectors) {

    /** Keeps its own copy of the list. */
    public SeasonForcing {
        collectors = List.copyOf(collectors);
    }

    /** Prepares an installation in a year of weather, for seasons, or in a record, for {@link RecordSimulator}. */
    public static SeasonForcing of(Installation installation, HourlyWeather weather) {
        return new SeasonForcing(
                poolOf(installation, weather),
                installation.arrays().isEmpty() ? List.of() : collectors(installation, weather));
    }

    /** The pool's side alone. */
    public static PoolForcing poolOf(Installation installation, HourlyWeather weather) {
        return PoolForcing.of(
                installation.pool(),
                installation.cover(),
                installation.bathers(),
                installation.makeUp(),
                weather,
                installation.departure(weather));
    }

    private static List<CollectorForcing> collectors(Installation installation, HourlyWeather weather) {
        CollectorSurroundings around = new CollectorSurroundings(
                weather, installation.roof(), installation.terrain(), installation.collectorPhysics());
        List<ArraySky> skies = ArraySky.of(installation);
        return IntStream.range(0, skies.size())
                .mapToObj(a -> CollectorForcing.of(
                        around, installation.arrays().get(a), skies.get(a).skylines()))
                .toList();
    }

    /** The weather all of it was prepared in. */
    public HourlyWeather weather() {
        return pool.weather();
    }

    /** Refuses an installation that it was not prepared for, saying what differs. */
    void checkServes(Installation installation) {
        if (collectors.size() != installation.arrays().size()) {
            throw new IllegalArgumentException("the forcing is for " + collectors.size()
                    + " arrays, the installation has " + installation.arrays().size());
        }
        pool.differsFrom(installation.pool(), installation.cover(), installation.bathers(), installation.makeUp())
                .ifPresent(what -> refuse(what, installation.name()));
        for (int a = 0; a < collectors.size(); a++) {
            CollectorForcing collector = collectors.get(a);
            CollectorArray array = installation.arrays().get(a);
            collector
                    .differsFrom(array, installation.roof(), installation.terrain(), installation.collectorPhysics())
                    .ifPresent(what -> refuse(what, array.name()));
            if (!collector.covers(installation.season().running())) {
                refuse("season", array.name());
            }
            // one year has one object: a year read twice is prepared twice
            if (collector.weather() != pool.weather()) {
                refuse("weather year", array.name());
            }
        }
    }

    /** Refuses a record, since a season is of a year, and what {@link #checkServes(Installation)} refuses. */
    void checkServesSeason(Installation installation) {
        pool.weather().match(year -> year, record -> {
            throw new IllegalArgumentException("the forcing was prepared in a weather record, " + record.source()
                    + ": run it with RecordSimulator, or prepare it in a weather year");
        });
        checkServes(installation);
        if (!pool.departure().equals(installation.departure(pool.weather()))) {
            refuse("fit to a log", installation.name());
        }
    }

    /** The record it was prepared in; refuses a year. */
    WeatherRecord record() {
        return pool.weather()
                .match(
                        year -> {
                            throw new IllegalArgumentException("the forcing was prepared in a weather year, "
                                    + year.source() + ": prepare it in a weather record, or simulate a season");
                        },
                        record -> record);
    }

    /** Refuses another typical year than that it was prepared in. */
    void checkServes(HourlyWeather weather) {
        if (pool.weather() != weather) {
            refuse("weather year", weather.source());
        }
    }

    private static void refuse(String what, String name) {
        throw new IllegalArgumentException("the forcing was prepared for another " + what + " than that of \"" + name
                + "\": prepare it again with SeasonForcing.of, or share it through SharedForcing");
    }

    /** The same without collectors. */
    public SeasonForcing withoutCollectors() {
        return new SeasonForcing(pool, List.of());
    }
}
