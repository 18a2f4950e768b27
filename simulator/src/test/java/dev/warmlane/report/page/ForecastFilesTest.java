package dev.warmlane.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.SampleReports;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForecastFilesTest {

    @TempDir
    private Path folder;

    @Test
    void writesPageTextTablesAndCharts() throws IOException {
        ForecastFiles files = ForecastFiles.of(SampleReports.MUNICIPAL);
        files.files().write(folder);

        assertThat(files.withoutCharts()).isEmpty();
        assertThat(names())
                .containsExactly(
                        "charts/heat-and-gas.png",
                        "charts/heat-and-gas.svg",
                        "charts/pool-balance.png",
                        "charts/pool-balance.svg",
                        "charts/season-exposure.png",
                        "charts/season-exposure.svg",
                        "charts/season-temperature.png",
                        "charts/season-temperature.svg",
                        "charts/temperature-duration.png",
                        "charts/temperature-duration.svg",
                        "forecast.html",
                        "forecast.txt",
                        "hours.csv",
                        "months.csv",
                        "weeks.csv");
    }

    @Test
    void whereNothingCanBeDrawnAllElseIsWritten() throws IOException {
        ForecastFiles files = ForecastFiles.of(SampleReports.MUNICIPAL, Optional.of("install fonts"));
        files.files().write(folder);

        assertThat(files.withoutCharts()).hasValue("install fonts");
        assertThat(names()).containsExactly("forecast.html", "forecast.txt", "hours.csv", "months.csv", "weeks.csv");
        assertThat(Files.readString(folder.resolve("forecast.html"))).contains("install fonts");
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
