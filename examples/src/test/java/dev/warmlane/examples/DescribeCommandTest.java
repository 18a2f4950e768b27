package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.scenario.ScenarioReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command that asks: what it says to answers as people give them, and how one gets through. */
class DescribeCommandTest extends Described {

    private static final Path GUIDE = Path.of("..", "docs", "guide.md");
    private static final Pattern DIALOGUE = Pattern.compile("(?s)\n```console\n(.*?)\n```");

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

    @Test
    void aUsReaderIsAskedInUnitsAndDatesOfTheirOwn() {
        List<String> answers = new ArrayList<>(List.of("us", "", weather("my town.csv")));
        answers.addAll(Collections.nCopies(6, ""));
        answers.addAll(List.of("rack", "", "", "", "2,400", "13", "", "heat pump", "\n".repeat(40)));

        assertThat(describe(answers.toArray(String[]::new))).as(err + out).isZero();
        assertThat(out)
                .contains(
                        "[May 1 to September 30]",
                        "found 2,400, more than from one row to the next",
                        "0 Btu/h]",
                        "air and water of about 80 degF",
                        " lb/kWh]")
                .doesNotContainPattern("degC|\\bkW\\]|kg/kWh\\]");
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
        assertThat(out).contains("what lies on pitched roofs covers 376 m2 of ground plan, the roof has 200 m2");
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

    /** Who is asked back says yes; without an offer a yes is an answer as any other. */
    @Test
    void aYesTakesWhatWasOffered() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("my town.csv"),
                        "hedges",
                        "y",
                        "about 300",
                        "yes",
                        "1,6",
                        "ok",
                        "no",
                        "May to September",
                        "yes",
                        "24\u00b0",
                        "sloping roof",
                        "back",
                        "yes",
                        "",
                        "yes",
                        "flat",
                        "30 x 20",
                        "max",
                        "gas",
                        "",
                        "",
                        "one week",
                        "\n".repeat(40)))
                .as(err + out)
                .isZero();

        assertThat(out).contains("\"yes\" does not begin with a number", "what roof is it?");
        assertThat(Files.readString(file))
                .contains(
                        "wind_shelter = \"sheltered\"",
                        "area = \"300 m2\"",
                        "depth = \"1.6 m\"",
                        "first_day = \"1 May\"",
                        "last_day = \"30 September\"",
                        "comfort = \"24 degC\"",
                        "area = \"480 m2\"",
                        "heater_before = 7")
                .doesNotContain("[cover]");
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
                    electricity | 30 cents | yes takes "0.3"
                    more | maybe | write yes or no
                    place | behind the house | suburban: houses and trees around
                    place | hedges | yes takes "sheltered"
                    depth | 0.9 to 1.8 m | yes takes "1.35 m"
                    depth | about 1.5 | yes takes "1.5"
                    cover | yes | or write none
                    season | May to September | yes takes "1 May to 30 September"
                    season | mid May to end of Sept | yes takes "15 May to 30 September"
                    season | 15.5.-15.9. | yes takes "15 May to 15 September"
                    season | summer | write both days
                    comfort | 75 degF to 80 degF | yes takes "77.5 degF"
                    mounting | roof | what roof is it?
                    mounting | sloping roof | yes takes "pitched"
                    mounting | east-west | on a flat roof write tent, on both slopes of a pitched roof gable
                    season | 15.5. bis 15.9. | yes takes "15 May to 15 September"
                    season | 1. Mai bis 30. September | yes takes "1 May to 30. September"
                    area | 25 x 12,5 | yes takes "25 x 12.5 m"
                    area | 1.250 | write "1250 m2", or "1.25 m2"
                    depth | avg 1.6 | yes takes "1.6"
                    depth | 4 to 9 ft | yes takes "6.5 ft"
                    roof | 28,5 x 12 | yes takes "28.5 x 12"
                    collectors | 1.250 m2 | write "1250 m2", or "1.25 m2"
                    electricity | 28,5 ct | yes takes "0.285"
                    collectors | 64 x 2.5 m2 | yes takes "160 m2"
                    price | 32.400 EUR | its point may part thousands or decimals; write "32400", or "32.4"
                    price | 32,400 | its comma may part thousands or decimals; write "32400", or "32.4"
                    price | 27000 EUR in total | yes takes "150 per m2"
                    """)
    void aSlipNamesItsMend(String question, String typed, String told) {
        List<String> asked =
                List.of("place", "area", "depth", "cover", "season", "comfort", "mounting", "roof", "collectors");
        List<String> answers = new ArrayList<>(List.of("", "", weather("my town.csv")));
        answers.addAll(Collections.nCopies(asked.contains(question) ? asked.indexOf(question) : asked.size(), ""));
        switch (question) {
            case "currency" -> answers.addAll(List.of("none", typed));
            case "electricity" -> answers.addAll(List.of("none", "EUR", typed));
            case "price" -> answers.addAll(List.of("none", "EUR", "", typed));
            case "more" -> answers.addAll(List.of("none", "none", typed));
            default -> answers.add(typed);
        }
        answers.add("\n".repeat(40));
        assertThat(describe(answers.toArray(String[]::new))).as(err + out).isZero();
        assertThat(out).contains(told);
    }
}
