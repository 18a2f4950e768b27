package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForecastOutputTest {

    @TempDir
    private Path folder;

    @Test
    void pageAndChartsAreWrittenAndNamed() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();

        int exitCode = Main.run(
                new PrintWriter(out),
                new PrintWriter(err),
                "forecast",
                "scenarios/us-club.toml",
                "-o",
                folder.toString());

        assertThat(exitCode).isZero();
        assertThat(err.toString()).isEmpty();
        for (String name : new String[] {"forecast.html", "charts/season-temperature.png"}) {
            assertThat(folder.resolve(name)).isNotEmptyFile();
            assertThat(out.toString()).contains(folder.resolve(name).toString());
        }
    }
}
