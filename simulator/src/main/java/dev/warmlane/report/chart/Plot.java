package dev.warmlane.report.chart;

import java.util.List;
import org.knowm.xchart.internal.chartpart.IChart;
import org.knowm.xchart.internal.series.AxesChartSeries;

/** Axes and what is drawn between them. */
sealed interface Plot permits LinePlot, BarPlot {

    /** What paints it. */
    IChart painter();

    /** What is drawn, in the order of the legend. */
    List<? extends AxesChartSeries> series();
}
