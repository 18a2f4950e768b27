package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands areas and sensitivity. */
class StudyCommandsTest extends CommandRuns {

    private static final String DEMO =
            Path.of("scenarios", "municipal-25m.toml").toString();

    @TempDir
    private Path folder;

    @Test
    void areasPrintsWholePanelsAndTheRoof() {
        assertThat(run("areas", DEMO, "--from", "100 m2", "--to", "4305.6 ft2", "--steps", "4"))
                .isZero();

        assertThat(out.toString())
                .startsWith("Municipal outdoor pool: collector area\n")
                .containsPattern("\n +100 +40 ")
                .containsPattern("\n +200 +80 ")
                .containsPattern("\n +400 +160 .*more than the roof\n")
                .doesNotContain("Written:");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void areasWithoutARangeHoldTheScenariosOwn() {
        assertThat(run("areas", DEMO)).isZero();
        assertThat(out.toString()).containsPattern("\n +210 +84 .*as planned\n");
    }

    @Test
    void studiesWriteTheirFiles() {
        assertThat(run("areas", DEMO, "--steps", "2", "--full", "-o", folder.toString()))
                .isZero();
        assertThat(run("sensitivity", DEMO, "--full", "-o", folder.toString())).isZero();

        assertThat(folder.resolve("areas.csv")).isNotEmptyFile();
        assertThat(folder.resolve("exposure.csv")).isNotEmptyFile();
        assertThat(folder.resolve("sensitivity.csv")).isNotEmptyFile();
        assertThat(out.toString()).startsWith(read("areas.txt")).contains(read("sensitivity.txt"), "Written:");
    }

    @Test
    void firstPagesAreShorterThanTheWhole() {
        assertThat(run("areas", DEMO, "--steps", "2")).isZero();

        assertThat(out.toString())
                .contains("In short", "How to read it", "Cautions")
                .doesNotContain("Model and sources");
    }

    private String read(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"us-club.toml", "southern-summer.toml", "indoor-school.toml"})
    void everyScenarioThatComesAlongRuns(String name) {
        String scenario = Path.of("scenarios", name).toString();
        assertThat(run("areas", scenario)).isZero();
        assertThat(run("sensitivity", scenario)).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "--from, 300, has no unit",
        "--from, 300 kg, is a mass",
        "--from, 3000 m2, run upwards",
        "--to, 10 m2, run upwards",
        "--steps, 0, 1 to 10000 designs",
        "--steps, 1, one design cannot cover"
    })
    void anOptionThatMakesNoSenseIsWrongUsage(String option, String value, String message) {
        assertThat(run("areas", DEMO, option, value)).isEqualTo(2);
        assertThat(err.toString()).contains(option, message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"areas", "sensitivity"})
    void noCollectorsIsAProblemOfTheInput(String command) throws IOException {
        Path weather = Path.of("..", "weather-samples", "cool-coast.csv").toAbsolutePath();
        Path scenario = folder.resolve("bare.toml");
        Files.writeString(scenario, """
                [site]
                weather = '%s'
                [pool]
                area = "100 m2"
                depth = "1.5 m"
                setting = "outdoor"
                [roof]
                length = "20 m"
                width = "10 m"
                height = "5 m"
                """.formatted(weather));
        assertThat(run(command, scenario.toString())).isEqualTo(1);
        assertThat(err.toString().lines().filter(line -> !line.startsWith("warning: ")))
                .singleElement()
                .asString()
                .contains("bare.toml", "no collectors", "[[collectors]]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"areas", "sensitivity"})
    void helpShowsAnExample(String command) {
        assertThat(run(command, "--help")).isZero();
        assertThat(out.toString()).contains("Example:", "warmlane " + command + " scenarios/municipal-25m.toml");
    }
}
