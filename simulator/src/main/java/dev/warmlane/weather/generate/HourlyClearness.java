package dev.warmlane.weather.generate;

/**
 * Hourly clearness index on a day of given daily clearness K: the time-dependent autoregressive Gaussian model of Aguiar
 * and Collares-Pereira 1992, Solar Energy 49:167-174. Coefficients from memory, compared with an independent public
 * implementation of the paper.
 *
 * <p>Around a mean that depends on K and the height of the sun the hourly index is Gaussian, truncated below at 0 and
 * above at a sky without clouds. The truncation maps probabilities; nothing is drawn twice.
 */
final class HourlyClearness {

    /** A sky without clouds is no clearer than this Linke turbidity, very clean and dry air; own choice. */
    private static final double CLEANEST_TURBIDITY = 2;

    private HourlyClearness() {}

    /** Mean hourly index: λ + η·exp(-κ/sin h), h the height of the sun. */
    static double mean(double day, double sinHeight) {
        double lambda = -0.19 + 1.12 * day + 0.24 * StrictMath.exp(-8 * day);
        double eta = 0.32 - 1.6 * (day - 0.5) * (day - 0.5);
        double kappa = 0.19 + 2.27 * day * day - 2.51 * day * day * day;
        return lambda + eta * StrictMath.exp(-kappa / sinHeight);
    }

    /** Standard deviation of the hourly index about its mean: A·exp(B(1 - sin h)). */
    static double spread(double day, double sinHeight) {
        double a = 0.14 * StrictMath.exp(-20 * (day - 0.35) * (day - 0.35));
        double b = 3 * (day - 0.45) * (day - 0.45) + 16 * day * day * day * day * day;
        return a * StrictMath.exp(b * (1 - sinHeight));
    }

    /** Correlation of one hour's normalised index with the hour before: 0.38 + 0.06·cos(7.4K - 2.5). */
    static double persistence(double day) {
        return 0.38 + 0.06 * StrictMath.cos(7.4 * day - 2.5);
    }

    /** The index of an hour from a standard normal deviate. */
    static double index(double day, double sinHeight, double clearSky, double deviate) {
        double mean = mean(day, sinHeight);
        double spread = spread(day, sinHeight);
        double below = Noise.probability(-mean / spread);
        double above = Noise.probability((clearSky - mean) / spread);
        double p = below + Noise.probability(deviate) * (above - below);
        return Math.max(0, Math.min(clearSky, mean + spread * Noise.deviate(p)));
    }

    /**
     * Clearness index of a cloudless sky with very clean air, the most an hour can have: Ineichen and Perez 2002, Solar
     * Energy 73:151-157, a1·exp(-a2·m·(f1 + f2(T - 1))) with a1 = 0.868 + 5.09e-5 z, a2 = 0.0387 + 3.92e-5 z, f1 =
     * exp(-z/8000), f2 = exp(-z/1250), Linke turbidity T = 2; air mass m by Kasten and Young 1989, Applied Optics
     * 28:4735-4738. Both from memory.
     *
     * @param zenithDeg angle of the sun from the vertical, degrees, below 90
     * @param elevationM height above sea level z, m
     */
    static double clearSky(double zenithDeg, double elevationM) {
        double cos = StrictMath.cos(StrictMath.toRadians(zenithDeg));
        double airMass = 1 / (cos + 0.50572 * StrictMath.pow(96.07995 - zenithDeg, -1.6364));
        double a1 = 0.868 + 5.09e-5 * elevationM;
        double a2 = 0.0387 + 3.92e-5 * elevationM;
        double f1 = StrictMath.exp(-elevationM / 8000);
        double f2 = StrictMath.exp(-elevationM / 1250);
        return a1 * StrictMath.exp(-a2 * airMass * (f1 + f2 * (CLEANEST_TURBIDITY - 1)));
    }
}
