package dev.warmlane.pool;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Water;
import dev.warmlane.units.Checks;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Units;
import dev.warmlane.units.Usual;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A well-mixed basin.
 *
 * @param areaM2 water surface, m²
 * @param depthM mean depth, m
 * @param setting outdoors or in a hall
 * @param solarAbsorptance share of the sun on the surface that stays in the water: 0.85 light finish, 0.90
 *     dark finish, 0.05 less when heavily used (ISO/TR 12596 as cited by Kalogirou)
 * @param waterEmittance long-wave emittance of water; 0.95
 * @param evaporation correlation for evaporation
 * @param groundConductanceWK steady conductance from the water through floor and walls to the ground, W/K; the
 *     ground's yearly swing goes with it
 * @param circulationW heat that the circulation (filter) pump leaves in the water while the pool is in its season, W: its hydraulic power, all of which friction turns into heat; {@link #circulationPowerW}
 * @param walls walls that stand above the ground, where there are any; the ground's conductance is then that of the rest
 * @param throughFlow water that flows through it, where any does
 * @param shellStoreM heat that walls, floor and ground take up and give back with the water over a day, as the depth of
 *     water that does the same, m: it makes the water's day lag and swing less
 * @param groundStore ground that takes up heat and gives it back late, over hours to months, where that is counted; the
 *     shell store is then that of the shell alone
 * @param reflection how the light that the water reflects goes with the height of the sun
 * @param freeboard walls of the basin that rise above its water, where they are counted
 */
public record Pool(
        double areaM2,
        double depthM,
        PoolSetting setting,
        double solarAbsorptance,
        double waterEmittance,
        EvaporationCorrelation evaporation,
        double groundConductanceWK,
        double circulationW,
        Optional<Walls> walls,
        Optional<ThroughFlow> throughFlow,
        double shellStoreM,
        Optional<GroundStore> groundStore,
        SurfaceReflection reflection,
        Optional<Freeboard> freeboard) {

    /** Range of {@link #areaM2}. */
    public static final Range AREA = Range.of("pool area", Dimension.AREA, 1, 20_000);

    /** Range of {@link #depthM}. */
    public static final Range DEPTH = Range.of("pool depth", Dimension.LENGTH, 0.2, 10);

    /** Range of {@link #solarAbsorptance}. */
    public static final Range ABSORPTANCE = Range.share("solar absorptance of the pool", 0.3, 1);

    /** Range of {@link #waterEmittance}. */
    public static final Range EMITTANCE = Range.share("emittance of the water", 0.8, 1);

    /** Range of {@link #groundConductanceWK}. */
    public static final Range GROUND_CONDUCTANCE = Range.of("ground conductance", Dimension.CONDUCTANCE, 0, 50_000);

    /** Range of {@link #circulationW}. */
    public static final Range CIRCULATION = Range.of("heat of the circulation pump", Dimension.POWER, 0, 500_000);

    /** Range of {@link #shellStoreM}; half a metre of concrete on either side stores no more over a day. */
    public static final Range SHELL_STORE = Range.of("heat store of the shell", Dimension.LENGTH, 0, 0.5);

    /** Range of the time in which the circulation pump moves the pool's volume once. */
    public static final Range TURNOVER = Range.of("turnover", Dimension.DURATION, 0.25 * Units.HOUR, 100 * Units.HOUR)
            .writtenIn("h");

    /** Range of the head that the circulation pump works against. */
    public static final Range HEAD = Range.of("head of the circulation pump", Dimension.LENGTH, 1, 60);

    /** Usual head that a circulation pump works against. */
    public static final Usual USUAL_HEAD = HEAD.usually(12, "filter, pipes and nozzles, common practice, no source");

    /** {@link #USUAL_HEAD}, m. */
    public static final double CIRCULATION_HEAD_M = USUAL_HEAD.value();

    /** Solar absorptance of a basin of light finish, ISO/TR 12596 as cited by Kalogirou. */
    public static final double LIGHT_FINISH = 0.85;

    /** Solar absorptance of a basin of dark finish, ISO/TR 12596 as cited by Kalogirou. */
    public static final double DARK_FINISH = 0.90;

    /** Usual {@link #waterEmittance}. */
    public static final Usual USUAL_EMITTANCE = EMITTANCE.usually(0.95, "usual value for water");

    /** {@link #USUAL_EMITTANCE}. */
    public static final double WATER_EMITTANCE = USUAL_EMITTANCE.value();

    /** Checks every range. */
    public Pool {
        AREA.check(areaM2);
        DEPTH.check(depthM);
        ABSORPTANCE.check(solarAbsorptance);
        EMITTANCE.check(waterEmittance);
        GROUND_CONDUCTANCE.check(groundConductanceWK);
        CIRCULATION.check(circulationW);
        SHELL_STORE.check(shellStoreM);
        freeboard.ifPresent(rim -> Checks.within(
                "length times width of the walls above a water of " + areaM2 + " m2",
                rim.lengthM() * rim.widthM(),
                0.99 * areaM2,
                1.01 * areaM2,
                "m2"));
    }

    /** A pool in the ground, without through-flow, whose shell stores nothing. */
    public Pool(
            double areaM2,
            double depthM,
            PoolSetting setting,
            double solarAbsorptance,
            double waterEmittance,
            EvaporationCorrelation evaporation,
            double groundConductanceWK,
            double circulationW) {
        this(
                areaM2,
                depthM,
                setting,
                solarAbsorptance,
                waterEmittance,
                evaporation,
                groundConductanceWK,
                circulationW,
                Optional.empty(),
                Optional.empty(),
                0,
                Optional.empty(),
                SurfaceReflection.EVEN,
                Optional.empty());
    }

    /**
     * A pool of light finish with the default correlation and a ground conductance for its size, see
     * {@link GroundLoss}; no heat of a circulation pump is counted.
     */
    public static Pool of(double areaM2, double depthM, PoolSetting setting) {
        return new Pool(
                areaM2,
                depthM,
                setting,
                LIGHT_FINISH,
                WATER_EMITTANCE,
                Evaporation.SMITH_LOF_JONES,
                GroundLoss.conductanceWK(areaM2, depthM),
                0);
    }

    /** Water volume, m³. */
    public double volumeM3() {
        return areaM2 * depthM;
    }

    /** The same pool in another setting. */
    public Pool withSetting(PoolSetting value) {
        return changed(copy -> copy.setting = value);
    }

    /** The same pool with another solar absorptance. */
    public Pool withSolarAbsorptance(double value) {
        return changed(copy -> copy.solarAbsorptance = value);
    }

    /** The same pool with another emittance of its water. */
    public Pool withWaterEmittance(double value) {
        return changed(copy -> copy.waterEmittance = value);
    }

    /** The same pool with another correlation for evaporation. */
    public Pool withEvaporation(EvaporationCorrelation value) {
        return changed(copy -> copy.evaporation = value);
    }

    /** The same pool with another conductance to the ground, W/K. */
    public Pool withGroundConductanceWK(double value) {
        return changed(copy -> copy.groundConductanceWK = value);
    }

    /** The same pool with another heat of its circulation pump, W. */
    public Pool withCirculationW(double value) {
        return changed(copy -> copy.circulationW = value);
    }

    /** The same pool with walls above the ground. */
    public Pool withWalls(Walls value) {
        return changed(copy -> copy.walls = Optional.of(value));
    }

    /** The same pool with water that flows through it. */
    public Pool withThroughFlow(ThroughFlow value) {
        return changed(copy -> copy.throughFlow = Optional.of(value));
    }

    /** The same pool with another heat store of its shell, m of water. */
    public Pool withShellStoreM(double value) {
        return changed(copy -> copy.shellStoreM = value);
    }

    /** The same pool in ground whose store of heat is counted. */
    public Pool withGroundStore(GroundStore value) {
        return changed(copy -> copy.groundStore = Optional.of(value));
    }

    /** The same pool with light reflected otherwise. */
    public Pool withReflection(SurfaceReflection value) {
        return changed(copy -> copy.reflection = value);
    }

    /** The same pool with walls that rise above its water. */
    public Pool withFreeboard(Freeboard value) {
        return changed(copy -> copy.freeboard = Optional.of(value));
    }

    /** The kinds of heat that this pool can have: all of them, less those of walls and through-flow where it has none. */
    public List<Flow> flows() {
        List<Flow> flows = new ArrayList<>(List.of(Flow.values()));
        if (walls.isEmpty()) {
            flows.remove(Flow.WALLS);
        }
        if (throughFlow.isEmpty()) {
            flows.remove(Flow.THROUGH_FLOW);
        }
        return flows;
    }

    /**
     * Hydraulic power of a pump, W: density · g · volume / turnover time · head. Evenly over the day.
     *
     * @param volumeM3 water in the pool, m³
     * @param turnoverS time in which the pump moves that volume once, s
     * @param headM head that it works against, m
     */
    public static double circulationPowerW(double volumeM3, double turnoverS, double headM) {
        return Water.densityKgM3(PoolForcing.REFERENCE_C) * Constants.GRAVITY * volumeM3 / turnoverS * headM;
    }

    private Pool changed(Consumer<Copy> change) {
        Copy copy = new Copy(this);
        change.accept(copy);
        return copy.pool();
    }

    /** A pool while one thing of it is changed. */
    private static final class Copy {
        private final Pool of;
        private PoolSetting setting;
        private double solarAbsorptance;
        private double waterEmittance;
        private EvaporationCorrelation evaporation;
        private double groundConductanceWK;
        private double circulationW;
        private Optional<Walls> walls;
        private Optional<ThroughFlow> throughFlow;
        private double shellStoreM;
        private Optional<GroundStore> groundStore;
        private SurfaceReflection reflection;
        private Optional<Freeboard> freeboard;

        Copy(Pool of) {
            this.of = of;
            setting = of.setting;
            solarAbsorptance = of.solarAbsorptance;
            waterEmittance = of.waterEmittance;
            evaporation = of.evaporation;
            groundConductanceWK = of.groundConductanceWK;
            circulationW = of.circulationW;
            walls = of.walls;
            throughFlow = of.throughFlow;
            shellStoreM = of.shellStoreM;
            groundStore = of.groundStore;
            reflection = of.reflection;
            freeboard = of.freeboard;
        }

        Pool pool() {
            return new Pool(
                    of.areaM2,
                    of.depthM,
                    setting,
                    solarAbsorptance,
                    waterEmittance,
                    evaporation,
                    groundConductanceWK,
                    circulationW,
                    walls,
                    throughFlow,
                    shellStoreM,
                    groundStore,
                    reflection,
                    freeboard);
        }
    }
}
