package dev.warmlane.pool;

/**
 * The heat that evaporation takes from quiet water: q = f·h(v)·(pw − pa), W/m², with the vapour pressures of water and air
 * in kPa, a function h of the wind and a factor f of the setting. A negative difference condenses and the sign is kept.
 * {@link Evaporation} has published ones; a function of the wind is one of your own.
 *
 * <p>It is asked once for each hour while a pool is prepared, never in the hourly loop, so it need not be straight in the
 * wind nor fast. Convection goes with it by Bowen's ratio. Must be immutable; make it a record or keep the object, since
 * forcing is shared among pools whose correlations are equal.
 */
@FunctionalInterface
public interface EvaporationCorrelation {

    /**
     * Heat per vapour pressure difference as the equation stands, W/m²kPa, 0 or more.
     *
     * @param windMs wind at 0.3 m above the water, m/s
     */
    double heatWm2Kpa(double windMs);

    /** What quiet water evaporates in a setting, as a share of the equation: 1, for an equation of quiet water. */
    default double quietFactor(PoolSetting setting) {
        return 1;
    }

    /** The strongest wind at the water that it was measured in, m/s; infinite where none is known. */
    default double strongestWindMs() {
        return Double.POSITIVE_INFINITY;
    }

    /** Where it comes from, in a few words for a report. */
    default String source() {
        return "no source named";
    }
}
