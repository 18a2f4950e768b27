package dev.warmlane.hydraulics;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A pump's head over its flow, as its maker tells it: straight from each point to the next.
 *
 * @param points at least two, of growing flow and falling head
 */
public record PumpCurve(List<Point> points) {

    private static final double SETTLED_M3S = 1e-12;

    private static final int MOST_STEPS = 1000;

    /**
     * A point of the curve.
     *
     * @param flowM3S flow of volume, m³/s, 0 or more
     * @param headM head, m of the water that it pumps, 0 or more
     */
    public record Point(double flowM3S, double headM) {}

    /** Checks that the flow grows and the head falls. */
    public PumpCurve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a pump curve has at least two points, was given " + points.size());
        }
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            boolean follows =
                    i == 0 || (point.flowM3S > points.get(i - 1).flowM3S && point.headM < points.get(i - 1).headM);
            if (!(point.flowM3S >= 0) || !(point.headM >= 0) || !follows) {
                throw new IllegalArgumentException(
                        "the points of a pump curve go from small flow to large, each with less"
                                + " head than the one before, none below 0; point " + (i + 1) + " does not");
            }
        }
    }

    /** The head at a flow, m; nothing beyond the curve's ends. */
    public OptionalDouble headM(double flowM3S) {
        PolynomialSplineFunction line = line();
        return line.isValidPoint(flowM3S) ? OptionalDouble.of(line.value(flowM3S)) : OptionalDouble.empty();
    }

    /** The largest flow of the curve, m³/s. */
    public double largestM3S() {
        return points.get(points.size() - 1).flowM3S;
    }

    /**
     * The flow at which it gives just the head that a circuit takes, m³/s; nothing where the circuit takes more than it gives
     * at any flow, or less than it gives at the curve's end.
     *
     * @param circuit the head that the circuit takes over the flow of volume, m, rising
     */
    public OptionalDouble meets(DoubleUnaryOperator circuit) {
        PolynomialSplineFunction line = line();
        double least = points.get(0).flowM3S;
        double most = largestM3S();
        if (line.value(least) < circuit.applyAsDouble(least) || line.value(most) > circuit.applyAsDouble(most)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(new BrentSolver(SETTLED_M3S)
                .solve(MOST_STEPS, flow -> line.value(flow) - circuit.applyAsDouble(flow), least, most));
    }

    private PolynomialSplineFunction line() {
        return new LinearInterpolator()
                .interpolate(
                        points.stream().mapToDouble(Point::flowM3S).toArray(),
                        points.stream().mapToDouble(Point::headM).toArray());
    }
}
