package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.CollectorPlaces;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.collector.FlowSplit;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Departure;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.ArraySky;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.site.HourSpan;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.units.Checks;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Forcing for many installations in one weather, each part prepared once and shared by all that have it in common. Safe
 * for many threads; what it hands out does not depend on who asked first, nor on what is held. Lives as long as a study.
 *
 * <p>A collector's forcing takes 1.8 MB flat or on a pitched roof, 2.1 MB as one rack and 5.2 MB as racks in rows, of which
 * other numbers of the same rows and other divisions of the flow share all but 1 MB; a pool's takes 0.8 MB, a roof's 0.3 MB
 * (measured, Java 17; rows by counting). Once it holds as many of one of them as it may, it lets go of those and begins anew;
 * what was handed out stays good.
 */
public final class SharedForcing {

    /** The most collectors that are held unless it is said: some 300 MB; own choice. */
    public static final int USUAL_MOST = 60;

    private final WeatherYear weather;
    private final int most;
    private final Map<PoolKey, PoolForcing> pools = new ConcurrentHashMap<>();
    private final Map<RoofKey, CollectorSurroundings> roofs = new ConcurrentHashMap<>();
    private final Map<ArraySky, Skylines> skies = new ConcurrentHashMap<>();
    private final Map<PlacesKey, CollectorPlaces> places = new ConcurrentHashMap<>();
    private final Map<CollectorKey, CollectorForcing> collectors = new ConcurrentHashMap<>();

    /** Starts with nothing prepared, and holds up to {@link #USUAL_MOST}. */
    public SharedForcing(WeatherYear weather) {
        this(weather, USUAL_MOST);
    }

    /**
     * Starts with nothing prepared.
     *
     * @param weather the weather all of it stands on
     * @param most the most collectors, and the most pools, and roofs, to hold, 1 to 100000; each thread
     *     may add one more
     */
    public SharedForcing(WeatherYear weather, int most) {
        this.weather = weather;
        this.most = (int) Checks.within("forcings held", most, 1, 100_000, "");
    }

    /** How many it holds. */
    public Held holds() {
        return new Held(pools.size(), roofs.size(), collectors.size());
    }

    /** Lets go of all that it holds; what was handed out stays good. */
    public void clear() {
        pools.clear();
        roofs.clear();
        skies.clear();
        places.clear();
        collectors.clear();
    }

    /** The weather all of it stands on. */
    public WeatherYear weather() {
        return weather;
    }

    /** The forcing of an installation. */
    public SeasonForcing of(Installation installation) {
        return of(installation, HourSpan.YEAR, this::heldCollectors);
    }

    /** The same for its season alone, of which it holds what it has for the year. */
    SeasonForcing ofSeason(Installation installation) {
        return of(installation, installation.season().running(), (roof, array, sky) -> {
            CollectorForcing ofYear = collectors.get(collectorKey(roof.in(HourSpan.YEAR), array, sky));
            return ofYear != null ? ofYear : heldCollectors(roof, array, sky);
        });
    }

    /** The same for one who is not likely to be followed by another with the same collectors: they are not held. */
    SeasonForcing once(Installation installation) {
        return of(installation, installation.season().running(), (roof, array, sky) -> prepare(roof, array, sky)
                .of(array));
    }

    /** The same, of which what racks have in common is held, whatever the wind at their inner rows. */
    SeasonForcing sheltered(Installation installation) {
        return of(installation, installation.season().running(), (roof, array, sky) -> places(roof, array, sky)
                .of(array));
    }

    private SeasonForcing of(Installation installation, HourSpan hours, Collectors prepared) {
        RoofKey roof = roofKey(installation, hours);
        List<ArraySky> of = ArraySky.of(installation);
        return new SeasonForcing(
                held(pools, poolKey(installation), this::preparePool),
                IntStream.range(0, of.size())
                        .mapToObj(a -> prepared.of(roof, installation.arrays().get(a), of.get(a)))
                        .toList());
    }

    private CollectorForcing heldCollectors(RoofKey roof, CollectorArray array, ArraySky sky) {
        return held(collectors, collectorKey(roof, array, sky), key -> places(roof, array, sky)
                .of(array));
    }

