package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.generate.NormalsFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the guide and the README show is what there is: programs, scenario, normals and printed tables. */
class GuideTest {

    private static final Path GUIDE = Path.of("..", "docs", "guide.md");
    private static final Path README = Path.of("..", "README.md");
    private static final Path WEATHER = Path.of("..", "weather-samples", "cool-coast.csv");

    /** US values stand in the guide with three or four digits. */
    private static final Percentage ROUNDED = Percentage.withPercentage(1);

    @TempDir
    private Path folder;

    private Path scenario = Path.of("");

    @BeforeEach
    void doWhatTheGuideSays() throws IOException {
        Files.copy(WEATHER, folder.resolve("my-town.csv"));
        scenario = Files.writeString(folder.resolve("my-pool.toml"), String.join("\n", blocks(GUIDE, "toml")));
    }

    @Test
    void programsStandInTheGuideAsTheyAre() throws IOException {
        List<String> shown = blocks(GUIDE, "java");
        for (String name : List.of("FlatOrTilted", "OwnersForecast", "HowMuchArea")) {
            String source = source(Path.of("src", "main", "java", "dev", "warmlane", "examples", name + ".java"));
            assertThat(shown).as(name).contains(source.substring(source.indexOf("import ")));
        }
    }

    @Test
    void allJavaThatIsShownIsCompiled() throws IOException {
        List<String> sources = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                sources.add(unindented(source(file)));
            }
        }
        for (Path document : List.of(GUIDE, README)) {
            assertThat(blocks(document, "java")).isNotEmpty().allSatisfy(shown -> assertThat(sources)
                    .as(document + " shows Java that is in no source file")
                    .anyMatch(source -> source.contains(unindented(shown))));
        }
    }

    @Test
    void scenarioReadsWithoutAFindingInBothSystemsOfUnits() throws IOException {
        Path inUsUnits = Files.writeString(
                folder.resolve("us.toml"),
                Files.readString(scenario).replaceAll("= \"[^\"]*\"( +)# or (\"[^\"]*\")", "= $2"));
        Scenario metric = ScenarioReader.read(scenario);
        Scenario us = ScenarioReader.read(inUsUnits);

        assertThat(metric.warnings()).isEmpty();
        assertThat(us.warnings()).isEmpty();
        assertThat(metric.report().units()).isEqualTo(UnitSystem.METRIC);
        assertThat(us.report().units()).isEqualTo(UnitSystem.US);
        double[] values = numbers(metric);
        double[] usValues = numbers(us);
        for (int i = 0; i < values.length; i++) {
            assertThat(usValues[i]).as("value " + i).isCloseTo(values[i], ROUNDED);
        }
    }

    private static double[] numbers(Scenario scenario) {
        var built = scenario.installation();
        var heater = built.heater().orElseThrow();
        var prices = built.prices().orElseThrow();
        return new double[] {
            built.pool().areaM2(),
            built.pool().depthM(),
            built.makeUp().litresPerDay(),
            built.roof().lengthM(),
            built.roof().widthM(),
            built.roof().heightM(),
            built.collectorAreaM2(),
            built.pipes().heatLossWK(),
            heater.capacityKw(),
            heater.setPointC(),
            built.control().limitC(),
            built.comfortC(),
            prices.gasPerKwh(),
            prices.collectorPerM2()
        };
    }

    @Test
    void tablesStandInTheGuideAsTheyArePrinted() throws IOException {
        String file = scenario.toString();
        String printed = printed("forecast", file)
                + printed("mountings", file)
                + printed("areas", file, "--from", "80 m2", "--to", "320 m2", "--steps", "7")
                + printed("years", file, inventedYears());

        ShownOutput.isAsPrinted(GUIDE, Pattern.compile("(?s)\n```text\n(.*?)\n```"), 5, printed);
    }

    private String inventedYears() throws IOException {
        Path years = Files.createDirectory(folder.resolve("my-years"));
        InventedYears.write(years, 2001, 2012);
        return years.toString();
    }

    @Test
    void rangesInTheGuideAreThoseOfTheSensitivity() throws IOException {
        Matcher ranges = Pattern.compile(
                        "heat lies between ([\\d,]+) and\\s+([\\d,]+) kWh.*?between ([\\d.]+) and ([\\d.]+) °C")
                .matcher(source(GUIDE));
        assertThat(ranges.find()).isTrue();
        assertThat(printed("sensitivity", scenario.toString()))
                .contains(ranges.group(1), ranges.group(2), ranges.group(3), ranges.group(4));
    }

    @Test
    void normalsGiveAYear() throws IOException {
        Path normals = Files.writeString(
                folder.resolve("my-town.normals.csv"), blocks(GUIDE, "csv").get(0));
        assertThat(NormalsFile.read(normals).generate().findings()).isNotEmpty();
    }

    @Test
    void coordinatesAreThoseOfThisVersion() throws IOException {
        Matcher version = Pattern.compile("<version>([^<]+)</version>").matcher(Files.readString(Path.of("pom.xml")));
        assertThat(version.find()).isTrue();
        assertThat(blocks(GUIDE, "xml").get(0)).contains("<version>" + version.group(1) + "</version>");
    }

    private static String printed(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertThat(Main.run(new PrintWriter(out), new PrintWriter(err), arguments))
                .as(err.toString())
                .isZero();
        return out.toString();
    }

    /** The fenced blocks of a kind, without their fences. */
    private static List<String> blocks(Path document, String kind) throws IOException {
        Matcher fences = Pattern.compile("(?s)\n```" + kind + "\n(.*?\n)```").matcher(source(document));
        return fences.results().map(block -> block.group(1)).toList();
    }

    private static String source(Path file) throws IOException {
        return Files.readString(file).replace("\r\n", "\n");
    }

    private static String unindented(String code) {
        return code.lines().map(String::strip).collect(Collectors.joining("\n"));
    }
}
