package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that asks, driven by answers as people give them, and the scenario that it writes. */
class DescribeCommandTest {

    private static final Offset<Double> ROUNDING = Offset.offset(1e-6);

    private static final Path SAMPLES = Path.of("..", "weather-samples");
    private static final Path GUIDE = Path.of("..", "docs", "guide.md");
    private static final Pattern DIALOGUE = Pattern.compile("(?s)\n```console\n(.*?)\n```");

    /** A question and what was answered. */
    private static final Pattern PROMPT = Pattern.compile("(?m)^\\S.*?[\\])]:(?: (.*))?$");

    @TempDir
    private Path folder;

    private Path file = Path.of("");
    private String out = "";
    private String err = "";

    @BeforeEach
    void haveWeather() throws IOException {
        Files.copy(SAMPLES.resolve("cool-coast.csv"), folder.resolve("my town.csv"));
        Files.copy(SAMPLES.resolve("southern-temperate.csv"), folder.resolve("south.csv"));
        Files.copy(SAMPLES.resolve("cool-coast.normals.csv"), folder.resolve("town.normals.csv"));
        file = folder.resolve("job.toml");
    }

    private int describe(String... answers) {
        return run(String.join("\n", answers) + "\n", "describe", file.toString());
    }

    private int run(String typed, String... arguments) {
        StringWriter printed = new StringWriter();
        StringWriter problems = new StringWriter();
        Terminal terminal = new Terminal(new BufferedReader(new StringReader(typed)), true);
        int code = Main.run(terminal, new PrintWriter(printed), new PrintWriter(problems), arguments);
        out = printed.toString();
        err = problems.toString();
        return code;
    }

    private String weather(String name) {
        return folder.resolve(name).toString();
    }

    private void forecasts() {
        assertThat(run(
                        "",
                        "forecast",
                        file.toString(),
                        "--output",
                        folder.resolve("page").toString()))
                .as(err)
                .isZero();
        assertThat(folder.resolve("page").resolve("forecast.html")).exists();
    }

    @Test
    void emptyLinesGiveAPoolThatRuns() throws IOException {
        assertThat(describe("", "", weather("my town.csv"), "\n".repeat(40)))
                .as(err)
                .isZero();

        Scenario scenario = ScenarioReader.read(file);
        assertThat(scenario.warnings()).isEmpty();
        assertThat(scenario.weatherFile()).isEqualTo(folder.resolve("my town.csv"));
        assertThat(scenario.installation().pool().areaM2()).isEqualTo(312.5);
        assertThat(scenario.installation().collectorAreaM2()).isEqualTo(180);
        assertThat(Files.readString(file))
                .contains("weather = \"my town.csv\"", "first_day = \"1 May\"", "# mean depth");
        assertThat(out)
                .contains("48.0° north, 123.0° west, 20 m above the sea, UTC-8")
                .contains("Quality: ")
                .contains("Next:\n  warmlane forecast ");
        forecasts();
    }

    @Test
    void aPitchedRoofInUsUnitsWithNumbersAlone() throws IOException {
        assertThat(describe(
                        "US",
                        "Club pool",
                        "\"" + weather("my town.csv") + "\"",
                        "Outdoor",
                        "75 x 42",
                        "5'6",
                        "sheltered",
                        "bubble",
                        "9pm to 7am",
                        "April 15",
                        "15 October",
                        "80",
                        "6 am to 9 pm",
                        "60",
                        "pitched",
                        "90",
                        "50 ft",
                        "4 yd",
                        "4:12",
                        "SSW",
                        "25",
                        "1,600 sq ft",
                        "Natural Gas",
                        "400 MBH",
                        "82 F",
                        "USD",
                        "1.40",
                        "0.16",
                        "12"))
                .as(err + out)
                .isZero();

        Scenario scenario = ScenarioReader.read(file);
        var built = scenario.installation();
        assertThat(built.pool().areaM2()).isCloseTo(75 * 42 * 0.3048 * 0.3048, ROUNDING);
        assertThat(built.pool().depthM()).isCloseTo(5.5 * 0.3048, ROUNDING);
        assertThat(built.roof().heightM()).isCloseTo(12 * 0.3048, ROUNDING);
        assertThat(built.collectorAreaM2()).isCloseTo(1600 * 0.3048 * 0.3048, ROUNDING);
        assertThat(built.heater().orElseThrow().setPointC()).isCloseTo(50 / 1.8, ROUNDING);
        assertThat(built.prices().orElseThrow().collectorPerM2()).isCloseTo(12 / 0.3048 / 0.3048, ROUNDING);
        assertThat(Files.readString(file))
                .contains(
                        "bathers = 60",
                        "what = \"bathers\"",
                        "tilt = \"4:12\"",
                        "azimuth = \"SSW\"",
                        "slope_length = \"25 ft\"",
                        "units = \"us\"");
        forecasts();
    }

