package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files broken on purpose, each beside the lines it must produce, all of them and at once. */
class BrokenScenariosTest {

    private static final Path RESOURCES = Path.of("src", "test", "resources", "scenario");

    private static List<Path> broken() {
        return files("broken");
    }

    private static List<Path> doubtful() {
        return files("doubtful");
    }

    private static List<Path> files(String folder) {
        try (Stream<Path> files = Files.list(RESOURCES.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(".toml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("broken")
    void findsEverythingWrong(Path file) throws IOException {
        assertThat(lines(errors(file), file)).containsExactlyElementsOf(expected(file));
    }

    @ParameterizedTest
    @MethodSource("doubtful")
    void warnsOfWhatIsHardlyMeant(Path file) throws IOException {
        List<Finding> warnings = ScenarioReader.read(file).warnings();

        assertThat(lines(warnings, file)).containsExactlyElementsOf(expected(file));
        assertThat(warnings).extracting(Finding::told).allSatisfy(told -> assertThat(told)
                .doesNotContainPattern("_|\\[|\\b(control|season)\\."));
    }

    @Test
    void aReportNamesNoKeys() throws IOException {
        List<Finding> warnings = ScenarioReader.read(
                        RESOURCES.resolve("doubtful").resolve("together.toml"))
                .warnings();

        assertThat(warnings)
                .extracting(Finding::told)
                .contains(
                        "temperature that the heater keeps: is above the temperature that people find too warm, 30 °C",
                        "temperature difference that stops the pump: is more than a tenth of the temperature difference"
                                + " that starts the pump: the pump will hunt; at most 0.4 °C is advised");
    }

    @Test
    void messageHoldsEveryFindingWithItsFile() {
        Path file = RESOURCES.resolve("broken").resolve("misspelt.toml");

        ScenarioException found = catchThrowableOfType(ScenarioException.class, () -> ScenarioReader.read(file));

        assertThat(found).hasMessageContaining(file + ":10: [roof] lenght: unknown key; did you mean length?");
        assertThat(String.valueOf(found.getMessage()).lines()).hasSameSizeAs(found.findings());
    }

    @Test
    void whatSeveralReadersMissIsToldOnce(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("low.toml");
        String demo = Files.readString(Demos.file("municipal-25m.toml"));
        Files.writeString(file, demo.replace("height = \"6 m\"", ""));

        assertThat(errors(file).stream().filter(f -> f.key().equals("height"))).hasSize(1);
    }

    @Test
    void refusesATextThatIsNotUtf8(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("latin.toml");
        Files.write(file, "[site]\nname = \"B\u00e4derweg\"\n".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(lines(errors(file), file)).containsExactly("2:10: the byte E4 is not UTF-8; save the file as UTF-8");
    }

    @Test
    void readsATextWithAByteOrderMark(@TempDir Path folder) throws IOException {
        String demo = Files.readString(Demos.file("municipal-25m.toml"));

        assertThat(Demos.read("\uFEFF" + demo, folder).installation().name()).isEqualTo("Municipal outdoor pool");
        assertThat(Demos.read("\uFEFF" + demo.substring(demo.indexOf("[site]")), folder)
                        .installation()
                        .name())
                .isEqualTo("Municipal outdoor pool");
    }

    @Test
    void refusesAFolder(@TempDir Path folder) {
        ScenarioException found = catchThrowableOfType(ScenarioException.class, () -> ScenarioReader.read(folder));

        assertThat(found).hasMessage(folder + ": is a folder; name the scenario file that lies in it");
    }

    @Test
    void refusesAFolderOfWeather(@TempDir Path folder) throws IOException {
        Files.createDirectory(folder.resolve("year.csv"));
        Path file = Files.writeString(folder.resolve("job.toml"), "[site]\nweather = \"year.csv\"\n");

        assertThat(lines(errors(file), file))
                .contains("2: [site] weather: is a folder: year.csv; name the weather file that lies in it");
    }

    @Test
    void doesNotListEveryLineOfWhatIsNoScenario(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("year.csv"), "1,2,3\n".repeat(8760));

        assertThat(lines(errors(file), file))
                .hasSize(21)
                .first()
                .isEqualTo(" 8760 errors, the first 20 below: is this a scenario file?");
    }

    @Test
    void leavesAFileThatIsNotThereToTheCaller(@TempDir Path folder) {
        assertThat(catchThrowableOfType(
                        NoSuchFileException.class, () -> ScenarioReader.read(folder.resolve("no.toml"))))
                .isNotNull();
    }

    private static List<Finding> errors(Path file) {
        ScenarioException found = catchThrowableOfType(ScenarioException.class, () -> ScenarioReader.read(file));
        assertThat(found).as("findings of %s", file).isNotNull();
        return found.findings();
    }

    /** The findings as they are shown, less the file that they all begin with. */
    private static List<String> lines(List<Finding> findings, Path file) {
        return findings.stream()
                .map(f -> f.toString().substring(file.toString().length() + 1))
                .toList();
    }

    private static List<String> expected(Path file) throws IOException {
        return Files.readAllLines(Path.of(file.toString().replaceFirst("\\.toml$", ".findings.txt")));
    }
}
