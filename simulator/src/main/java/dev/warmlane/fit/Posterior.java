package dev.warmlane.fit;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How likely values of the unknowns are: prior times likelihood. Unknowns are counted in standard deviations of their
 * priors, so that each prior is one more residual of unit width.
 */
final class Posterior {

    /** A bill holds what model and meter disagree in beside wind and sun, as a share; own choice. */
    static final double BILL_SHARE = 0.05;

    /** The same of the water meter, which also counts what is splashed; own choice. */
    static final double METER_SHARE = 0.05;

    /** Median of the correlated error, K, and the factor of its logarithm's standard deviation; own choice. */
    static final double LIKELY_ERROR_K = 0.5;

    static final double ERROR_FACTOR = 2;

    /** Median of the time in which it fades, h, and the factor; own choice. */
    static final double LIKELY_FADE_HOURS = 48;

    static final double FADE_FACTOR = 3;

    /** Median of the noise of an hour's reading, K, and the factor; own choice. */
    static final double LIKELY_NOISE_K = 0.05;

    static final double NOISE_FACTOR = 2.5;

    private static final double LEAST_ERROR_K = 0.01;
    private static final double MOST_ERROR_K = 10;
    private static final double LEAST_NOISE_K = 0.0005;
    private static final double LEAST_FADE_HOURS = 1;
    private static final double MOST_FADE_HOURS = 2000;

    final List<Prior> priors;
    final PoolAtLog model;
    private final Observations seen;
    private final FitOptions options;

    Posterior(List<Prior> priors, PoolAtLog model, Observations seen, FitOptions options) {
        this.priors = priors;
        this.model = model;
        this.seen = seen;
        this.options = options;
    }

    /** Values of the unknowns, from deviations of their priors. */
    double[] values(double[] deviations) {
        double[] values = new double[priors.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = priors.get(i).value(deviations[i]);
        }
        return values;
    }

    /** Whether all values lie within the ends of their priors. */
    boolean holds(double[] deviations) {
        for (int i = 0; i < priors.size(); i++) {
            Prior prior = priors.get(i);
            double value = prior.likely() + deviations[i] * prior.standardDeviation();
            if (!(value >= prior.lowest() && value <= prior.highest())) {
                return false;
            }
        }
        return true;
    }

    /** What was seen less what the model says: K of the log, then meters as a share of what was read in their own widths. */
    double[] residuals(double[] deviations) {
        double[] expected = model.expected(values(deviations));
        double[] residuals = new double[expected.length];
        int row = 0;
        for (; row < seen.hours.length; row++) {
            residuals[row] = seen.waterC[row] - expected[row];
        }
        for (Metered bill : seen.bills) {
            residuals[row] = (bill.amount() - expected[row]) / (BILL_SHARE * Math.max(1, bill.amount()));
            row++;
        }
        for (Metered reading : seen.meter) {
            residuals[row] = (reading.amount() - expected[row]) / (METER_SHARE * Math.max(1, reading.amount()));
            row++;
        }
        return residuals;
    }

    /** How residuals change with each unknown: one column each, by central differences. */
    double[][] slopes(double[] deviations) {
        double step = 0.05;
        double[][] columns = new double[deviations.length][];
        for (int i = 0; i < deviations.length; i++) {
            double[] up = deviations.clone();
            double[] down = deviations.clone();
            up[i] += step;
            down[i] -= step;
            double[] above = residuals(up);
            double[] below = residuals(down);
            double wide = priors.get(i).deviations(priors.get(i).value(up[i]))
                    - priors.get(i).deviations(priors.get(i).value(down[i]));
            columns[i] = new double[above.length];
            for (int row = 0; row < above.length; row++) {
                columns[i][row] = (above[row] - below[row]) / wide;
            }
        }
        return columns;
    }

    Whitening whitening(ErrorSize error) {
        return new Whitening(seen.hours, error.errorK(), error.fadeHours(), error.noiseK());
    }

