package dev.warmlane.report.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Lines and bands; what is added first lies below. */
final class LinePlot implements Plot {

    private final XYChart chart = new XYChart(Chart.WIDTH, Chart.HEIGHT);
    private final List<XYSeries> series = new ArrayList<>();
    private final Scale x;

    /** A plot without lines; {@code xLabel} writes the ticks of x. */
    LinePlot(String xTitle, Scale x, DoubleFunction<String> xLabel, String yTitle, Scale y) {
        this.x = x;
        PlotStyle.apply(chart.getStyler(), y);
        chart.setXAxisTitle(xTitle);
        chart.setYAxisTitle(yTitle);
        chart.getStyler()
                .setXAxisMin(x.low())
                .setXAxisMax(x.high())
                .setXAxisTickLabelsFormattingFunction(xLabel::apply)
                .setXAxisTickMarkSpacingHint(PlotStyle.xSpacing(x));
    }

    /**
     * Adds a line. The library draws straight segments one by one, each starting its dashes anew, and smooth ones as one
     * path; with points as dense as ours both look the same but for the dashes.
     */
    LinePlot line(String name, double[] x, double[] y, Color colour, Pen pen) {
        XYSeries line = chart.addSeries(name, x, y)
                .setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Line)
                .setSmooth(true);
        return add(line, colour, pen);
    }

    /** Adds a level line over the whole width. */
    LinePlot level(String name, double y, Color colour, Pen pen) {
        return line(name, new double[] {x.low(), x.high()}, new double[] {y, y}, colour, pen);
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
        XYSeries band = chart.addSeries(name, around, edge)
                .setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea)
                .setSmooth(true);
        band.setFillColor(colour);
        return add(band, colour, Pen.HAIR);
    }

    @Override
    public XYChart painter() {
        return chart;
    }

    @Override
    public List<XYSeries> series() {
        return series;
    }

    private LinePlot add(XYSeries added, Color colour, Pen pen) {
        added.setMarker(SeriesMarkers.NONE).setLineColor(colour).setLineStyle(pen.stroke());
        series.add(added);
        return this;
    }
}
