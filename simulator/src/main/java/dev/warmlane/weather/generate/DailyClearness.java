package dev.warmlane.weather.generate;

/**
 * Distribution of the daily clearness index K (global irradiation over that outside the atmosphere) among the days of a
 * month: Hollands and Huget 1983, Solar Energy 30:195-209, from memory. Density C·(1 - K/Ku)·exp(λK) for 0 ≤ K ≤ Ku.
 *
 * <p>The source gives λ from the mean by a fitted formula. Here λ is the parameter itself; the generator solves for the
 * λ that meets the month's irradiation, and the fitted formula serves as a check in the tests.
 */
final class DailyClearness {

    /** Upper end of the distribution, Hollands and Huget 1983, from memory. */
    static final double HIGHEST = 0.864;

    /** Below this |λ| the closed integral loses digits to cancellation and its first-order series is used. */
    private static final double NEARLY_ZERO = 1e-4;

    private static final int HALVINGS = 60;

    private final double lambda;
    private final double whole;

    DailyClearness(double lambda) {
        this.lambda = lambda;
        this.whole = integral(HIGHEST);
    }

    /** Share of days with a clearness up to k. */
    double probability(double k) {
        return integral(Math.max(0, Math.min(HIGHEST, k))) / whole;
    }

    /** The clearness that a share p of days stays below, by halving. */
    double quantile(double p) {
        double low = 0;
        double high = HIGHEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (integral(middle) < p * whole) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Integral of (1 - x/Ku)·exp(λ(x - Ku)) from 0 to k; the factor exp(-λKu) only keeps it within range. */
    private double integral(double k) {
        if (Math.abs(lambda) < NEARLY_ZERO) {
            return k - k * k / (2 * HIGHEST) + lambda * k * k * (0.5 - k / (3 * HIGHEST));
        }
        double inverse = 1 / (lambda * HIGHEST);
        return (StrictMath.exp(lambda * (k - HIGHEST)) * (1 - k / HIGHEST + inverse)
                        - StrictMath.exp(-lambda * HIGHEST) * (1 + inverse))
                / lambda;
    }
}
