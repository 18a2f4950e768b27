package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MountingsCommandTest extends CommandRuns {

    private static final Path DEMO = Path.of("scenarios", "municipal-25m.toml");

    @TempDir
    private Path folder;

    private Path demoWith(String more) throws IOException {
        String weather = Path.of("..", "weather-samples", "cool-coast.csv")
                .toAbsolutePath()
                .normalize()
                .toString()
                .replace('\\', '/');
        return Files.writeString(
                folder.resolve("job.toml"),
                Files.readString(DEMO).replace("../../weather-samples/cool-coast.csv", weather) + more);
    }

    @Test
    void printsTheComparisonAndWritesAllOfItWhereItIsTold() throws IOException {
        Path output = folder.resolve("mountings");

        assertThat(run("mountings", DEMO.toString(), "-o", output.toString())).isZero();

        assertThat(out.toString())
                .contains("45° racks", "Where the ranking turns", "How near the turning is", "Written:")
                .doesNotContain("Month by month");
        assertThat(err.toString()).as("no progress where nobody watches").isEmpty();
        assertThat(output.resolve("mountings.csv")).isNotEmptyFile();
        assertThat(output.resolve("mountings_months.csv")).isNotEmptyFile();
        assertThat(output.resolve("mountings_even.csv")).isNotEmptyFile();
        assertThat(output.resolve("mountings_roof.csv")).isNotEmptyFile();
        assertThat(output.resolve("mountings_days.csv")).isNotEmptyFile();
        assertThat(output.resolve("charts").resolve("mounting-even.png")).isNotEmptyFile();
        assertThat(output.resolve("mountings.txt")).content().contains("Month by month", "no mountings given");
    }

    @Test
    void mountingsOfTheScenarioAreCompared() throws IOException {
        Path job = demoWith("""

                [[mountings]]
                name = "own racks"
                mounting = "rack"
                tilt = "20 deg"
                azimuth = "200 deg"
                pitch = "3 m"
                """);

        assertThat(run("mountings", job.toString())).isZero();

        assertThat(out.toString()).contains("own racks").doesNotContain("30° racks", "Where the ranking turns");
    }

    @Test
    void rowsThatCannotBeSpacedAreAProblemOfTheInput() throws IOException {
        Path job = demoWith("""

                [[mountings]]
                name = "early"
                mounting = "rack"
                tilt = "20 deg"
                azimuth = "180 deg"
                spacing = "6-18"
                spacing_date = "12-21"
                """);

        assertThat(run("mountings", job.toString())).isEqualTo(1);

        assertThat(err.toString())
                .contains("job.toml: rows facing 180 degrees cannot be kept free of shade from 6.0 to 18.0")
                .doesNotContain("Exception", "\tat ");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void helpShowsAnExample() {
        assertThat(run("mountings", "--help")).isZero();

        assertThat(out.toString())
                .contains("Example:", "warmlane mountings scenarios/municipal-25m.toml", "[[mountings]]");
    }
}
