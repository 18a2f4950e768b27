package dev.warmlane.report.chart;

import java.util.List;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.internal.series.AxesChartSeries;

/** Axes and what is drawn between them. */
sealed interface Plot permits LinePlot, BarPlot {

    /** What paints it. */
    AxesChart<?, ?> painter();

    /** What is drawn, in the order of the legend. */
    List<? extends AxesChartSeries> series();

    /** The ticks of the x axis, whose labels the library would set on no common line. */
    List<Tick> ticks();

    /** What the x axis counts; empty where its labels say it. */
    String xTitle();

    /** Where the x axis begins. */
    double left();

    /** Where the x axis ends. */
    double right();

    /** The range of the y axis and its ticks. */
    Scale y();

    /** Whether a line at y = 0 is needed, for bars to stand on. */
    boolean hasGround();

    /**
     * A tick of the x axis.
     *
     * @param at its place
     * @param label what stands at it
     */
    record Tick(double at, String label) {}
}
