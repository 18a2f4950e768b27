package dev.warmlane.report.chart;

import dev.warmlane.units.Notation;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.HorizontalBarSeries;

/** Bars lying in rows, the first on top, for names that are too long to stand below bars. */
final class RowPlot implements Plot {

    /** Height of a bar, and what a row has above and below its bars together. */
    private static final int BAR = 8;

    private static final int BETWEEN_ROWS = 8;

    private static final double FILL = BAR * 2.0 / (BAR * 2 + BETWEEN_ROWS);

    /** What a picture has above and below its rows. */
    private static final int AROUND = 150;

    private final HorizontalBarChart chart = new HorizontalBarChart(Chart.WIDTH, Chart.HEIGHT);
    private final List<HorizontalBarSeries> series = new ArrayList<>();
    private final List<double[]> values = new ArrayList<>();
    private final List<String> names;
    private final String xTitle;
    private final Scale x;
    private final Scale y;
    private final int spacing;

    RowPlot(List<String> names, String xTitle, Scale x) {
        this.names = names;
        this.xTitle = xTitle;
        this.x = x;
        this.y = new Scale(0, names.size(), 1);
        this.spacing = PlotStyle.xSpacing(x, Chart.WIDTH - RowLabels.width(rows()) - 3 * Chart.PADDING);
        PlotStyle.apply(chart.getStyler(), y);
        chart.getStyler().setAvailableSpaceFill(FILL);
        chart.getStyler()
                .setXAxisMin(x.low())
                .setXAxisMax(x.high())
                .setXAxisTickMarkSpacingHint(spacing)
                .setYAxisTicksVisible(false)
                .setPlotGridHorizontalLinesVisible(false);
    }

    /** Adds a bar to every row. */
    RowPlot bars(String name, double[] values, Color colour) {
        HorizontalBarSeries bars = chart.addSeries(
                name,
                Arrays.stream(values).boxed().toList(),
                IntStream.range(0, names.size()).mapToObj(String::valueOf).toList());
        bars.setFillColor(colour);
        series.add(bars);
        this.values.add(values.clone());
        return this;
    }

    @Override
    public HorizontalBarChart painter() {
        return chart;
    }

    @Override
    public List<HorizontalBarSeries> series() {
        return series;
    }

    @Override
    public Hatch hatch(int n) {
        return Hatch.of(n);
    }

    @Override
    public List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        for (int row = 0; row < names.size(); row++) {
            for (int n = 0; n < series.size(); n++) {
                double value = values.get(n)[row];
                double high = FILL / series.size();
                double top = names.size() - row - (1 - FILL) / 2 - n * high;
                bars.add(new Bar(
                        new Rectangle2D.Double(Math.min(0, value), top - high, Math.abs(value), high),
                        series.get(n).getFillColor(),
                        hatch(n)));
            }
        }
        return bars;
    }

    @Override
    public List<Tick> ticks(Notation notation) {
        return x.ticks(at -> notation.show(at, x.decimals()));
    }

    @Override
    public Optional<Scale> x() {
        return Optional.of(x);
    }

    @Override
    public List<Tick> rows() {
        return IntStream.range(0, names.size())
                .mapToObj(row -> new Tick(names.size() - row - 0.5, names.get(row)))
                .toList();
    }

    @Override
    public int height() {
        int rows = names.size() * (BAR * series.size() + BETWEEN_ROWS);
        // the library places nothing on an axis, not even on this one, that is shorter than a step along x
        return AROUND + Math.max(rows, spacing + BETWEEN_ROWS);
    }

    @Override
    public String xTitle() {
        return xTitle;
    }

    @Override
    public double left() {
        return x.low();
    }

    @Override
    public double right() {
        return x.high();
    }

    @Override
    public Scale y() {
        return y;
    }

    @Override
    public Optional<Line2D> ground() {
        return Optional.of(new Line2D.Double(0, y.low(), 0, y.high()));
    }
}
