package dev.warmlane.report.chart;

import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.report.Numbers;
import dev.warmlane.study.WaterCircuit;
import dev.warmlane.units.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The head that a circuit takes over its flow, and that its pump gives; where the circuit runs is a dot. */
public final class PumpChart {

    static final String CIRCUIT = "what the circuit takes";
    static final String PUMP = "what the pump gives";
    static final String RUNS = "as it runs";

    private static final int POINTS = 24;
    private static final int X_STEPS = 8;
    private static final int Y_STEPS = 7;

    /** How far beyond its flow a circuit is drawn. */
    private static final double BEYOND = 1.5;

    private static final double RADIUS = 5;

    private PumpChart() {}

    /**
     * The chart.
     *
     * @param name the name of its files
     * @param water the circuit
     * @param title the title of the report
     * @param numbers the units
     */
    public static Chart of(String name, WaterCircuit water, String title, Numbers numbers) {
        Optional<PumpCurve> curve = water.hydraulics().pump().curve();
        double most = Math.max(
                BEYOND * water.flowM3S(), curve.map(PumpCurve::largestM3S).orElse(0.0));
        double[] flows = IntStream.rangeClosed(1, POINTS)
                .mapToDouble(i -> i * most / POINTS)
                .toArray();
        double[] heads = Arrays.stream(flows).map(water::headM).toArray();
        double[] x = shown(numbers, Measure.FLOW, perHour(flows));
        double[] takes = shown(numbers, Measure.LENGTH, heads);
        double[] pumpX = shown(numbers, Measure.FLOW, perHour(points(curve, PumpCurve.Point::flowM3S)));
        double[] gives = shown(numbers, Measure.LENGTH, points(curve, PumpCurve.Point::headM));
        double ceiling = curve.isPresent() ? 2 * Arrays.stream(gives).max().orElse(0) : Double.POSITIVE_INFINITY;
        // a circuit that takes far more than the pump ever gives would leave the pump no room
        int shown = (int) Math.max(
                2, Arrays.stream(takes).takeWhile(head -> head <= ceiling).count());
        double[] drawn = Arrays.copyOf(takes, shown);
        Scale scale = Scale.withZero(Y_STEPS, drawn, gives);
        LinePlot plot = new LinePlot(
                "flow, " + Measure.FLOW.unit(numbers.units()),
                Scale.withZero(X_STEPS, Arrays.copyOf(x, shown), pumpX),
                Plot.Label.WHOLE,
                "head, " + Measure.LENGTH.unit(numbers.units()) + " of water",
                scale);
        if (curve.isPresent()) {
            plot.line(PUMP, pumpX, gives, Palette.VERMILLION, Pen.DASHED);
        }
        plot.line(CIRCUIT, Arrays.copyOf(x, shown), drawn, Palette.BLUE, Pen.THICK);
        plot.dots(
                RUNS,
                Palette.INK,
                List.of(new Plot.Dot(
                        Measure.FLOW.in(numbers.units(), water.flowM3h()),
                        Measure.LENGTH.in(numbers.units(), water.headM()),
                        RADIUS)));
        return new Chart(
                name,
                curve.isPresent() ? "Where do pump and circuit meet?" : "What head does the circuit take?",
                title,
                plot);
    }

    private static double[] points(Optional<PumpCurve> curve, ToDoubleFunction<PumpCurve.Point> number) {
        return curve.stream()
                .flatMapToDouble(known -> known.points().stream().mapToDouble(number))
                .toArray();
    }

    /** m³/h of m³/s. */
    private static double[] perHour(double[] m3s) {
        return Arrays.stream(m3s).map(flow -> 3600 * flow).toArray();
    }

    private static double[] shown(Numbers numbers, Measure measure, double[] values) {
        return DoubleStream.of(values)
                .map(value -> measure.in(numbers.units(), value))
                .toArray();
    }
}