    /**
     * Prepared with the first area that asks; area has no part in it, save where its layout is shaded. Racks with another
     * wind at their inner rows than is usual have what they have in common with those with the usual one.
     */
    private CollectorPlaces places(RoofKey roof, CollectorArray array, ArraySky sky) {
        CollectorArray calm = array.withMounting(calm(array.mounting()));
        CollectorPlaces usual = held(places, placesKey(roof, calm, sky), key -> prepare(roof, calm, sky));
        return array.mounting().equals(calm.mounting())
                ? usual
                : usual.withInnerWind(array.mounting().racks().orElseThrow().innerWind());
    }

    private static Mounting calm(Mounting mounting) {
        return mounting.racks()
                .filter(racks -> racks.rows() > 1)
                .<Mounting>map(racks -> racks.withInnerWind(Mounting.OpenRack.USUAL_INNER_WIND))
                .orElse(mounting);
    }

    /** Where the forcing of an array comes from. */
    private interface Collectors {

        CollectorForcing of(RoofKey roof, CollectorArray array, ArraySky sky);
    }

    /**
     * Holds what an installation's forcing was prepared of, so that it is not prepared again; not collectors of some hours.
     *
     * @throws IllegalArgumentException if it was prepared in another weather year
     */
    void hold(Installation installation, SeasonForcing prepared) {
        if (prepared.weather() != weather) {
            throw new IllegalArgumentException(
                    "the season was simulated in another weather year than this forcing is of");
        }
        pools.put(poolKey(installation), prepared.pool());
        RoofKey roof = roofKey(installation, HourSpan.YEAR);
        List<ArraySky> of = ArraySky.of(installation);
        for (int a = 0; a < of.size(); a++) {
            CollectorForcing collector = prepared.collectors().get(a);
            if (collector.covers(HourSpan.YEAR)) {
                collectors.put(collectorKey(roof, installation.arrays().get(a), of.get(a)), collector);
            }
        }
    }

    private <K, V> V held(Map<K, V> kind, K key, Function<K, V> prepare) {
        V known = kind.get(key);
        if (known != null) {
            return known;
        }
        if (kind.size() >= most) {
            kind.clear();
        }
        return kind.computeIfAbsent(key, prepare);
    }

    private CollectorPlaces prepare(RoofKey roof, CollectorArray array, ArraySky sky) {
        CollectorSurroundings around = held(
                roofs, roof, key -> new CollectorSurroundings(weather, key.roof, key.terrain, key.physics, key.hours));
        return CollectorPlaces.of(around, array, held(skies, sky, ArraySky::skylines));
    }

    private PoolKey poolKey(Installation installation) {
        return new PoolKey(
                installation.pool(),
                installation.cover(),
                installation.bathers(),
                installation.makeUp(),
                installation.departure(weather));
    }

    private static RoofKey roofKey(Installation installation, HourSpan hours) {
        return new RoofKey(installation.roof(), installation.terrain(), installation.collectorPhysics(), hours);
    }

    private static CollectorKey collectorKey(RoofKey roof, CollectorArray array, ArraySky sky) {
        return new CollectorKey(array.mounting(), array.model(), array.flowKgSM2(), array.split(), sky, roof);
    }

    private static PlacesKey placesKey(RoofKey roof, CollectorArray array, ArraySky sky) {
        return new PlacesKey(CollectorPlaces.alike(array.mounting()), array.model(), array.flowKgSM2(), sky, roof);
    }

    private PoolForcing preparePool(PoolKey key) {
        return PoolForcing.of(key.pool, key.cover, key.bathers, key.makeUp, weather, key.departure);
    }

    /**
     * How many forcings are held.
     *
     * @param pools those of pools
     * @param roofs what surrounds collectors
     * @param collectors those of collectors, whatever their area
     */
    public record Held(int pools, int roofs, int collectors) {}

    private record PoolKey(Pool pool, Optional<Cover> cover, Bathers bathers, MakeUp makeUp, Departure departure) {}

    private record RoofKey(Roof roof, Terrain terrain, CollectorPhysics physics, HourSpan hours) {

        RoofKey in(HourSpan other) {
            return new RoofKey(roof, terrain, physics, other);
        }
    }

    private record PlacesKey(Mounting mounting, CollectorModel model, double flowKgSM2, ArraySky sky, RoofKey roof) {}

    private record CollectorKey(
            Mounting mounting, CollectorModel model, double flowKgSM2, FlowSplit split, ArraySky sky, RoofKey roof) {}
}
