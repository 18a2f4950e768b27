package dev.warmlane.fit;

/**
 * Turns errors that are correlated in time into independent ones of unit width. The error is an Ornstein-Uhlenbeck process,
 * whose correlation fades as exp(-Δt/τ), seen with independent noise: the innovations of its Kalman filter over their
 * standard deviations are white (Anderson and Moore, Optimal Filtering, 1979, ch. 5, from memory). Gaps and uneven intervals
 * need nothing special.
 */
final class Whitening {

    private final double[] phi;
    private final double[] gain;
    private final double[] inverseSd;
    private final double logDeterminant;

    /**
     * Prepares the filter.
     *
     * @param hours time of each reading, rising
     * @param errorK standard deviation of the correlated error
     * @param fadeHours time τ in which its correlation falls to 1/e, h
     * @param noiseK standard deviation of the independent noise
     */
    Whitening(double[] hours, double errorK, double fadeHours, double noiseK) {
        int n = hours.length;
        phi = new double[n];
        gain = new double[n];
        inverseSd = new double[n];
        double variance = errorK * errorK;
        double noise = noiseK * noiseK;
        double before = variance;
        double log = 0;
        for (int i = 0; i < n; i++) {
            phi[i] = i == 0 ? 0 : Math.exp((hours[i - 1] - hours[i]) / fadeHours);
            double predicted = phi[i] * phi[i] * before + variance * (1 - phi[i] * phi[i]);
            double innovation = predicted + noise;
            gain[i] = predicted / innovation;
            before = (1 - gain[i]) * predicted;
            inverseSd[i] = 1 / Math.sqrt(innovation);
            log += Math.log(innovation);
        }
        logDeterminant = log;
    }

    /** Logarithm of the determinant of the errors' covariance. */
    double logDeterminant() {
        return logDeterminant;
    }

    /** Whitens a column in place, from its first row on; rows beyond the readings stay as they are. */
    void apply(double[] column) {
        double state = 0;
        for (int i = 0; i < phi.length; i++) {
            double predicted = phi[i] * state;
            double innovation = column[i] - predicted;
            state = predicted + gain[i] * innovation;
            column[i] = innovation * inverseSd[i];
        }
    }
}
