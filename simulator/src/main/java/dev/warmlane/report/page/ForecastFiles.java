package dev.warmlane.report.page;

import dev.warmlane.files.FileSet;
import dev.warmlane.report.CsvFiles;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.ForecastText;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.Drawing;
import dev.warmlane.report.chart.ForecastCharts;
import java.util.List;
import java.util.Optional;

/**
 * All files of a forecast: text, page, csv files and charts.
 *
 * @param files the files, to be written together
 * @param withoutCharts why there are no charts among them; nothing where there are
 */
public record ForecastFiles(FileSet files, Optional<String> withoutCharts) {

    /** Makes the files; without charts where this machine cannot draw. */
    public static ForecastFiles of(ForecastReport report) {
        return of(report, Drawing.missing());
    }

    static ForecastFiles of(ForecastReport report, Optional<String> withoutCharts) {
        List<Chart> charts = withoutCharts.isPresent() ? List.of() : ForecastCharts.of(report);
        FileSet files = new FileSet()
                .add("forecast.html", ForecastPage.of(report, charts, withoutCharts))
                .add("forecast.txt", ForecastText.of(report).text());
        CsvFiles.addTo(files, report.forecast(), report.units());
        ChartFiles.addTo(files, charts, ForecastCharts.NAMES);
        return new ForecastFiles(files, withoutCharts);
    }
}
