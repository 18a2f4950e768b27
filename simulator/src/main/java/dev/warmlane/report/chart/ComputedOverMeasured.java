package dev.warmlane.report.chart;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/** What was computed over what was measured: a point for each, beside the line on which both are the same. */
public final class ComputedOverMeasured {

    private static final List<Color> COLOURS = List.of(Palette.BLUE, Palette.VERMILLION, Palette.GREEN, Palette.PURPLE);

    private static final int STEPS = 8;

    private ComputedOverMeasured() {}

    /**
     * The chart.
     *
     * @param name name of its files, without an ending
     * @param title what it shows
     * @param subtitle of which measurement
     * @param quantity the quantity with its unit, such as "heat, W/m²"
     * @param measuredWithin standard uncertainty of a measured value, in that unit; 0 draws no band for it
     * @param series the points, up to four kinds of them
     */
    public static Chart of(
            String name, String title, String subtitle, String quantity, double measuredWithin, List<Points> series) {
        if (series.isEmpty() || series.size() > COLOURS.size()) {
            throw new IllegalArgumentException("one to four kinds of points, not " + series.size());
        }
        double[] all = series.stream()
                .flatMapToDouble(
                        points -> DoubleStream.concat(Arrays.stream(points.measured), Arrays.stream(points.computed)))
                .toArray();
        Scale scale = Scale.holding(
                Arrays.stream(all).min().orElseThrow(), Arrays.stream(all).max().orElseThrow(), STEPS);
        LinePlot plot = new LinePlot(
                "measured " + quantity,
                scale,
                (value, notation) -> notation.show(value, scale.decimals()),
                "computed " + quantity,
                scale);
        if (measuredWithin > 0) {
            double width = 2 * measuredWithin;
            double[] at = {scale.low(), scale.low() + width, scale.high() - width, scale.high()};
            double[] below = Arrays.stream(at)
                    .map(value -> Math.max(scale.low(), value - width))
                    .toArray();
            double[] above = Arrays.stream(at)
                    .map(value -> Math.min(scale.high(), value + width))
                    .toArray();
            plot.band("within twice the measurement's own uncertainty", at, below, above, Palette.PALE);
        }
        for (int i = 0; i < series.size(); i++) {
            Points points = series.get(i);
            plot.points(points.name, points.measured, points.computed, COLOURS.get(i));
        }
        double[] ends = {scale.low(), scale.high()};
        plot.line("computed as measured", ends, ends, Palette.INK, Pen.HAIR);
        return new Chart(name, title, subtitle, plot);
    }

    /**
     * Points of one kind.
     *
     * @param name what they are
     * @param measured measured values
     * @param computed computed values, in the same order
     */
    @SuppressWarnings("ArrayRecordComponent") // on its way into a plot, never compared
    public record Points(String name, double[] measured, double[] computed) {

        /** As many of both, and some. */
        public Points {
            if (measured.length == 0 || measured.length != computed.length) {
                throw new IllegalArgumentException("as many computed as measured values, and some: " + computed.length
                        + " and " + measured.length);
            }
        }
    }
}
