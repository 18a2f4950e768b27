package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.weather.WeatherFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Input as people write it: each row of a table has the value that it must give, or what the message must say. */
class NaturalInputTest {

    private static final Path FOLDER = Path.of("src", "test", "resources", "scenario", "natural");

    private static final Path SAMPLES = Path.of("..", "weather-samples");

    /** The table's numbers have six digits or more. */
    private static final double SIX_DIGITS = 2e-6;

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?(?:E-?\\d+)?(?![-\\d])");

    @TempDir
    private Path folder;

    /**
     * A row of the table.
     *
     * @param section the section that the lines are put into
     * @param without keys that the base has and this row has not
     * @param lines as somebody writes them
     * @param expected a key and its value, or a part of a message after an exclamation mark
     */
    record Row(String section, List<String> without, List<String> lines, String expected) {

        static Row of(String line) {
            String[] cells = line.split(" \\| ", 3);
            String[] place = cells[0].strip().split(" -", -1);
            return new Row(
                    place[0],
                    List.of(place).subList(1, place.length),
                    List.of(cells[1].split("\\\\n(?=[a-z])", -1)),
                    cells[2].strip());
        }

        @Override
        public String toString() {
            return section + ": " + lines;
        }

        /** The base with the row's lines in it. */
        String in(List<String> base) {
            List<String> text = new ArrayList<>();
            String now = "";
            for (String line : base) {
                now = line.startsWith("[") ? line.replaceAll("[\\[\\]]", "") : now;
                if (!now.equals(section) || !replaced(line)) {
                    text.add(line);
                }
                if (line.matches("\\[+" + section + "\\]+")) {
                    text.addAll(lines);
                }
            }
            return String.join("\n", text) + "\n";
        }

        private boolean replaced(String line) {
            String key = key(line);
            return !key.isEmpty() && (without.contains(key) || lines.stream().anyMatch(l -> key(l).equals(key)));
        }

        private static String key(String line) {
            Matcher key = Pattern.compile("([A-Za-z_]+)\\s?[=:\"\\s].*").matcher(line);
            return key.matches() ? key.group(1) : "";
        }
    }

    private static List<Row> rows() {
        try {
            return Files.readAllLines(FOLDER.resolve("table.txt")).stream()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(Row::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isUnderstoodOrTold(Row row) throws IOException {
        String came = comesOf(row);

        if (row.expected().startsWith("! ")) {
            assertThat(came).contains(row.expected().substring(2));
        } else {
            assertSame(value(row, came), row.expected());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    cool-coast.csv | is a weather file (plain csv), not a scenario
                    cool-coast.normals.csv | is a file of monthly normals, not a scenario
                    """)
    void weatherIsNoScenario(String sample, String message) {
        ScenarioException found =
                catchThrowableOfType(ScenarioException.class, () -> ScenarioReader.read(SAMPLES.resolve(sample)));

        assertThat(found).hasMessageContaining(message).hasMessageContaining("[site], weather = \"...\"");
    }

    /** To the parser the line is two errors; to a person it is one. */
    @Test
    void aSlipIsToldOnce() throws IOException {
        assertThat(comesOf(Row.of("collectors | tilt = 4:12 | ! in quotes")).lines())
                .hasSize(1);
    }

    /** As editors of Windows save: a mark of the byte order before the text and two characters at each line's end. */
    @Test
    void readsWhatWindowsSaves() throws IOException {
        Files.writeString(folder.resolve("year.csv"), "");
        String text = Files.readString(FOLDER.resolve("base.toml")).replace("\n", "\r\n");
        Path file = Files.writeString(folder.resolve("job.toml"), "\uFEFF" + text);

        Scenario read = ScenarioReader.read(file);
        assertThat(ScenarioWriter.write(read.installation(), "year.csv", read.report()))
                .contains("depth = \"1.8 m\"");
    }

    @Test
    void normalsAndScenariosAreNoWeather() throws IOException {
        Path scenario = Files.writeString(folder.resolve("job.toml"), Files.readString(FOLDER.resolve("base.toml")));
        Path normals = SAMPLES.resolve("cool-coast.normals.csv");

        assertThat(catchThrowableOfType(IOException.class, () -> WeatherFiles.read(normals)))
                .hasMessageContaining("monthly normals, twelve rows")
                .hasMessageContaining("Make a year of them with the command \"generate\"");
        assertThat(catchThrowableOfType(IOException.class, () -> WeatherFiles.read(scenario)))
                .hasMessageContaining("the scenario names it in [site] as weather");
    }

    /** The scenario as it was understood, or what was found wrong with it. */
    private String comesOf(Row row) throws IOException {
        Files.writeString(folder.resolve("year.csv"), "");
        Path file =
                Files.writeString(folder.resolve("job.toml"), row.in(Files.readAllLines(FOLDER.resolve("base.toml"))));
        try {
            Scenario scenario = ScenarioReader.read(file);
            return ScenarioWriter.write(scenario.installation(), "year.csv", scenario.report());
        } catch (ScenarioException e) {
            return e.findings().stream().map(Finding::toString).collect(Collectors.joining("\n"));
        }
    }

    private static String value(Row row, String written) {
        if (row.expected().startsWith("what = ")) {
            return schedule(written, row.expected());
        }
        String key = row.expected().substring(0, row.expected().indexOf(' '));
        boolean here = false;
        for (String line : written.lines().toList()) {
            here = line.startsWith("[") ? line.matches("\\[+" + row.section() + "\\]+") : here;
            if (here && line.startsWith(key + " = ")) {
                return line;
            }
        }
        return written;
    }

    /** Hours are written as a schedule, whatever section they were given in. */
    private static String schedule(String written, String expected) {
        String what = expected.substring(0, expected.indexOf(','));
        Matcher rule =
                Pattern.compile(what + "\n(?:months = .*\n)?(hours = .*)\n").matcher(written);
        return rule.find() ? what + ", " + rule.group(1) : written;
    }

    /** Words alike, and numbers to the digits of the table. */
    private static void assertSame(String found, String expected) {
        assertThat(NUMBER.matcher(found).replaceAll("#"))
                .as("%s for %s", found, expected)
                .isEqualTo(NUMBER.matcher(expected).replaceAll("#"));
        List<Double> numbers = numbers(found);
        List<Double> wanted = numbers(expected);
        for (int i = 0; i < wanted.size(); i++) {
            assertThat(numbers.get(i))
                    .as("%s for %s", found, expected)
                    .isCloseTo(wanted.get(i), within(SIX_DIGITS * Math.abs(wanted.get(i))));
        }
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(n -> Double.parseDouble(n.group()))
                .toList();
    }
}
