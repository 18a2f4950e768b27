package dev.warmlane.report.page;

import dev.warmlane.files.FileSet;
import dev.warmlane.report.AreaParts;
import dev.warmlane.report.CsvFiles;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.MountingCsv;
import dev.warmlane.report.MountingParts;
import dev.warmlane.report.MountingText;
import dev.warmlane.report.SensitivityParts;
import dev.warmlane.report.StudyText;
import dev.warmlane.report.chart.AreaCharts;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.Drawing;
import dev.warmlane.report.chart.MountingCharts;
import dev.warmlane.report.chart.SensitivityCharts;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * All files of a study: page, text, csv files and charts.
 *
 * @param files the files, to be written together
 * @param withoutCharts why there are no charts among them; nothing where there are
 */
public record StudyFiles(FileSet files, Optional<String> withoutCharts) {

    /**
     * The files of a comparison of mountings; without charts where this machine cannot draw.
     *
     * @param described the forecast of what the study started from, with all that was assumed
     * @param parts the comparison
     */
    public static StudyFiles of(ForecastReport described, MountingParts parts) {
        return of(described, parts, Drawing.missing());
    }

    static StudyFiles of(ForecastReport described, MountingParts parts, Optional<String> withoutCharts) {
        List<Chart> charts = drawn(withoutCharts, () -> MountingCharts.of(parts.study(), parts.units()));
        FileSet files = new FileSet()
                .add("mountings.html", MountingPage.of(described, parts, charts, withoutCharts))
                .add(
                        "mountings.txt",
                        MountingText.of(parts.study(), parts.turning(), parts.units(), described.assumed())
                                .text());
        MountingCsv.addTo(files, parts.study(), parts.units());
        return new StudyFiles(ChartFiles.addTo(files, charts, MountingCharts.NAMES), withoutCharts);
    }

    /**
     * The files of an area study; without charts where this machine cannot draw.
     *
     * @param described the forecast of what the study started from
     * @param parts the study
     */
    public static StudyFiles of(ForecastReport described, AreaParts parts) {
        return of(described, parts, Drawing.missing());
    }

    static StudyFiles of(ForecastReport described, AreaParts parts, Optional<String> withoutCharts) {
        List<Chart> charts = drawn(withoutCharts, () -> AreaCharts.of(parts.study(), parts.units()));
        FileSet files = new FileSet()
                .add("areas.html", AreaPage.of(described, parts, charts, withoutCharts))
                .add("areas.txt", StudyText.of(parts.study(), parts.units()).text());
        CsvFiles.addTo(files, parts.study(), parts.units());
        return new StudyFiles(ChartFiles.addTo(files, charts, AreaCharts.NAMES), withoutCharts);
    }

    /**
     * The files of what a forecast depends on; without charts where this machine cannot draw.
     *
     * @param described the forecast of what the studies started from
     * @param parts the studies
     */
    public static StudyFiles of(ForecastReport described, SensitivityParts parts) {
        return of(described, parts, Drawing.missing());
    }

    static StudyFiles of(ForecastReport described, SensitivityParts parts, Optional<String> withoutCharts) {
        List<Chart> charts =
                drawn(withoutCharts, () -> SensitivityCharts.of(parts.name(), parts.study(), parts.units()));
        FileSet files = new FileSet()
                .add("sensitivity.html", SensitivityPage.of(described, parts, charts, withoutCharts))
                .add(
                        "sensitivity.txt",
                        StudyText.of(parts.name(), parts.exposure(), parts.study(), parts.units())
                                .text());
        CsvFiles.addTo(files, parts.exposure(), parts.units());
        CsvFiles.addTo(files, parts.study(), parts.units());
        return new StudyFiles(ChartFiles.addTo(files, charts, SensitivityCharts.NAMES), withoutCharts);
    }

    private static List<Chart> drawn(Optional<String> withoutCharts, Supplier<List<Chart>> charts) {
        return withoutCharts.isPresent() ? List.of() : charts.get();
    }
}
