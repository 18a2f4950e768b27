package dev.warmlane.report.chart;

import dev.warmlane.units.Estimate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Charts of money and of what else it could do. */
public final class MoneyCharts {

    static final String BAND = "low to high";
    static final String LIKELY = "likely";

    private static final int X_STEPS = 10;
    private static final int Y_STEPS = 8;

    private MoneyCharts() {}

    /**
     * What has come together year by year, as money of today.
     *
     * @param name the name of its files
     * @param title what the installation is called
     * @param currency how money is written
     * @param years after 0, 1, 2 and more years
     */
    public static Chart years(String name, String title, String currency, List<Estimate> years) {
        double[] x = IntStream.range(0, years.size()).asDoubleStream().toArray();
        double[] low = of(years, Estimate::low);
        double[] high = of(years, Estimate::high);
        LinePlot plot = new LinePlot(
                "years after the collectors are paid",
                Scale.holding(0, Math.max(1, years.size() - 1), X_STEPS),
                Plot.Label.WHOLE,
                currency + ", as money of today",
                Scale.withZero(Y_STEPS, low, high));
        plot.band(BAND, x, low, high, Palette.faint(Palette.SKY_BLUE, 0.45));
        plot.level("paid back", 0, Palette.INK, Pen.HAIR);
        plot.line(LIKELY, x, of(years, Estimate::likely), Palette.BLUE, Pen.THICK);
        return new Chart(name, "When have the collectors paid for themselves?", title, plot);
    }

    /**
     * Bars of what the alternatives have of something.
     *
     * @param name the name of its files
     * @param title what the installation is called
     * @param question the title of the chart
     * @param names the alternatives
     * @param axis what the bars show, with its unit
     * @param values one for each
     */
    public static Chart alternatives(
            String name, String title, String question, List<String> names, String axis, double[] values) {
        BarPlot plot = BarPlot.sideBySide(names, axis, Scale.withZero(Y_STEPS, values));
        plot.bars(axis, values, Palette.BLUE);
        return new Chart(name, question, title, plot);
    }

    private static double[] of(List<Estimate> years, ToDoubleFunction<Estimate> bound) {
        return years.stream().mapToDouble(bound).toArray();
    }
}
