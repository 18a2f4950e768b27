package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Forcing for many installations in one weather, each part prepared once and shared by all that have it in common. Safe
 * for many threads; what it hands out does not depend on who asked first. Lives as long as a study.
 */
public final class SharedForcing {

    private final WeatherYear weather;
    private final Map<PoolKey, PoolForcing> pools = new ConcurrentHashMap<>();
    private final Map<RoofKey, CollectorSurroundings> roofs = new ConcurrentHashMap<>();
    private final Map<CollectorKey, CollectorForcing> collectors = new ConcurrentHashMap<>();

    /** Starts with nothing prepared. */
    public SharedForcing(WeatherYear weather) {
        this.weather = weather;
    }

    /** The weather all of it stands on. */
    public WeatherYear weather() {
        return weather;
    }

    /** The forcing of an installation. */
    public SeasonForcing of(Installation installation) {
        PoolKey pool =
                new PoolKey(installation.pool(), installation.cover(), installation.bathers(), installation.makeUp());
        RoofKey roof = new RoofKey(installation.roof(), installation.terrain(), installation.collectorPhysics());
        return new SeasonForcing(
                pools.computeIfAbsent(pool, this::prepare),
                installation.arrays().stream().map(array -> of(roof, array)).toList());
    }

    private CollectorForcing of(RoofKey roof, CollectorArray array) {
        CollectorSurroundings around = roofs.computeIfAbsent(
                roof, key -> new CollectorSurroundings(weather, key.roof, key.terrain, key.physics));
        // prepared with the first area that asks; area has no part in it
        return collectors.computeIfAbsent(
                new CollectorKey(array.mounting(), array.model(), array.flowKgSM2(), roof),
                key -> CollectorForcing.of(around, array));
    }

    private PoolForcing prepare(PoolKey key) {
        return PoolForcing.of(key.pool, key.cover, key.bathers, key.makeUp, weather);
    }

    private record PoolKey(Pool pool, Optional<Cover> cover, Bathers bathers, MakeUp makeUp) {}

    private record RoofKey(Roof roof, Terrain terrain, CollectorPhysics physics) {}

    private record CollectorKey(Mounting mounting, CollectorModel model, double flowKgSM2, RoofKey roof) {}
}
