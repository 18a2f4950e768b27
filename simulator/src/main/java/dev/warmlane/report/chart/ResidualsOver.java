package dev.warmlane.report.chart;

import java.util.Arrays;
import java.util.TreeMap;

/** What was computed less what was measured, over something else: a point for each, and the mean of those at one place. */
public final class ResidualsOver {

    private static final int STEPS = 8;

    private ResidualsOver() {}

    /**
     * The chart.
     *
     * @param name name of its files, without an ending
     * @param title what it shows
     * @param subtitle of which measurement
     * @param over what the residuals are drawn over, with its unit
     * @param quantity the residual, with its unit
     * @param at where each residual stands; the mean is drawn of those that stand at one place
     * @param residual computed less measured, in the same order
     */
    public static Chart of(
            String name, String title, String subtitle, String over, String quantity, double[] at, double[] residual) {
        if (at.length == 0 || at.length != residual.length) {
            throw new IllegalArgumentException(
                    "as many places as residuals, and some: " + at.length + " and " + residual.length);
        }
        Scale x = Scale.holding(0, Arrays.stream(at).max().orElseThrow(), STEPS);
        double most = Arrays.stream(residual).map(Math::abs).max().orElseThrow();
        Scale y = Scale.holding(-most, most, STEPS);
        LinePlot plot = new LinePlot(over, x, (value, notation) -> notation.show(value, x.decimals()), quantity, y);
        plot.points("each", at, residual, Palette.SKY_BLUE);
        TreeMap<Double, double[]> means = new TreeMap<>();
        for (int i = 0; i < at.length; i++) {
            double[] sum = means.computeIfAbsent(at[i], any -> new double[2]);
            sum[0] += residual[i];
            sum[1]++;
        }
        plot.line(
                "mean",
                means.keySet().stream().mapToDouble(place -> place).toArray(),
                means.values().stream().mapToDouble(sum -> sum[0] / sum[1]).toArray(),
                Palette.VERMILLION,
                Pen.THICK);
        plot.line("computed as measured", new double[] {x.low(), x.high()}, new double[] {0, 0}, Palette.INK, Pen.HAIR);
        return new Chart(name, title, subtitle, plot);
    }
}
