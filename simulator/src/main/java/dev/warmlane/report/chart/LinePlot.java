package dev.warmlane.report.chart;

import dev.warmlane.units.Notation;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Lines and bands; what is added first lies below and comes last in the legend. */
final class LinePlot implements Plot {

    /** Where many points fall on one another it is seen. */
    private static final double OPACITY_OF_MANY = 0.45;

    private static final double OPACITY_OF_FEW = 0.85;
    private static final int MANY = 100;

    private static final int POINT_SIZE = 6;

    private final XYChart chart = new XYChart(Chart.WIDTH, Chart.HEIGHT);
    private final List<XYSeries> series = new ArrayList<>();
    private final List<Dots> dots = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final String xTitle;
    private final Scale x;
    private final Scale y;
    private final Label xLabel;
    private int branches;

    /** A plot without lines; {@code xLabel} writes the ticks of x. */
    LinePlot(String xTitle, Scale x, Label xLabel, String yTitle, Scale y) {
        this.xTitle = xTitle;
        this.x = x;
        this.y = y;
        this.xLabel = xLabel;
        PlotStyle.apply(chart.getStyler(), y);
        chart.setYAxisTitle(yTitle);
        chart.getStyler().setMarkerSize(POINT_SIZE);
        chart.getStyler().setXAxisMin(x.low()).setXAxisMax(x.high()).setXAxisTickMarkSpacingHint(PlotStyle.xSpacing(x));
    }

    /** Adds a line. */
    LinePlot line(String name, double[] x, double[] y, Color colour, Pen pen) {
        Dense dense = Dense.of(x, y);
        XYSeries line = chart.addSeries(name, dense.x(), dense.y())
                .setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Line)
                .setSmooth(true);
        return add(line, colour, pen);
    }

    /** Adds a line that goes on from another of the same look, without a place of its own in the legend where its name is empty. */
    LinePlot branch(String name, double[] x, double[] y, Color colour, Pen pen) {
        if (!name.isEmpty()) {
            return line(name, x, y, colour, pen);
        }
        chart.addSeries("branch " + branches++, x.clone(), y.clone())
                .setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Line)
                .setSmooth(true)
                .setMarker(SeriesMarkers.NONE)
                .setLineColor(colour)
                .setLineStyle(pen.stroke());
        return this;
    }

    /** Adds dots of any size upon the lines. */
    LinePlot dots(String name, Color fill, List<Dot> places) {
        dots.add(new Dots(name, fill, List.copyOf(places)));
        return this;
    }

    /** Adds words about their middle. */
    LinePlot words(double x, double y, String text) {
        words.add(new Words(x, y, text));
        return this;
    }

    /** Adds points without a line between them. */
    LinePlot points(String name, double[] x, double[] y, Color colour) {
        Color faint = Palette.faint(colour, x.length > MANY ? OPACITY_OF_MANY : OPACITY_OF_FEW);
        XYSeries points = chart.addSeries(name, x.clone(), y.clone())
                .setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        points.setMarker(SeriesMarkers.CIRCLE).setMarkerColor(faint).setFillColor(faint);
        series.add(points);
        return this;
    }

    /** Adds a level line over the whole width. */
    LinePlot level(String name, double y, Color colour, Pen pen) {
        return line(name, new double[] {x.low(), x.high()}, new double[] {y, y}, colour, pen);
    }

    /** Adds an upright line over the whole height. */
    LinePlot upright(String name, double x, Color colour, Pen pen) {
        return line(name, new double[] {x, x}, new double[] {y.low(), y.high()}, colour, pen);
    }

    /** Adds a filled band between two curves over the same places. */
    LinePlot band(String name, double[] x, double[] low, double[] high, Color colour) {
        int n = x.length;
        double[] around = new double[2 * n];
        double[] edge = new double[2 * n];
        for (int i = 0; i < n; i++) {
            around[i] = x[i];
            edge[i] = high[i];
            around[2 * n - 1 - i] = x[i];
            edge[2 * n - 1 - i] = low[i];
        }
        XYSeries band =
                chart.addSeries(name, around, edge).setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        band.setFillColor(colour);
        return add(band, colour, Pen.HAIR);
    }

    @Override
    public XYChart painter() {
        return chart;
    }

    @Override
    public List<XYSeries> series() {
        return IntStream.range(0, series.size())
                .mapToObj(i -> series.get(series.size() - 1 - i))
                .toList();
    }

    @Override
    public List<Dots> dots() {
        return dots;
    }

    @Override
    public List<Words> words() {
        return words;
    }

    @Override
    public List<Tick> ticks(Notation notation) {
        return x.ticks(at -> xLabel.at(at, notation));
    }

    @Override
    public Optional<Scale> x() {
        return Optional.of(x);
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
        return Optional.empty();
    }

    private LinePlot add(XYSeries added, Color colour, Pen pen) {
        added.setMarker(SeriesMarkers.NONE).setLineColor(colour).setLineStyle(pen.stroke());
        series.add(added);
        return this;
    }
}
