package dev.warmlane.validation;

import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.pool.Freeboard;
import dev.warmlane.pool.GroundStore;
import dev.warmlane.pool.InflowTemperature;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.SurfaceReflection;
import dev.warmlane.pool.ThroughFlow;
import dev.warmlane.pool.Walls;
import dev.warmlane.units.Units;
import java.util.List;

/** The measured basin as it is described, each input with its reason, and with one input otherwise: docs/validation/basin.md. */
final class BasinPools {

    private static final double LENGTH_M = 3.42;
    private static final double WIDTH_M = 1;
    private static final double DEPTH_M = 0.25;

    /** Green water, as the data's own note has it, "perhaps". */
    private static final double ABSORPTANCE = 0.9;

    /** Floor to the ground, W/K; own choice before the first run, in the middle of 0 and twice as much. */
    private static final double GROUND_WK = 3;

    /** Perimeter of 1 m by 3.42 m times the water's depth, m². */
    private static final double WALL_M2 = 2 * (WIDTH_M + LENGTH_M) * DEPTH_M;

    /** Between 12 of bare plastic or concrete, whose outer surface alone has 25, and 1 of an insulated wall, W/m²K. */
    private static final double WALL_WM2K = 6;

    /** The part in step with the water of ground that begins at the floor: effusivity over √(2ω), docs/model.md, m. */
    private static final double STORE_M = 0.04;

    private static final double RETENTION_S = 7.9 * Units.DAY;

    static final Pool WATER_ALONE = new Pool(
            WIDTH_M * LENGTH_M,
            DEPTH_M,
            new PoolSetting.Outdoor(0.30),
            ABSORPTANCE,
            Pool.WATER_EMITTANCE,
            Evaporation.SMITH_LOF_JONES,
            GROUND_WK,
            0);

    /** As this page had it first: the part of the ground's store that is in step with the water, reflexion of all light alike. */
    static final Pool EARLIER = WATER_ALONE
            .withWalls(new Walls(WALL_M2, WALL_WM2K, Walls.USUAL_ABSORPTANCE.value()))
            .withShellStoreM(STORE_M)
            .withThroughFlow(new ThroughFlow(
                    RETENTION_S, new InflowTemperature.MeanAir(InflowTemperature.MeanAir.USUAL_DAYS.value())));

    static final Pool DESCRIBED =
            EARLIER.withShellStoreM(0).withGroundStore(GroundStore.SAND).withReflection(SurfaceReflection.BY_ANGLE);

    /** What the inputs are uncertain by, standard: own estimates, reasons in the page. */
    static final List<BasinLog.Input> INPUTS = List.of(
            new BasinLog.Input("light, 5 %", 1.05, 0, 0, 0),
            new BasinLog.Input("air, 0.3 K", 1, 0.3, 0, 0),
            new BasinLog.Input("dew point, 0.5 K", 1, 0, 0.5, 0),
            new BasinLog.Input("long-wave of the sky, 20 W/m²", 1, 0, 0, 20));

    /** One input moved from what is described. */
    record Variant(String name, Pool pool) {}

    private BasinPools() {}

    /** What is varied, one input at a time. */
    static List<Variant> oneAtATime() {
        EvaporationCorrelation halved = new HalfOfAshrae();
        ThroughFlow cold = new ThroughFlow(RETENTION_S, new InflowTemperature.Given(12));
        ThroughFlow warm = new ThroughFlow(RETENTION_S, new InflowTemperature.Given(18));
        ThroughFlow slow = new ThroughFlow(RETENTION_S, new InflowTemperature.MeanAir(30));
        return List.of(
                new Variant("as described, wind factor 0.30", DESCRIBED),
                new Variant("evaporation by ISO/TR 12596", DESCRIBED.withEvaporation(Evaporation.ISO_TR_12596)),
                new Variant("by ASHRAE, 0.74 when quiet", DESCRIBED.withEvaporation(Evaporation.ASHRAE_CARRIER)),
                new Variant("by ASHRAE, 0.5 when quiet", DESCRIBED.withEvaporation(halved)),
                new Variant("wind factor 0.25", windy(DESCRIBED, 0.25)),
                new Variant("wind factor 0.35", windy(DESCRIBED, 0.35)),
                new Variant("absorptance 0.85", DESCRIBED.withSolarAbsorptance(0.85)),
                new Variant("absorptance 0.95", DESCRIBED.withSolarAbsorptance(0.95)),
                new Variant("walls of 1 W/m²K, insulated", walls(1, 0.6)),
                new Variant("walls of 12 W/m²K, bare", walls(12, 0.6)),
                new Variant("walls that absorb 0.3 of the sun", walls(WALL_WM2K, 0.3)),
                new Variant("reflexion of all light alike", DESCRIBED.withReflection(SurfaceReflection.EVEN)),
                new Variant("ground's store as 0.04 m of water", EARLIER.withReflection(SurfaceReflection.BY_ANGLE)),
                new Variant("both of these, as first described", EARLIER),
                new Variant("first described, twice the store, 0.08 m", EARLIER.withShellStoreM(2 * STORE_M)),
                new Variant("first described, no store but the water's", EARLIER.withShellStoreM(0)),
                new Variant("ground's store that of clay", DESCRIBED.withGroundStore(GroundStore.CLAY)),
                new Variant("that of rock", DESCRIBED.withGroundStore(GroundStore.ROCK)),
                new Variant("walls 0.1 m above the water", rim(0.1, 0)),
                new Variant("walls 0.2 m above the water, lying north", rim(0.2, 0)),
                new Variant("the same lying east", rim(0.2, 90)),
                new Variant("ground of 0 W/K", DESCRIBED.withGroundConductanceWK(0)),
                new Variant("ground of 16 W/K, by area and depth", DESCRIBED.withGroundConductanceWK(16)),
                new Variant("through-flow that follows 30 days of air", DESCRIBED.withThroughFlow(slow)),
                new Variant("through-flow of 12 °C", DESCRIBED.withThroughFlow(cold)),
                new Variant("through-flow of 18 °C", DESCRIBED.withThroughFlow(warm)),
                new Variant(
                        "sky share 0.8, walls' freeboard and surroundings",
                        DESCRIBED.withSetting(new PoolSetting.Outdoor(0.30, 0, 0.8))));
    }

    static Pool windy(Pool pool, double factor) {
        return pool.withSetting(new PoolSetting.Outdoor(factor));
    }

    /** Height and direction of what stands above the water are not told. */
    static Pool rim(double heightM, double axisDeg) {
        return DESCRIBED.withFreeboard(
                new Freeboard(heightM, LENGTH_M, WIDTH_M, axisDeg, Freeboard.USUAL_REFLECTANCE.value()));
    }

    private static Pool walls(double uValueWm2K, double absorptance) {
        return DESCRIBED.withWalls(new Walls(WALL_M2, uValueWm2K, absorptance));
    }

    /** The handbook's factor of a residential pool in a hall, asked of a basin outdoors. */
    private record HalfOfAshrae() implements EvaporationCorrelation {
        @Override
        public double heatWm2Kpa(double windMs) {
            return 0.5 * Evaporation.ASHRAE_CARRIER.heatWm2Kpa(windMs);
        }
    }
}
