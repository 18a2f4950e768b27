package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.FittedDoubt.Correlations;
import dev.warmlane.season.FittedDoubt.Spread;
import dev.warmlane.season.Installation;
import dev.warmlane.season.WindAndSun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A scenario with what a fit found keeps every key and remark that the fit has nothing to do with. */
class FittedScenarioTest {

    private static final Path SCENARIOS = Path.of("..", "examples", "scenarios");
    private static final FittedDoubt DOUBT = new FittedDoubt(
            "a log, some days",
            MonthDay.of(7, 3),
            MonthDay.of(8, 20),
            new Spread(0.01, 0.3, 0.15),
            new Spread(0.02, 0.85, 0.1),
            -4,
            new Spread(5, 0, 20),
            new Correlations(0.4, -0.3, 0.1),
            0.3,
            60);

    @TempDir
    private Path folder;

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS)) {
            return files.filter(file -> file.toString().endsWith(".toml"))
                    .filter(file -> !file.endsWith("indoor-school.toml"))
                    .sorted()
                    .toList();
        }
    }

    private static Installation fitted(Installation described) {
        return new WindAndSun(0.1234, 0.6789)
                .in(described).toBuilder().fitted(DOUBT).build();
    }

    /** Roofs as drawn, years, letterheads, heaters of every kind: what is read back is what was fitted. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleComesBack(Path example) throws IOException {
        Scenario before = ScenarioReader.read(example);
        Installation fitted = fitted(before.installation());
        Path file = folder.resolve("fitted.toml");
        Files.writeString(file, FittedScenario.text(example, before.installation(), fitted, folder));
        Scenario after = ScenarioReader.read(file);
        SameInstallation.check(after.installation(), fitted, SameInstallation.ROUNDING);
        assertThat(after.mountings()).isEqualTo(before.mountings());
        assertThat(after.weatherFile().toRealPath())
                .isEqualTo(before.weatherFile().toRealPath());
        assertThat(after.weatherReading()).isEqualTo(before.weatherReading());
        assertThat(after.realYears().isPresent()).isEqualTo(before.realYears().isPresent());
        assertThat(after.report().units()).isEqualTo(before.report().units());
        assertThat(remarks(file)).containsAll(remarks(example));
        // fitted again, and again: nothing grows
        String again = FittedScenario.text(file, before.installation(), fitted, folder);
        assertThat(again).isEqualTo(Files.readString(file));
    }

    private static List<String> remarks(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .map(String::strip)
                .filter(line -> line.startsWith("#"))
                .toList();
    }

    @Test
    void pathsLeadToTheSameFilesAndOldWordsStayAsRemarks() throws IOException {
        Path there = Files.createDirectories(folder.resolve("there"));
        String text = Files.readString(SCENARIOS.resolve("southern-summer.toml"))
                .replaceFirst("(?m)^weather = .*$", "weather = \"w/year.csv\" # ours\nyears = \"w/years\"");
        Path file = Files.writeString(folder.resolve("pool.toml"), text);
        Installation described =
                ScenarioReader.read(SCENARIOS.resolve("southern-summer.toml")).installation();
        String written = FittedScenario.text(file, described, fitted(described), there);
        assertThat(written)
                .contains("weather = \"../w/year.csv\" # ours", "years = \"../w/years\"", "# before the fit: ")
                .contains("wind_factor = 0.1234");
    }

    @Test
    void aPoolWithoutAHeadingIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("flat.toml"), "pool.area = \"50 m2\"\n");
        Installation described =
                ScenarioReader.read(SCENARIOS.resolve("southern-summer.toml")).installation();
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> FittedScenario.text(file, described, fitted(described), folder))
                .withMessageContaining("no line [pool]");
    }
}
