package dev.warmlane.pool;

/**
 * Correlations for the heat that evaporation takes from a water surface: q = (c0 + c1·v)·(pw − pa), W/m², with the
 * wind v in m/s at 0.3 m above the surface and the pressures in kPa. A negative difference condenses and the sign is
 * kept.
 */
public enum Evaporation {
    /**
     * Smith, Löf and Jones 1994 (Solar Energy 53:3-7; equation from memory): outdoor pool, unoccupied, 0 to 2.2 m/s.
     * The default.
     */
    SMITH_LOF_JONES(63.8, 66.9, 1, 1.48),
    /** ISO/TR 12596:1995 (from memory). */
    ISO_TR_12596(65.3, 69.0, 1, 1.48),
    /**
     * ASHRAE Handbook, HVAC Applications, after Carrier 1918 (from memory). Its activity factor goes with it alone: 0.5
     * for a quiet pool, 1.0 for a public one in use.
     */
    ASHRAE_CARRIER(89, 78.2, 0.5, 1);

    private final double still;
    private final double perWind;
    private final double quietFactor;
    private final double usualFactorWhenFull;

    Evaporation(double still, double perWind, double quietFactor, double usualFactorWhenFull) {
        this.still = still;
        this.perWind = perWind;
        this.quietFactor = quietFactor;
        this.usualFactorWhenFull = usualFactorWhenFull;
    }

    /** Heat per vapour pressure difference before any activity factor, W/m²kPa. */
    public double heatWm2Kpa(double windMs) {
        return still + perWind * windMs;
    }

    /** The factor that belongs to this correlation when nobody is in the water. */
    public double quietFactor() {
        return quietFactor;
    }

    /**
     * The factor that belongs to this correlation when the pool is full, where nothing better is known: 1.48, the middle
     * of 1.26 to 1.7 times the quiet rate for outdoor pools in use (Smith 1998); for ASHRAE 1.0, the activity factor of a
     * public pool (from memory).
     */
    public double usualFactorWhenFull() {
        return usualFactorWhenFull;
    }
}
