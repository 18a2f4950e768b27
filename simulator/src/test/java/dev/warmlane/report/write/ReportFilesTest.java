package dev.warmlane.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Report;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.SampleStudies;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {

    @TempDir
    private Path folder;

    @Test
    void writesPageTextTablesAndCharts() throws IOException {
        ReportFiles files = ReportFiles.of(ForecastReport.of(SampleReports.MUNICIPAL));
        files.files().write(folder);

        assertThat(files.withoutCharts()).isEmpty();
        assertThat(names())
                .containsExactly(
                        "alternatives.csv",
                        "certainty.csv",
                        "charts/alternatives.png",
                        "charts/alternatives.svg",
                        "charts/heat-and-gas.png",
                        "charts/heat-and-gas.svg",
                        "charts/money-over-years.png",
                        "charts/money-over-years.svg",
                        "charts/pool-balance.png",
                        "charts/pool-balance.svg",
                        "charts/season-doubt.png",
                        "charts/season-doubt.svg",
                        "charts/season-temperature.png",
                        "charts/season-temperature.svg",
                        "charts/temperature-duration.png",
                        "charts/temperature-duration.svg",
                        "forecast.html",
                        "forecast.txt",
                        "hours.csv",
                        "money.csv",
                        "months.csv",
                        "weeks.csv");
    }

    @Test
    void whereNothingCanBeDrawnAllElseIsWritten() throws IOException {
        ReportFiles files = ReportFiles.of(ForecastReport.of(SampleReports.MUNICIPAL), Optional.of("install fonts"));
        files.files().write(folder);

        assertThat(files.withoutCharts()).hasValue("install fonts");
        assertThat(names())
                .containsExactly(
                        "alternatives.csv",
                        "certainty.csv",
                        "forecast.html",
                        "forecast.txt",
                        "hours.csv",
                        "money.csv",
                        "months.csv",
                        "weeks.csv");
        assertThat(Files.readString(folder.resolve("forecast.html"))).contains("install fonts");
    }

    @Test
    void studiesAreWrittenWithoutChartsToo() throws IOException {
        for (Report report : SampleStudies.MUNICIPAL.reports()) {
            ReportFiles files = ReportFiles.of(report, Optional.of("install fonts"));
            assertThat(files.withoutCharts()).hasValue("install fonts");
            files.files().write(folder);
        }

        assertThat(names())
                .containsExactly(
                        "areas.csv",
                        "areas.html",
                        "areas.txt",
                        "exposure.csv",
                        "mountings.csv",
                        "mountings.html",
                        "mountings.txt",
                        "mountings_days.csv",
                        "mountings_even.csv",
                        "mountings_months.csv",
                        "mountings_roof.csv",
                        "sensitivity.csv",
                        "sensitivity.html",
                        "sensitivity.txt",
                        "years-spread.csv",
                        "years.csv",
                        "years.html",
                        "years.txt");
        for (String page : List.of("areas.html", "mountings.html", "sensitivity.html", "years.html")) {
            assertThat(Files.readString(folder.resolve(page)))
                    .contains("install fonts")
                    .doesNotContain("<svg");
        }
    }

    @Test
    void chartsThatAnEarlierRunLeftAreRemoved() throws IOException {
        Path left = Files.createDirectories(folder.resolve("charts")).resolve("heat-and-gas.png");
        Files.writeString(left, "of a pool that had a heater");

        ReportFiles.of(ForecastReport.of(SampleReports.odd("neither collectors nor heater")))
                .files()
                .write(folder);

        assertThat(left).doesNotExist();
        assertThat(names()).contains("charts/season-temperature.png");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
