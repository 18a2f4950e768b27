package dev.warmlane.report.chart;

import dev.warmlane.report.ForecastReport;
import java.util.ArrayList;
import java.util.List;

/** The charts of a forecast. */
public final class ForecastCharts {

    /** The names of all charts that there may be. */
    public static final List<String> NAMES =
            List.of("season-temperature", "temperature-duration", "heat-and-gas", "pool-balance", "season-exposure");

    private ForecastCharts() {}

    /** All that there is something to show on, the most asked for first. */
    public static List<Chart> of(ForecastReport report) {
        List<Chart> charts = new ArrayList<>();
        charts.add(SeasonTemperatureChart.of(report));
        report.wind().ifPresent(band -> charts.add(ExposureChart.of(report, band)));
        charts.add(PoolBalanceChart.of(report));
        HeatAndGasChart.of(report).ifPresent(charts::add);
        DurationChart.of(report).ifPresent(charts::add);
        return charts;
    }
}
