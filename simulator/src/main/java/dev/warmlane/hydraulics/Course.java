package dev.warmlane.hydraulics;

import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A way that was asked at some flows and is drawn through them, the logarithm of the pressure over that of the flow, so
 * that a network need not be solved within another again and again. Beyond its ends it goes on as a power.
 */
public final class Course implements Way {

    /** Points for each factor of ten in the flow; a bank is then met within 1 %, where its headers turn turbulent (tested). */
    private static final int POINTS = 24;

    private final PolynomialSplineFunction logarithms;
    private final double from;
    private final double to;
    private final double before;
    private final double beyond;

    private Course(PolynomialSplineFunction logarithms, double from, double to, double before, double beyond) {
        this.logarithms = logarithms;
        this.from = from;
        this.to = to;
        this.before = before;
        this.beyond = beyond;
    }

    /**
     * Draws a way between two flows, kg/s, the first above 0 and the second above it; its drops must be above 0.
     *
     * @throws IllegalArgumentException as the way does
     */
    public static Course of(Way way, double fromKgS, double toKgS) {
        double from = Math.log(fromKgS);
        double to = Math.log(toKgS);
        int cells = Math.max(4, (int) Math.ceil((to - from) / Math.log(10) * POINTS));
        double[] x = new double[cells + 1];
        double[] y = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            x[i] = i == cells ? to : from + i * (to - from) / cells;
            double drop = way.dropPa(Math.exp(x[i]));
            if (!(drop > 0) || Double.isInfinite(drop)) {
                throw new IllegalArgumentException("a flow of " + (float) Math.exp(x[i]) + " kg/s would use up "
                        + (float) drop + " Pa on its way");
            }
            y[i] = Math.log(drop);
        }
        return new Course(
                new AkimaSplineInterpolator().interpolate(x, y),
                from,
                to,
                (y[1] - y[0]) / (x[1] - x[0]),
                (y[cells] - y[cells - 1]) / (x[cells] - x[cells - 1]));
    }

    @Override
    public double dropPa(double kgS) {
        if (kgS == 0) {
            return 0;
        }
        double log = Math.log(Math.abs(kgS));
        double within = Math.min(to, Math.max(from, log));
        double slope = log < from ? before : beyond;
        return Math.copySign(Math.exp(logarithms.value(within) + slope * (log - within)), kgS);
    }
}
