package dev.warmlane.fit;

import java.util.Arrays;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.apache.commons.math3.util.MathArrays;
import org.apache.commons.math3.util.Pair;

/**
 * The most likely values, and the width of the posterior about them by Laplace's method: least squares of whitened
 * residuals with the priors among them, in turn with the size of the error, until neither moves.
 */
@SuppressWarnings("ArrayRecordComponent") // of this package alone, which changes none
record Mode(double[] deviations, RealMatrix covariance, ErrorSize error, RealMatrix logErrorCovariance) {

    private static final int MOST_TURNS = 20;

    /** In turns: logarithms of the error that move by less are settled. */
    private static final double SETTLED = 0.005;

    private static final int MOST_STEPS = 60;

    static Mode of(Posterior posterior, double[] start) {
        double[] deviations = start;
        ErrorSize error = posterior.startError();
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            deviations = leastSquares(posterior, deviations, error);
            double[] at = deviations;
            double[] residuals = posterior.residuals(at);
            double[][] slopes = posterior.slopes(at);
            ErrorSize before = error;
            error = likeliest(posterior, at, residuals, slopes, before);
            if (MathArrays.distanceInf(error.logs(), before.logs()) < SETTLED) {
                break;
            }
        }
        deviations = leastSquares(posterior, deviations, error);
        double[] residuals = posterior.residuals(deviations);
        double[][] slopes = posterior.slopes(deviations);
        RealMatrix errorCovariance = curvature(posterior, deviations, residuals, slopes, error);
        Whitening whitening = posterior.whitening(error);
        Arrays.stream(slopes).forEach(whitening::apply);
        return new Mode(deviations, MatrixUtils.inverse(Posterior.information(slopes)), error, errorCovariance);
    }

    /** How likely the log is here, the unknowns integrated over: what two ends of a search are compared by. */
    double logMarginal(Posterior posterior) {
        return posterior.logOfError(deviations, posterior.residuals(deviations), posterior.slopes(deviations), error);
    }

    private static double[] leastSquares(Posterior posterior, double[] start, ErrorSize error) {
        Whitening whitening = posterior.whitening(error);
        MultivariateJacobianFunction model = point -> {
            double[] at = point.toArray();
            double[] white = posterior.residuals(at);
            whitening.apply(white);
            double[][] slopes = posterior.slopes(at);
            int rows = white.length;
            RealVector value = new ArrayRealVector(rows + at.length);
            RealMatrix jacobian = new Array2DRowRealMatrix(rows + at.length, at.length);
            for (int row = 0; row < rows; row++) {
                value.setEntry(row, white[row]);
            }
            for (int i = 0; i < at.length; i++) {
                whitening.apply(slopes[i]);
                for (int row = 0; row < rows; row++) {
                    jacobian.setEntry(row, i, slopes[i][row]);
                }
                value.setEntry(rows + i, at[i]);
                jacobian.setEntry(rows + i, i, 1);
            }
            return new Pair<>(value, jacobian);
        };
        int rows = posterior.residuals(start).length + start.length;
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-7)
                .withParameterRelativeTolerance(1e-5)
                .optimize(new LeastSquaresBuilder()
                        .model(model)
                        .target(new double[rows])
                        .start(start)
                        .parameterValidator(point -> within(posterior, point))
                        .maxEvaluations(MOST_STEPS)
                        .maxIterations(MOST_STEPS)
                        .build())
                .getPoint()
                .toArray();
    }

    private static RealVector within(Posterior posterior, RealVector point) {
        RealVector within = point.copy();
        for (int i = 0; i < within.getDimension(); i++) {
            Prior prior = posterior.priors.get(i);
            within.setEntry(i, prior.deviations(prior.value(point.getEntry(i))));
        }
        return within;
    }

    private static ErrorSize likeliest(
            Posterior posterior, double[] at, double[] residuals, double[][] slopes, ErrorSize start) {
        int[] free = posterior.freeErrors();
        double[] from = new double[free.length];
        double[] found = new SimplexOptimizer(1e-8, 1e-6)
                .optimize(
                        new MaxEval(2000),
                        GoalType.MAXIMIZE,
                        new InitialGuess(from),
                        new NelderMeadSimplex(free.length, 0.3),
                        new ObjectiveFunction(
                                by -> finite(posterior.logOfError(at, residuals, slopes, moved(start, free, by)))))
                .getPoint();
        return moved(start, free, found);
    }

    /** The error with some of its logarithms moved. */
    static ErrorSize moved(ErrorSize from, int[] free, double[] by) {
        double[] logs = from.logs();
        for (int i = 0; i < free.length; i++) {
            logs[free[i]] += by[i];
        }
        return ErrorSize.ofLogs(logs);
    }

    /** A simplex cannot compare infinities. */
    private static double finite(double value) {
        return Math.max(-1e12, value);
    }

    /** Covariance of the error's logarithms from second differences of its likelihood. */
    private static RealMatrix curvature(
            Posterior posterior, double[] at, double[] residuals, double[][] slopes, ErrorSize error) {
        double step = 0.05;
        int[] free = posterior.freeErrors();
        RealMatrix matrix = new Array2DRowRealMatrix(free.length, free.length);
        for (int i = 0; i < free.length; i++) {
            for (int j = 0; j < free.length; j++) {
                double sum = 0;
                for (int one = -1; one <= 1; one += 2) {
                    for (int other = -1; other <= 1; other += 2) {
                        double[] by = new double[free.length];
                        by[i] += one * step;
                        by[j] += other * step;
                        sum += one * other * posterior.logOfError(at, residuals, slopes, moved(error, free, by));
                    }
                }
                matrix.setEntry(i, j, -sum / (4 * step * step));
            }
        }
        return MatrixUtils.inverse(matrix);
    }
}