    @Test
    void southOfTheEquatorTheSeasonRunsOverNewYearAndRacksFaceNorth() throws IOException {
        assertThat(describe(
                        "", "", weather("south.csv"), "", "", "", "", "", "", "", "", "", "", "rack", "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(Files.readString(file))
                .contains(
                        "first_day = \"1 November\"",
                        "last_day = \"31 March\"",
                        "azimuth = \"north\"",
                        "row_length = \"25 m\"");
        forecasts();
    }

    @Test
    void aWrongAnswerIsToldAndAskedAgain() throws IOException {
        assertThat(describe(
                        "furlongs",
                        "metric",
                        "Pool",
                        weather("not there.epw"),
                        weather("town.normals.csv"),
                        weather("my town.csv"),
                        "outside",
                        "outdoor",
                        "25 m",
                        "25 m x 12,5 m",
                        "25 m x 12.5 m",
                        "20 m",
                        "?",
                        "2 m",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(out)
                .contains("found \"furlongs\"; allowed: \"metric\", \"us\"")
                .contains("not there.epw: there is no such file; in that folder there are my town.csv, south.csv")
                .contains("monthly normals, twelve rows")
                .contains("did you mean \"outdoor\"?")
                .contains("\"25 m\" is a length")
                .contains("found \"20 m\"; allowed: 0.2 to 10 m")
                .contains("mean depth of the water; allowed: 0.2 to 10 m");
        assertThat(ScenarioReader.read(file).installation().pool().depthM()).isEqualTo(2);
    }

    @Test
    void goesBackAndKeepsWhatWasAnswered() throws IOException {
        assertThat(describe(
                        "back",
                        "",
                        "Old name",
                        weather("my town.csv"),
                        "back",
                        "back",
                        "New name",
                        "",
                        "indoor",
                        "back",
                        "outdoor",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(out).contains("This is the first question.").contains("[indoor]");
        assertThat(Files.readString(file))
                .contains("name = \"New name\"", "setting = \"outdoor\"")
                .doesNotContain("hall_temperature");
    }

    @Test
    void leavesNothingBehindWhenSomebodyQuitsOrTheAnswersEnd() throws IOException {
        assertThat(describe("", "", weather("my town.csv"), "quit")).isOne();
        assertThat(err).contains("left before the end; nothing was written");
        assertThat(describe("", "", weather("my town.csv"))).isOne();
        assertThat(err).contains("the answers ended before the questions did; nothing was written");

        try (var files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder("my town.csv", "south.csv", "town.normals.csv");
        }
    }

    @Test
    void writesOverAFileOnlyWhenTold() throws IOException {
        Files.writeString(file, "mine");
        assertThat(describe("")).isOne();
        assertThat(err).contains("was kept; nothing was written");
        assertThat(file).hasContent("mine");

        assertThat(describe("yes", "", "", weather("my town.csv"), "\n".repeat(40)))
                .as(err)
                .isZero();
        assertThat(ScenarioReader.read(file).installation().name()).isEqualTo("My pool");
        assertThat(List.of(folder.toFile().list())).noneMatch(name -> name.endsWith(".part"));
    }

    @Test
    void anIndoorPoolIsAskedForItsHall() throws IOException {
        assertThat(describe("", "", weather("my town.csv"), "indoor", "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(Files.readString(file))
                .contains("hall_temperature = \"28 degC\"")
                .doesNotContain("wind_shelter");
        forecasts();
    }

    /** Both dialogues of the guide, answered as they stand there; written anew with {@code -Ddocs.write=true}. */
    @Test
    void dialoguesInTheGuideAreAsTheyArePrinted() throws IOException {
        String guide = Files.readString(GUIDE).replace("\r\n", "\n");
        Matcher blocks = DIALOGUE.matcher(guide);
        String told = guide;
        int count = 0;
        while (blocks.find()) {
            String shown = blocks.group(1);
            Path written = folder.resolve(count++ == 0 ? "my-pool.toml" : "club.toml");
            String typed = PROMPT.matcher(shown)
                    .results()
                    .map(prompt -> prompt.group(1) == null ? "" : prompt.group(1))
                    .collect(Collectors.joining("\n"))
                    .replace("weather-samples/", SAMPLES + "/");
            assertThat(run(typed + "\n", "describe", written.toString()))
                    .as(err + out)
                    .isZero();
            assertThat(ScenarioReader.read(written).warnings()).isEmpty();
            String printed = out.lines()
                    .skip(2)
                    .map(String::stripTrailing)
                    .collect(Collectors.joining("\n"))
                    .replace(folder + "/", "")
                    .replace(SAMPLES + "/", "weather-samples/");
            told = told.replace(shown, printed);
        }
        assertThat(count).isEqualTo(2);
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(GUIDE, told);
        } else {
            assertThat(told).isEqualTo(guide);
        }
    }

    @Test
    void whateverHeatsThePoolIsAskedForWhatItNeeds() throws IOException {
        String[] untilHeater = {
            "", "", weather("my town.csv"), "", "", "", "", "", "", "", "", "", "", "", "", "", "", ""
        };
        assertThat(describe(concat(untilHeater, "oil", "heating oil", "120", "", "EUR", "1.05", "", "")))
                .as(err + out)
                .isZero();
        assertThat(out).contains("did you mean \"heating-oil\"?");
        assertThat(Files.readString(file))
                .contains("fuel = \"heating-oil\"", "fuel = \"1.05 per L\"")
                .doesNotContain("gas =");
        forecasts();

        assertThat(describe(concat(untilHeater, "Heat Pump", "60", "", "5.5", "0.3", "EUR", "", "")))
                .as(err + out)
                .isOne();
        assertThat(describe(concat(
                        new String[] {"yes"}, concat(untilHeater, "Heat Pump", "60", "", "5.5", "0.3", "EUR", "", ""))))
                .as(err + out)
                .isZero();
        assertThat(Files.readString(file))
                .contains("kind = \"heat-pump\"", "cop = 5.5", "fuel_co2 = \"0.3 kg/kWh\"")
                .doesNotContain("gas =", "fuel =");
        forecasts();
    }

    private static String[] concat(String[] first, String... second) {
        return Stream.concat(Arrays.stream(first), Arrays.stream(second)).toArray(String[]::new);
    }
}
