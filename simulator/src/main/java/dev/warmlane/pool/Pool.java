package dev.warmlane.pool;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Water;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Units;
import dev.warmlane.units.Usual;

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
 */
public record Pool(
        double areaM2,
        double depthM,
        PoolSetting setting,
        double solarAbsorptance,
        double waterEmittance,
        EvaporationCorrelation evaporation,
        double groundConductanceWK,
        double circulationW) {

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
        return new Pool(
                areaM2,
                depthM,
                value,
                solarAbsorptance,
                waterEmittance,
                evaporation,
                groundConductanceWK,
                circulationW);
    }

    /** The same pool with another solar absorptance. */
    public Pool withSolarAbsorptance(double value) {
        return new Pool(areaM2, depthM, setting, value, waterEmittance, evaporation, groundConductanceWK, circulationW);
    }

    /** The same pool with another emittance of its water. */
    public Pool withWaterEmittance(double value) {
        return new Pool(
                areaM2, depthM, setting, solarAbsorptance, value, evaporation, groundConductanceWK, circulationW);
    }

    /** The same pool with another correlation for evaporation. */
    public Pool withEvaporation(EvaporationCorrelation value) {
        return new Pool(
                areaM2, depthM, setting, solarAbsorptance, waterEmittance, value, groundConductanceWK, circulationW);
    }

    /** The same pool with another conductance to the ground, W/K. */
    public Pool withGroundConductanceWK(double value) {
        return new Pool(areaM2, depthM, setting, solarAbsorptance, waterEmittance, evaporation, value, circulationW);
    }

    /** The same pool with another heat of its circulation pump, W. */
    public Pool withCirculationW(double value) {
        return new Pool(
                areaM2, depthM, setting, solarAbsorptance, waterEmittance, evaporation, groundConductanceWK, value);
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
}
