package dev.warmlane.pool;

/** Published correlations, straight in the wind: h(v) = c0 + c1·v, with v in m/s at 0.3 m above the water. */
public enum Evaporation implements EvaporationCorrelation {
    /**
     * Smith, Löf and Jones 1994 (Solar Energy 53:3-7; equation from memory): outdoor pool, unoccupied, 0 to 2.2 m/s.
     * The default.
     */
    SMITH_LOF_JONES("Smith, Löf and Jones 1994", 63.8, 66.9, 1, 1, 2.2),
    /** ISO/TR 12596:1995 (from memory). */
    ISO_TR_12596("ISO/TR 12596:1995", 65.3, 69.0, 1, 1, Double.POSITIVE_INFINITY),
    /**
     * ASHRAE Handbook, HVAC Applications, after Carrier 1918 (from memory). Quiet water under the sky evaporates 0.74 of
     * it (Smith, Löf and Jones, ASHRAE Transactions, paper 4146, read in the abstract); quiet water in a hall 0.5 of it,
     * the handbook's activity factor of a residential pool (from memory).
     */
    ASHRAE_CARRIER("ASHRAE Handbook, after Carrier 1918", 89, 78.2, 0.74, 0.5, Double.POSITIVE_INFINITY);

    private final String source;
    private final double still;
    private final double perWind;
    private final double quietOutdoors;
    private final double quietIndoors;
    private final double strongestWindMs;

    Evaporation(
            String source,
            double still,
            double perWind,
            double quietOutdoors,
            double quietIndoors,
            double strongestWindMs) {
        this.source = source;
        this.still = still;
        this.perWind = perWind;
        this.quietOutdoors = quietOutdoors;
        this.quietIndoors = quietIndoors;
        this.strongestWindMs = strongestWindMs;
    }

    @Override
    public double heatWm2Kpa(double windMs) {
        return still + perWind * windMs;
    }

    @Override
    public double quietFactor(PoolSetting setting) {
        return setting.match(outdoor -> quietOutdoors, indoor -> quietIndoors);
    }

    @Override
    public double strongestWindMs() {
        return strongestWindMs;
    }

    @Override
    public String source() {
        return source;
    }
}
