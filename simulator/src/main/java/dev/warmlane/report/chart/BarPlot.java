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
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Bars over named categories. */
final class BarPlot implements Plot {

    private static final int BETWEEN_LABELS = 10;

    private final CategoryChart chart = new CategoryChart(Chart.WIDTH, Chart.HEIGHT);
    private final List<CategorySeries> series = new ArrayList<>();
    private final List<double[]> values = new ArrayList<>();
    private final List<String> categories;
    private final Scale y;
    private final boolean stacked;

    private BarPlot(List<String> categories, String yTitle, Scale y, boolean stacked) {
        this.categories = categories;
        this.y = y;
        this.stacked = stacked;
        PlotStyle.apply(chart.getStyler(), y);
        chart.setYAxisTitle(yTitle);
        chart.getStyler().setStacked(stacked).setAvailableSpaceFill(fill());
        // every category has its label, none has a grid line
        chart.getStyler().setPlotGridVerticalLinesVisible(false).setXAxisTickMarkSpacingHint(1);
    }

    /** Bars side by side. */
    static BarPlot sideBySide(List<String> categories, String yTitle, Scale y) {
        return new BarPlot(categories, yTitle, y, false);
    }

    /** Bars on top of each other, negative ones hanging down. */
    static BarPlot stacked(List<String> categories, String yTitle, Scale y) {
        return new BarPlot(categories, yTitle, y, true);
    }

    /** Adds a bar to every category. */
    BarPlot bars(String name, double[] y, Color colour) {
        CategorySeries bars =
                chart.addSeries(name, categories, Arrays.stream(y).boxed().toList());
        bars.setChartCategorySeriesRenderStyle(CategorySeries.CategorySeriesRenderStyle.Bar);
        bars.setFillColor(colour);
        bars.setMarker(SeriesMarkers.NONE).setLineColor(colour);
        series.add(bars);
        values.add(y.clone());
        return this;
    }

    @Override
    public CategoryChart painter() {
        return chart;
    }

    @Override
    public List<CategorySeries> series() {
        return series;
    }

    /** The share of its room that a category fills. */
    private double fill() {
        return stacked ? 0.5 : 0.72;
    }

    @Override
    public Hatch hatch(int n) {
        return Hatch.of(n);
    }

    @Override
    public List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        for (int category = 0; category < categories.size(); category++) {
            double above = 0;
            double below = 0;
            for (int n = 0; n < series.size(); n++) {
                double value = values.get(n)[category];
                double from = !stacked ? 0 : value < 0 ? below : above;
                double to = from + value;
                double wide = fill() / (stacked ? 1 : series.size());
                double left = category + (1 - fill()) / 2 + (stacked ? 0 : n * wide);
                bars.add(new Bar(
                        new Rectangle2D.Double(left, Math.min(from, to), wide, Math.abs(value)),
                        series.get(n).getFillColor(),
                        hatch(n)));
                above += Math.max(0, value);
                below += Math.min(0, value);
            }
        }
        return bars;
    }

    @Override
    public List<Tick> ticks(Notation notation) {
        int width = PlotStyle.width() / categories.size() - BETWEEN_LABELS;
        return IntStream.range(0, categories.size())
                .mapToObj(i -> new Tick(i + 0.5, Lettering.broken(categories.get(i), width)))
                .toList();
    }

    @Override
    public String xTitle() {
        return "";
    }

    @Override
    public double left() {
        return 0;
    }

    @Override
    public double right() {
        return categories.size();
    }

    @Override
    public Scale y() {
        return y;
    }

    @Override
    public Optional<Line2D> ground() {
        return Optional.of(new Line2D.Double(left(), 0, right(), 0));
    }
}
