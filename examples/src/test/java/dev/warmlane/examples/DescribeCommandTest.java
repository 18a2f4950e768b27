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
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                .contains("weather = \"my town.csv\"", "first_day = \"1 May\"", "# assumed: mean depth")
                .doesNotContain("[prices]", "[money]", "[heater]");
        assertThat(out)
                .contains("48.0° north, 123.0° west, 20 m above the sea, UTC-8")
                .contains("Quality: ")
                .contains("Next:\n  warmlane forecast ")
                .doesNotContain("Price of");
        assertThat(PROMPT.matcher(out).results().count()).as("questions").isLessThanOrEqualTo(15);
        forecasts();
    }

    /** Every value of the file is either answered or marked, so that nobody takes a usual value for a measured one. */
    @Test
    void whatWasAnsweredAndWhatWasAssumedAreToldApart() throws IOException {
        assertThat(describe(
                        "",
                        "Pool",
                        weather("my town.csv"),
                        "sheltered",
                        "20 x 10",
                        "",
                        "bubble",
                        "",
                        "10 May to 15 September",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        List<String> lines = Files.readAllLines(file).stream()
                .filter(line -> line.contains(" = ") && !line.startsWith("#"))
                .toList();
        assertThat(lines.stream().filter(line -> line.contains("# assumed")).map(DescribeCommandTest::key))
                .contains("depth", "terrain", "drawn", "comfort", "height", "pump_power", "limit", "open", "units")
                .doesNotContain("name", "weather", "wind_shelter", "kind", "first_day", "last_day");
        assertThat(lines.stream().filter(line -> !line.contains("# assumed")).map(DescribeCommandTest::key))
                .containsExactly("name", "weather", "area", "setting", "wind_shelter", "kind", "first_day", "last_day");
    }

    private static String key(String line) {
        return line.substring(0, line.indexOf(" = "));
    }

    @Test
    void aPitchedRoofInUsUnitsWithNumbersAlone() throws IOException {
        assertThat(describe(
                        "US",
                        "Club pool",
                        "\"" + weather("my town.csv") + "\"",
                        "sheltered",
                        "75 x 42",
                        "5'6",
                        "bubble",
                        "9pm to 7am",
                        "April 15 to 15 October",
                        "80",
                        "pitched",
                        "90 x 50 ft",
                        "25",
                        "4:12",
                        "SSW",
                        "1,600 sq ft",
                        "LPG",
                        "400 MBH",
                        "82 F",
                        "10 days",
                        "USD",
                        "$2.60",
                        "0.16",
                        "12 USD/ft2",
                        "2.50",
                        "yes",
                        "60",
                        "6 am to 9 pm",
                        "86",
                        "88",
                        "4 yd",
                        "",
                        "1 hp",
                        "80",
                        "9,500 gal",
                        "150",
                        "6"))
                .as(err + out)
                .isZero();

        Scenario scenario = ScenarioReader.read(file);
        var built = scenario.installation();
        assertThat(built.pool().areaM2()).isCloseTo(75 * 42 * 0.3048 * 0.3048, ROUNDING);
        assertThat(built.pool().depthM()).isCloseTo(5.5 * 0.3048, ROUNDING);
        assertThat(built.roof().heightM()).isCloseTo(12 * 0.3048, ROUNDING);
        assertThat(built.roof().widthM()).isCloseTo(50 * 0.3048, ROUNDING);
        assertThat(built.collectorAreaM2()).isCloseTo(1600 * 0.3048 * 0.3048, ROUNDING);
        assertThat(built.heater().orElseThrow().setPointC()).isCloseTo(50 / 1.8, ROUNDING);
        assertThat(built.prices().orElseThrow().collectorPerM2()).isCloseTo(12 / 0.3048 / 0.3048, ROUNDING);
        assertThat(built.pipes().pumpPowerW()).isCloseTo(745.69987, Offset.offset(1e-4));
        assertThat(built.control().limitC()).isCloseTo(30, ROUNDING);
        assertThat(Files.readString(file))
                .contains(
                        "bathers = 60",
                        "what = \"bathers\"",
                        "tilt = \"4:12\"",
                        "azimuth = \"SSW\"",
                        "slope_length = \"25 ft\"",
                        "upkeep = 150",
                        "depth = \"5'6\"",
                        "fuel = \"2.60 per gal\"",
                        "sold_in = \"gal\"",
                        "last_bill = \"9,500 gal\"",
                        "heater_before = 10",
                        "units = \"us\"")
                .doesNotContain("heating value");
        forecasts();
    }

    @Test
    void southOfTheEquatorTheSeasonRunsOverNewYearAndRacksFaceNorth() throws IOException {
        assertThat(describe("", "", weather("south.csv"), "", "", "", "", "", "", "rack", "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(Files.readString(file))
                .contains(
                        "first_day = \"1 November\"",
                        "last_day = \"31 March\"",
                        "azimuth = \"north\"",
                        "row_length = \"25 m\"");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }

    /** Without a heater there is no price of gas, and what the money could do is still asked for. */
    @Test
    void withoutAHeaterNobodyIsAskedForGas() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("south.csv"),
                        "",
                        "8 x 4",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "12 x 8",
                        "",
                        "none",
                        "AUD",
                        "0.30",
                        "120",
                        "25",
                        "\n".repeat(40)))
                .as(err + out)
                .isZero();

        assertThat(out).contains("Price of a bubble cover").doesNotContain("Price of gas", "heating begin");
        assertThat(Files.readString(file))
                .contains("electricity = \"0.30 per kWh\"", "cover_price = \"25 per m2\"")
                .doesNotContain("gas =", "fuel =");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
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
                        "windy",
                        "suburban",
                        "25 m",
                        "25 m x 12,5 m",
                        "25 m x 12.5 m",
                        "20 m",
                        "?",
                        "don't know",
                        "2 m",
                        "",
                        "1 May",
                        "5/6 to 9/1",
                        "1 May to 1 Sept",
                        "42 degC",
                        "26",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(out)
                .contains("found \"furlongs\"; allowed: \"metric\", \"us\"")
                .contains("not there.epw: there is no such file; in that folder there are my town.csv, south.csv")
                .contains("monthly normals, twelve rows")
                .contains("how does the wind get at it? write sheltered")
                .contains("did you mean \"exposed\"?")
                .contains("\"25 m\" is a length")
                .contains("found \"20 m\"; allowed: 0.2 to 10 m")
                .contains("mean depth of the water; allowed: 0.2 to 10 m")
                .contains("An empty line takes what stands in brackets")
                .contains("write both days, \"15 May to 30 September\"")
                .contains("may be 6 May or 5 June")
                .contains("found \"42 degC\"; allowed: 10 to 40 degC");
        assertThat(ScenarioReader.read(file).installation().pool().depthM()).isEqualTo(2);
    }

    /** What is allowed but hardly meant is told with the answer it comes of, and not again after the next one. */
    @Test
    void collectorsThatOverrunTheRoofAreToldAtTheAnswer() {
        assertThat(describe(
                        "",
                        "",
                        weather("my town.csv"),
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "20 x 10",
                        "400",
                        "back",
                        "",
                        "back",
                        "150",
                        "\n".repeat(40)))
                .as(err)
                .isZero();
        assertThat(out)
                .containsOnlyOnce(
                        "Look at this: usable share of the roof: collectors take 400 m² of roof, but only 160 m²");
        assertThat(out.indexOf("Look at this")).isBetween(out.indexOf("Collector area"), out.indexOf("What heats"));

        assertThat(describe(
                        "yes",
                        "",
                        "",
                        weather("my town.csv"),
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "pitched",
                        "20 x 10",
                        "6",
                        "20",
                        "",
                        "400",
                        "\n".repeat(40)))
                .as(err)
                .isZero();
        assertThat(out)
                .contains("what lies on pitched roofs covers 376 m2 of ground plan, the roof of [roof] has 200 m2");
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
                        "sheltered",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(out).contains("This is the first question.").contains("[indoor]");
        assertThat(Files.readString(file))
                .contains("name = \"New name\"", "setting = \"outdoor\"")
                .doesNotContain("hall_temperature");
    }

    /** A usual value that was taken follows what is answered differently afterwards; one that was said does not. */
    @Test
    void whatIsUsualFollowsFromWhatWasAnsweredLast() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("my town.csv"),
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "back",
                        "back",
                        "back",
                        "back",
                        "back",
                        "back",
                        "back",
                        "back",
                        "100",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(ScenarioReader.read(file).installation().collectorAreaM2()).isEqualTo(60);
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

    /** A hall is open all year and kept warm: it neither opens cold nor is anybody asked when heating begins. */
    @Test
    void anIndoorPoolIsAskedForItsHall() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("my town.csv"),
                        "indoor",
                        "",
                        "60",
                        "",
                        "",
                        "",
                        "",
                        "31",
                        "",
                        "",
                        "",
                        "gas",
                        "",
                        "32",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(out).doesNotContain("heating begin");
        assertThat(Files.readString(file))
                .contains(
                        "hall_temperature = \"30 degC\"",
                        "hall_humidity = \"60 %\"",
                        "start_temperature = \"32 degC\"",
                        "limit = \"34 degC\"",
                        "comfort_maximum = \"34 degC\"")
                .doesNotContain("wind_shelter", "first_day");
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
                    .skip(3)
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

    /** Heaters in the words of those who own them: what the file says of each, and what it costs. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    gas | boiler | natural-gas | 1.10/m3 | fuel = "1.10/m3" # of what the heater is fed with | m3
                    Natural Gas | boiler | natural-gas | 0.09 | fuel = "0.09 per kWh" # on the higher heating value, as gas is billed | kWh
                    condensing boiler | condensing | natural-gas | 2.93 per therm | fuel = "2.93 per therm" # on the higher heating value, as gas is billed | therm
                    LPG | boiler | propane | 0.85 | fuel = "0.85 per L" # of what the heater is fed with | L
                    condensing propane | condensing | propane | 2.50 per gallon | fuel = "2.50 per gallon" # of what the heater is fed with | gal
                    Heating oil | boiler | heating-oil | 1.05 | fuel = "1.05 per L" # of what the heater is fed with | L
                    district heating | district-heat | | 0.11 | fuel = "0.11 per kWh" # of what the heater is fed with | kWh
                    """)
    void whateverHeatsThePoolIsAskedForWhatItNeeds(
            String said, String kind, String fuel, String price, String priced, String unit) throws IOException {
        List<String> answers = new ArrayList<>(
                List.of("", "", weather("my town.csv"), "", "", "", "", "", "", "", "", "", said, "120", "", "14"));
        if (fuel == null) {
            answers.add("0.2");
        }
        answers.addAll(List.of("EUR", price));
        answers.add("\n".repeat(40));
        assertThat(describe(answers.toArray(String[]::new))).as(err + out).isZero();

        assertThat(Files.readString(file).replaceAll(" +#", " #"))
                .contains("kind = \"" + kind + "\"", "heater_before = 14", priced, "sold_in = \"" + unit + "\"");
        assertThat(Files.readString(file).contains("fuel = \"" + fuel + "\"")).isEqualTo(fuel != null);
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"electricity, electric", "Heat Pump, heat-pump"})
    void whatTakesElectricityHasNoOtherPrice(String said, String kind) throws IOException {
        String[] electric = {"", "", weather("my town.csv"), "", "", "", "", "", "", "", "", "", said, "", "", "", ""};
        String cop = kind.equals("heat-pump") ? "\n" : "";
        assertThat(describe(String.join("\n", electric) + "\n" + cop + "EUR", "\n".repeat(40)))
                .as(err + out)
                .isZero();

        assertThat(out).doesNotContain("Price of gas", "Efficiency");
        assertThat(Files.readString(file))
                .contains("kind = \"" + kind + "\"", "fuel_co2 = \"0.25 kg/kWh\"", "electricity = \"0.25 per kWh\"")
                .doesNotContain("gas =", "fuel =", "heating value");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }

    /** What a sales person types at this and that question, and what is said to it: each names the mend. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    heater | boiler | what does it burn? write one of: none, gas, condensing gas
                    heater | pellets | another fuel needs its heat and its carbon dioxide
                    heater | 120 kW | write one of: none, gas
                    currency | yes | write how money is written
                    currency | 0.10 | write how money is written
                    electricity | 28 ct | did you mean "0.28"?
                    electricity | 15 cents | did you mean "0.15"?
                    electricity | cheap | does not begin with a number
                    electricity | 0,28 | has a decimal comma
                    electricity | 28 | allowed: 0 to 10 per kWh
                    electricity | not sure | An empty line takes what stands in brackets
                    more | maybe | write yes or no
                    """)
    void aSlipNamesItsMend(String question, String typed, String told) {
        List<String> answers =
                new ArrayList<>(List.of("", "", weather("my town.csv"), "", "", "", "", "", "", "", "", ""));
        switch (question) {
            case "heater" -> answers.add(typed);
            case "currency" -> answers.addAll(List.of("none", typed));
            case "electricity" -> answers.addAll(List.of("none", "EUR", typed));
            default -> answers.addAll(List.of("none", "none", typed));
        }
        answers.add("\n".repeat(40));
        assertThat(describe(answers.toArray(String[]::new))).as(err + out).isZero();
        assertThat(out).contains(told);
    }
}
