package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest extends CommandRuns {

    private static final String DEMO =
            Path.of("scenarios", "municipal-25m.toml").toString();
    private static final String WEATHER =
            Path.of("..", "weather-samples", "cool-coast.csv").toString();

    @TempDir
    private Path folder;

    @Test
    void forecastPrintsItsFirstPageAndWritesNothingUnasked() {
        assertThat(run("forecast", DEMO)).isZero();

        assertThat(out.toString())
                .startsWith("Municipal outdoor pool: season forecast\n")
                .contains("In short", "month by month", "Cautions")
                .doesNotContain("Where the pool's heat came from", "Written:");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void forecastWritesItsFilesWhereItIsTold() {
        Path output = folder.resolve("new").resolve("forecast");

        assertThat(run("forecast", DEMO, "--output", output.toString(), "--full"))
                .isZero();

        assertThat(output).isDirectoryContaining("glob:**/hours.csv");
        assertThat(output.resolve("weeks.csv")).isNotEmptyFile();
        assertThat(output.resolve("months.csv")).isNotEmptyFile();
        assertThat(out.toString())
                .contains("Where the pool's heat came from", "Written:")
                .endsWith("Open in a browser: " + output.resolve("forecast.html") + System.lineSeparator());
        assertThat(output.resolve("forecast.txt"))
                .content()
                .isEqualTo(out.toString().substring(0, out.toString().indexOf("\nWritten:")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"us-club.toml", "southern-summer.toml", "indoor-school.toml"})
    void everyScenarioThatComesAlongRuns(String name) {
        assertThat(run("forecast", Path.of("scenarios", name).toString())).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void missingScenarioIsAProblemOfTheInput() {
        assertThat(run("forecast", "nowhere.toml")).isEqualTo(1);

        assertThat(err.toString()).isEqualTo(String.format("nowhere.toml: there is no such file%n"));
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void wrongScenarioGetsALineForEveryFinding() throws IOException {
        Path broken = folder.resolve("broken.toml");
        Files.writeString(
                broken,
                Files.readString(Path.of(DEMO))
                        .replace("depth = \"1.8 m\"", "depth = \"80 m\"")
                        .replace("finish", "finnish"));

        assertThat(run("forecast", broken.toString())).isEqualTo(1);

        assertThat(err.toString())
                .contains("broken.toml:16: [pool] depth: found \"80 m\"; allowed: 0.2 to 10 m")
                .contains("broken.toml:18: [pool] finnish: unknown key; did you mean finish?")
                .doesNotContain("Exception", "\tat ");
        assertThat(out.toString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"forecast", "sensitivity", "areas", "mountings"})
    void waterThatNoPoolReachesIsAProblemOfTheInput(String command) throws IOException {
        Path desert = Path.of("..", "weather-samples", "hot-dry.csv").toAbsolutePath();
        Path perfect = Files.writeString(
                folder.resolve("perfect.toml"),
                Files.readString(Path.of(DEMO))
                        .replace(
                                "../../weather-samples/cool-coast.csv",
                                desert.toString().replace('\\', '/'))
                        .replace("kind = \"bubble\"", "evaporation_cut = 1\nresistance = \"2 m2K/W\"\nsolar_loss = 0")
                        .replace("drawn = \"20-8\"", "drawn = \"0-24\""));

        assertThat(run(command, perfect.toString())).isEqualTo(1);

        assertThat(err.toString())
                .contains("the water becomes hotter than 70 degC at 0", "check bathers and their heat, the cover")
                .doesNotContain("Exception", "\tat ");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void outputThatIsAFileIsAProblemOfTheInput() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");

        assertThat(run("forecast", DEMO, "-o", file.toString())).isEqualTo(1);

        assertThat(err.toString()).contains("taken: is a file, not a folder").doesNotContain("Exception");
        assertThat(out.toString()).isEmpty();
        assertThat(file).hasContent("mine");
    }

    @Test
    void emptyOutputIsWrongUsage() {
        assertThat(run("forecast", DEMO, "-o", "")).isEqualTo(2);

        assertThat(err.toString()).contains("'--output'", "the name is empty");
        assertThat(out.toString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"forecast", "weather"})
    void folderInPlaceOfAFileIsNamed(String command) {
        assertThat(run(command, folder.toString())).isEqualTo(1);

        assertThat(err.toString())
                .startsWith(folder + ": ")
                .contains("a folder")
                .doesNotContain("Exception");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void outputThatCannotBeMadeIsNamed() {
        assertThat(run("forecast", DEMO, "-o", "/proc/warmlane")).isEqualTo(1);

        assertThat(err.toString()).isEqualTo(String.format("/proc/warmlane: no folder can be made there%n"));
    }

    @Test
    void fileThatCannotBeReplacedLeavesNothingWritten() throws IOException {
        Files.createDirectory(folder.resolve("hours.csv"));

        assertThat(run("forecast", DEMO, "-o", folder.toString())).isEqualTo(1);

        assertThat(err.toString()).contains("hours.csv is a folder");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(folder.resolve("hours.csv"));
        }
    }

    @Test
    void weatherSaysWhatEveryYearOfAFileIs() throws IOException {
        List<String> lines = Files.readAllLines(Path.of(WEATHER));
        int names = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).startsWith("month,"))
                .findFirst()
                .orElseThrow();
        List<String> two = new ArrayList<>(lines.subList(0, names));
        two.add("year," + lines.get(names));
        for (String year : List.of("2001", "2003")) {
            lines.subList(names + 1, lines.size() - (year.equals("2003") ? 5000 : 0))
                    .forEach(line -> two.add(year + "," + line));
        }
        Path file = Files.write(folder.resolve("two.csv"), two);
        assertThat(run("weather", file.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("of the years 2001 and 2003", "--years");
        assertThat(run("weather", file.toString(), "--years")).isZero();
        assertThat(out.toString()).containsPattern("\\R\\s+2001 +\\d").contains("2003: ", "3760 hourly rows");
    }

    @Test
    void weatherSaysWhatAFileIs() {
        assertThat(run("weather", WEATHER, "--units", "us")).isZero();

        assertThat(out.toString()).contains("cool-coast.csv", "By month", "°F", "Quality");
    }

    @Test
    void weatherIsReadWithWhatTheUserKnowsBetter() {
        assertThat(run("weather", WEATHER, "--utc-offset", "2.5", "--irradiance-time", "0.25"))
                .isZero();

        assertThat(out.toString()).contains("UTC+2.5", "centred 0.25 h after the hour's start");
    }

    @Test
    void aClockThatCannotBeIsWrongUsage() {
        assertThat(run("weather", WEATHER, "--utc-offset", "15")).isEqualTo(2);

        assertThat(err.toString()).contains("--utc-offset", "UTC offset must be -12 to 14 h");
    }

    @Test
    void unitsAreCalledAsTheHelpCallsThem() {
        assertThat(run("weather", WEATHER, "--units", "si")).isEqualTo(2);

        assertThat(err.toString()).contains("'--units': expected metric or us, but was \"si\"");
    }

    @Test
    void fileThatIsNoWeatherIsAProblemOfTheInput() throws IOException {
        Path letter = Files.writeString(folder.resolve("letter.csv"), "Dear sir or madam");

        assertThat(run("weather", letter.toString())).isEqualTo(1);

        assertThat(err.toString())
                .startsWith(letter + ":1: found \"Dear sir or madam\"")
                .doesNotContain("Exception", "\tat ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"forecast", "weather", "forecast a.toml b.toml", "forecast --colour", "foretell", ""})
    void wrongUsageShowsHowItIsMeant(String line) {
        assertThat(run(line.isEmpty() ? new String[0] : line.split(" ", -1))).isEqualTo(2);

        assertThat(err.toString()).contains("warmlane").doesNotContain("Exception", "\tat ");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void outputThatIsCutOffIsAProblem() {
        PrintWriter full = new PrintWriter(new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("no space left");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });
        PrintWriter errors = new PrintWriter(err);

        int exitCode = Main.ended(full, errors, Main.run(full, errors, "weather", WEATHER));

        assertThat(exitCode).isEqualTo(1);
        assertThat(err.toString()).contains("could not be written");
        assertThat(Main.ended(new PrintWriter(out), errors, 0)).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "forecast --help", "weather --help"})
    void helpShowsAnExample(String line) {
        assertThat(run(line.split(" ", -1))).isZero();

        assertThat(out.toString()).contains("Usage: warmlane", "Example:");
    }
}
