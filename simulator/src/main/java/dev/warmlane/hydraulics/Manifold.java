package dev.warmlane.hydraulics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.jspecify.annotations.Nullable;

/**
 * Ways side by side between a header that brings the water and one that takes it away: tubes of a panel, panels of a bank,
 * banks of a row, rows of a roof.
 *
 * <p>Along both headers pressure is used up by friction. Where the water's momentum is counted, the header that divides
 * gains pressure as it slows down, all of the dynamic pressure that it loses, and the one that combines loses twice of what
 * it gains, because what comes in from the side has no speed along it (derived: Bernoulli without loss, and the momentum
 * of a header of one bore). The scheme is that of Bajura and Jones, Flow Distribution Manifolds, J. Fluids Engineering 98,
 * 1976 (abstract read), with these two limits in place of their measured coefficients. Each way meets the mean of the
 * pressures before and behind its branching.
 *
 * @param ways the ways, from the inlet on
 * @param supply pipes of the dividing header from each way to the next, one less than there are ways
 * @param back pipes of the combining header between the same ways
 * @param outlet at which end the water leaves
 * @param momentum whether the momentum of the water in the headers is counted
 * @param liquid what flows
 */
public record Manifold(
        List<Way> ways, List<Pipe> supply, List<Pipe> back, Outlet outlet, boolean momentum, Liquid liquid) {

    private static final int MOST_STEPS = 1000;

    private static final double SETTLED = 1e-13;

    /** What the residuals, relative to the pressure and the flow, may come to where it is solved. */
    private static final double SOLVED = 1e-7;

    /** Step for the derivatives, relative to the flow. */
    private static final double STEP = 1e-6;

    /** At which end of the headers the water leaves. */
    public enum Outlet {
        /** At the end at which it comes in: direct return, whose first way is the shortest. */
        SAME_END,
        /** At the other end: reversed return, in which all ways are of one length. */
        FAR_END
    }

    /**
     * How a flow divides.
     *
     * @param kgS the flow through each way, kg/s
     * @param dropPa total pressure used up from inlet to outlet, Pa
     */
    public record Split(List<Double> kgS, double dropPa) {

        /** Keeps its own copy of the list. */
        public Split {
            kgS = List.copyOf(kgS);
        }
    }

    /** Keeps its own copies. */
    public Manifold {
        ways = List.copyOf(ways);
        supply = List.copyOf(supply);
        back = List.copyOf(back);
        if (ways.isEmpty() || supply.size() != ways.size() - 1 || back.size() != ways.size() - 1) {
            throw new IllegalArgumentException("a manifold has ways, and pipes between each and the next; was given "
                    + ways.size() + ", " + supply.size() + " and " + back.size());
        }
    }

    /**
     * How a flow divides: the flows sum to it, and every way meets the pressure between the headers at its place. Solved by
     * the method of Levenberg and Marquardt from an even split.
     *
     * @param kgS flow through all of them, kg/s, above 0
     * @throws IllegalArgumentException if it cannot be solved, as where headers are far too narrow
     */
    public Split split(double kgS) {
        int n = ways.size();
        if (n == 1) {
            return new Split(List.of(kgS), ways.get(0).dropPa(kgS));
        }
        double even = kgS / n;
        double pressure =
                ways.stream().mapToDouble(way -> way.dropPa(even)).average().orElseThrow();
        double[] start = new double[n + 1];
        Arrays.fill(start, 1);
        double[] x = solved(start, even, pressure);
        return new Split(IntStream.range(0, n).mapToObj(i -> x[i] * even).toList(), x[n] * pressure);
    }

    private double[] solved(double[] start, double even, double pressure) {
        try {
            LeastSquaresOptimizer.Optimum found = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(SETTLED)
                    .withParameterRelativeTolerance(SETTLED)
                    .withOrthoTolerance(SETTLED)
                    .optimize(new LeastSquaresBuilder()
                            .model(point -> model(point, even, pressure))
                            .start(start)
                            .target(new double[start.length])
                            .lazyEvaluation(false)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
            if (found.getResiduals().getLInfNorm() < SOLVED) {
                return found.getPoint().toArray();
            }
        } catch (MathIllegalStateException unsolved) {
            throw unsolved(start.length - 1, unsolved);
        }
        throw unsolved(start.length - 1, null);
    }

    private static IllegalArgumentException unsolved(int ways, @Nullable Throwable cause) {
        return new IllegalArgumentException(
                "how the flow divides among " + ways
                        + " ways cannot be solved: headers or pipes are far too narrow for it, or their ways far too wide",
                cause);
    }

    private Pair<RealVector, RealMatrix> model(RealVector point, double even, double pressure) {
        double[] x = point.toArray();
        int n = ways.size();
        // what another way uses up does not depend on the flow through one, and takes the most time
        double[] drops = new double[n];
        for (int i = 0; i < n; i++) {
            drops[i] = ways.get(i).dropPa(x[i] * even);
        }
        double[] at = residuals(x, drops, even, pressure);
        RealMatrix slope = new Array2DRowRealMatrix(at.length, x.length);
        for (int j = 0; j < x.length; j++) {
            double kept = x[j];
            double drop = j < n ? drops[j] : 0;
            double[] above = moved(j, kept + STEP, x, drops, even, pressure);
            double[] below = moved(j, kept - STEP, x, drops, even, pressure);
            x[j] = kept;
            if (j < n) {
                drops[j] = drop;
            }
            for (int i = 0; i < at.length; i++) {
                slope.setEntry(i, j, (above[i] - below[i]) / (2 * STEP));
            }
        }
        return new Pair<>(new ArrayRealVector(at), slope);
    }

    /** With one of the unknowns moved. */
    private double[] moved(int j, double to, double[] x, double[] drops, double even, double pressure) {
        x[j] = to;
        if (j < drops.length) {
            drops[j] = ways.get(j).dropPa(to * even);
        }
        return residuals(x, drops, even, pressure);
    }

    /**
     * What is left over, relative: for each way the pressure between the headers less what it uses up, then the flows less
     * their sum. The unknowns are the flows over the even one, then the total pressure between inlet and outlet.
     */
    private double[] residuals(double[] x, double[] drops, double even, double pressure) {
        int n = ways.size();
        double[] left = new double[n + 1];
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += x[i] * even;
        }
        // total pressures of the headers over that of the outlet; in the far scheme the first back pressure is unknown,
        // and found from the outlet's at the other end
        double[] fromOutlet = backPa(x, even, total);
        double supplied = x[n] * pressure;
        double flow = total;
        for (int i = 0; i < n; i++) {
            double after = flow - x[i] * even;
            double here = supplied - (momentum ? meanDynamic(i, flow, after, supply) : 0);
            left[i] = (here - fromOutlet[i] - drops[i]) / pressure;
            flow = after;
            if (i < n - 1) {
                supplied -= supply.get(i).dropPa(flow, liquid);
            }
        }
        left[n] = total / (even * n) - 1;
        return left;
    }

    /** Pressure of the combining header at each way, over the total pressure of the outlet. */
    private double[] backPa(double[] x, double even, double total) {
        int n = ways.size();
        double[] pressures = new double[n];
        boolean same = outlet == Outlet.SAME_END;
        double flow = total;
        // against the flow, from the outlet on: p + 2·dynamic is kept at each inflow, and friction adds to it
        double kept = momentum ? dynamic(same ? 0 : n - 1, total, back) : 0;
        for (int k = 0; k < n; k++) {
            int i = same ? k : n - 1 - k;
            double before = flow - x[i] * even;
            pressures[i] = kept - (momentum ? 2 * meanDynamic(i, flow, before, back) : 0);
            flow = before;
            if (k < n - 1) {
                kept += back.get(same ? i : i - 1).dropPa(flow, liquid);
            }
        }
        return pressures;
    }

    private double meanDynamic(int way, double oneKgS, double otherKgS, List<Pipe> header) {
        return (dynamic(way, oneKgS, header) + dynamic(way, otherKgS, header)) / 2;
    }

    private double dynamic(int way, double kgS, List<Pipe> header) {
        Pipe pipe = header.get(Math.min(way, header.size() - 1));
        return liquid.dynamicPa(pipe.speedMs(kgS, liquid));
    }
}