    /** Logarithm of prior times likelihood, up to a constant; negative infinity where a value is impossible. */
    double log(double[] deviations, ErrorSize error) {
        if (!holds(deviations) || !possible(error)) {
            return Double.NEGATIVE_INFINITY;
        }
        Whitening whitening = whitening(error);
        double[] residuals = residuals(deviations);
        whitening.apply(residuals);
        return -0.5 * (whitening.logDeterminant() + square(residuals) + square(deviations)) + logPrior(error);
    }

    /**
     * The same of the error alone, with the unknowns integrated over by Laplace's method about values whose residuals and
     * slopes are given: what the unknowns took out of the residuals is given back (restricted likelihood, Harville 1977,
     * from memory).
     */
    double logOfError(double[] deviations, double[] residuals, double[][] slopes, ErrorSize error) {
        if (!possible(error)) {
            return Double.NEGATIVE_INFINITY;
        }
        Whitening whitening = whitening(error);
        double[] white = residuals.clone();
        whitening.apply(white);
        double[][] columns = new double[slopes.length][];
        double[] pull = new double[slopes.length];
        for (int i = 0; i < slopes.length; i++) {
            columns[i] = slopes[i].clone();
            whitening.apply(columns[i]);
            pull[i] = -dot(columns[i], white) - deviations[i];
        }
        CholeskyDecomposition information = new CholeskyDecomposition(information(columns), 1e-9, 0);
        double gained = dot(
                pull,
                information
                        .getSolver()
                        .solve(MatrixUtils.createRealVector(pull))
                        .toArray());
        double determinant = 0;
        for (int i = 0; i < pull.length; i++) {
            determinant += 2 * Math.log(information.getL().getEntry(i, i));
        }
        return -0.5 * (whitening.logDeterminant() + determinant + square(white) + square(deviations) - gained)
                + logPrior(error);
    }

    /** The inverse of the posterior's covariance, in deviations of the priors, from whitened slopes. */
    static RealMatrix information(double[][] whiteSlopes) {
        int n = whiteSlopes.length;
        RealMatrix matrix = MatrixUtils.createRealIdentityMatrix(n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double product = dot(whiteSlopes[i], whiteSlopes[j]);
                matrix.addToEntry(i, j, product);
                if (i != j) {
                    matrix.addToEntry(j, i, product);
                }
            }
        }
        return matrix;
    }

    private boolean possible(ErrorSize error) {
        return error.errorK() > LEAST_ERROR_K
                && error.errorK() < MOST_ERROR_K
                // what was stated is possible, at the ends of what may be stated too
                && (options.fadeHours().isPresent()
                        || (error.fadeHours() > LEAST_FADE_HOURS && error.fadeHours() < MOST_FADE_HOURS))
                && error.noiseK() > LEAST_NOISE_K
                && error.noiseK() < MOST_ERROR_K;
    }

    private double logPrior(ErrorSize error) {
        double size = Math.log(error.errorK() / LIKELY_ERROR_K) / Math.log(ERROR_FACTOR);
        double fade = Math.log(error.fadeHours() / LIKELY_FADE_HOURS) / Math.log(FADE_FACTOR);
        double noise = Math.log(error.noiseK() / LIKELY_NOISE_K) / Math.log(NOISE_FACTOR);
        return -0.5 * (size * size + fade * fade + noise * noise);
    }

    /** Where the search for the error begins: what was stated, and else what is likely. */
    ErrorSize startError() {
        return new ErrorSize(
                LIKELY_ERROR_K,
                options.fadeHours().orElse(LIKELY_FADE_HOURS),
                options.noiseK().orElse(LIKELY_NOISE_K));
    }

    /** Which logarithms of the error are found: those that were not stated. */
    int[] freeErrors() {
        return IntStream.range(0, 3)
                .filter(i -> i == 0
                        || (i == 1 && options.fadeHours().isEmpty())
                        || (i == 2 && options.noiseK().isEmpty()))
                .toArray();
    }

    static double square(double[] values) {
        return dot(values, values);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
