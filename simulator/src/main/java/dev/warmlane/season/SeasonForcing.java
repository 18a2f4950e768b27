package dev.warmlane.season;

import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.weather.WeatherYear;
import java.util.List;

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

    /** Prepares an installation in its weather. */
    public static SeasonForcing of(Installation installation, WeatherYear weather) {
        CollectorSurroundings around = new CollectorSurroundings(
                weather, installation.roof(), installation.terrain(), installation.collectorPhysics());
        return new SeasonForcing(
                PoolForcing.of(
                        installation.pool(),
                        installation.cover(),
                        installation.bathers(),
                        installation.makeUp(),
                        weather),
                installation.arrays().stream()
                        .map(array -> CollectorForcing.of(around, array))
                        .toList());
    }

    /** The same without collectors. */
    public SeasonForcing withoutCollectors() {
        return new SeasonForcing(pool, List.of());
    }
}
