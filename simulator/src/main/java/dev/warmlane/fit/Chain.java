package dev.warmlane.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Draws from the posterior by Metropolis-Hastings steps that leave a normal distribution about the mode as it is, that of
 * Laplace's method made a quarter wider: from a point u of it to √(1-β²)·u + β·ξ, taken by how much better the posterior is
 * there than that distribution (the preconditioned Crank-Nicolson step, Cotter and others 2013, Statistical Science 28:424,
 * from memory). Where Laplace's method is right nearly every draw is a new one; where it is not, the chain says so. The
 * first tenth is not kept. The same seed gives the same draws.
 */
record Chain(List<Draw> draws, double acceptedShare) {

    /** β; own choice, as acceptance and length of steps go. */
    private static final double STEP = 0.7;

    /** Wider than the posterior, so that its tails are reached; own choice. */
    private static final double WIDER = 1.25;

    /** Values of the unknowns and of the error. */
    @SuppressWarnings("ArrayRecordComponent") // of this package alone, which changes none
    record Draw(double[] values, ErrorSize error) {}

    static Chain of(Posterior posterior, Mode mode, FitOptions options) {
        RandomGenerator random = new Well19937c(options.seed());
        Point centre = new Point(mode.deviations(), mode.error());
        int[] free = posterior.freeErrors();
        RealMatrix root = root(mode.covariance());
        RealMatrix errorRoot = root(mode.logErrorCovariance());
        double[] at = new double[root.getRowDimension()];
        double[] errorAt = new double[errorRoot.getRowDimension()];
        Point point = centre;
        double log = posterior.log(point.deviations, point.error);
        List<Draw> draws = new ArrayList<>();
        int accepted = 0;
        for (int i = 0; i < options.draws(); i++) {
            double[] to = stepped(at, random);
            double[] errorTo = stepped(errorAt, random);
            Point there = centre.moved(root.operate(to), free, errorRoot.operate(errorTo));
            double logThere = posterior.log(there.deviations, there.error)
                    + 0.5 * (Posterior.square(to) + Posterior.square(errorTo));
            if (Math.log(random.nextDouble()) < logThere - log) {
                at = to;
                errorAt = errorTo;
                point = there;
                log = logThere;
                accepted++;
            }
            if (i >= options.draws() / 10) {
                draws.add(new Draw(posterior.values(point.deviations), point.error));
            }
        }
        return new Chain(draws, accepted / (double) options.draws());
    }

    private static double[] stepped(double[] from, RandomGenerator random) {
        double[] to = new double[from.length];
        for (int i = 0; i < to.length; i++) {
            to[i] = Math.sqrt(1 - STEP * STEP) * from[i] + STEP * random.nextGaussian();
        }
        return to;
    }

    private static RealMatrix root(RealMatrix covariance) {
        return new CholeskyDecomposition(covariance, 1e-6, 0).getL();
    }

    /** Deviations of the priors, and the error. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Point(double[] deviations, ErrorSize error) {

        Point moved(double[] by, int[] free, double[] logsBy) {
            double[] to = deviations.clone();
            for (int i = 0; i < to.length; i++) {
                to[i] += WIDER * by[i];
            }
            return new Point(
                    to,
                    Mode.moved(
                            error,
                            free,
                            Arrays.stream(logsBy).map(value -> WIDER * value).toArray()));
        }
    }
}
