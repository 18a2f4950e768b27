package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.report.Numbers;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.RoofFit;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The short programs, run as a user runs them. The numbers looked at are simulated here once more by themselves, without
 * the study that the program took them from.
 */
class ProgramsTest {

    private static final Path DEMO = Path.of("scenarios", "municipal-25m.toml");
    private static final Path WEATHER = Path.of("..", "weather-samples", "warm-inland.csv");

    @TempDir
    private Path folder;

    @Test
    void flatOrTiltedComparesTheSameAreaAndTheSameRoof() throws IOException {
        String printed = printedBy(() -> FlatOrTilted.main(new String[] {WEATHER.toString()}));

        WeatherYear weather = WeatherFiles.read(WEATHER);
        Installation lido = FlatOrTilted.lido();
        MountingOption racks = MountingOption.racks("racks", 20, 180);
        double latitude = weather.site().latitudeDeg();
        RoofFit sameArea = RoofFit.ofArea(lido, latitude, racks, 210);
        RoofFit most = RoofFit.most(lido, latitude, racks).orElseThrow();
        String sameAreaTable = section(printed, "Same collector area");
        String sameRoofTable = section(printed, "The most that fits the same roof");
        assertThat(row(sameAreaTable, "flat")).contains(" 210 ").contains(numbers(lido, weather));
        assertThat(row(sameAreaTable, "20° racks")).contains(" 210 ").contains(numbers(on(lido, sameArea), weather));
        assertThat(row(sameRoofTable, "flat")).as("80 % of 30 m by 14 m").contains(" 336 ");
        assertThat(row(sameRoofTable, "20° racks")).contains(numbers(on(lido, most), weather));
        assertThat(section(printed, "Where the light goes")).contains("wind and air on an open back");
    }

    private static String section(String printed, String heading) {
        int from = printed.indexOf("\n" + heading + "\n");
        assertThat(from).as(heading).isNotNegative();
        return printed.substring(from + 1, printed.indexOf("\n\n", from + 1));
    }

    private static Installation on(Installation built, RoofFit fit) {
        return built.toBuilder()
                .arrays(new CollectorArray("racks", fit.areaM2(), fit.mounting(), Absorber.USUAL_MAT))
                .build();
    }

    /** Heat, pool temperature and days at comfort as a table shows them. */
    private static String[] numbers(Installation built, WeatherYear weather) {
        PeriodSummary season = season(built, weather);
        return new String[] {
            " " + new Numbers(UnitSystem.METRIC).show(season.balance().deliveredKwh(), 0) + " ",
            " " + new Numbers(UnitSystem.METRIC).show(season.water().meanC(), 1) + " ",
            " " + season.comfort().daysAtComfort() + " "
        };
    }

    private static PeriodSummary season(Installation built, WeatherYear weather) {
        return SeasonForecast.of(built, weather).summary().season();
    }

    @Test
    void ownersForecastPrintsTheWeeksAndWritesThePage() throws IOException {
        Path output = folder.resolve("page");
        String printed = printedBy(() -> OwnersForecast.main(new String[] {DEMO.toString(), output.toString()}));

        Scenario scenario = ScenarioReader.read(DEMO);
        SeasonForecast forecast = SeasonForecast.of(scenario.installation(), scenario.readWeather());
        PeriodSummary season = forecast.summary().season();
        for (PeriodSummary week : forecast.weeks()) {
            assertThat(row(printed, week.period().label().replace(Periods.BEFORE, "before")))
                    .contains(" "
                            + new Numbers(UnitSystem.METRIC).show(week.water().meanC(), 1) + " ")
                    .contains(" "
                            + new Numbers(UnitSystem.METRIC).show(week.balance().deliveredKwh(), 0) + " ");
        }
        assertThat(printed)
                .contains("\n\nDays warm enough: " + season.comfort().daysAtComfort() + ", without collectors "
                        + season.comfortWithout().daysAtComfort() + "\n")
                .contains("\n" + output.resolve("forecast.html") + "\n");
        assertThat(output.resolve("forecast.html"))
                .content()
                .contains(scenario.report().title(), "season-temperature");
        assertThat(afterTable(printed))
                .as("nothing but the files that are there")
                .allMatch(line -> line.startsWith("Days warm enough")
                        || Path.of(line).toFile().isFile());
    }

    @Test
    void howMuchAreaNamesTheLargestThatIsStillWorthIt() throws IOException {
        String printed = printedBy(() -> HowMuchArea.main(new String[] {DEMO.toString()}));

        Scenario scenario = ScenarioReader.read(DEMO);
        WeatherYear weather = scenario.readWeather();
        String conclusion = afterTable(printed).get(0);
        assertThat(afterTable(printed)).hasSize(1);
        assertThat(conclusion).matches("The largest on the roof: [0-9.]+ m², [0-9]+ days at comfort");
        double areaM2 = Double.parseDouble(conclusion.replaceAll(".*: ([0-9.]+) m².*", "$1"));
        PeriodSummary season = season(withArea(scenario, areaM2), weather);
        assertThat(row(printed, new Numbers(UnitSystem.METRIC).show(areaM2, 0)))
                .contains(" "
                        + new Numbers(UnitSystem.METRIC).show(season.balance().deliveredKwh(), 0) + " ");
        assertThat(conclusion).endsWith(" " + season.comfort().daysAtComfort() + " days at comfort");
        // the rule: from here to the next row at least 300 kWh/m², from there on less
        double stepM2 = 25;
        double next = heatKwh(scenario, areaM2 + stepM2, weather);
        assertThat((next - season.balance().deliveredKwh()) / stepM2).isGreaterThanOrEqualTo(300);
        assertThat((heatKwh(scenario, areaM2 + 2 * stepM2, weather) - next) / stepM2)
                .isLessThan(300);
    }

    private static double heatKwh(Scenario scenario, double areaM2, WeatherYear weather) {
        return season(withArea(scenario, areaM2), weather).balance().deliveredKwh();
    }

    private static Installation withArea(Scenario scenario, double areaM2) {
        Installation built = scenario.installation();
        return built.toBuilder()
                .arrays(built.arrays().get(0).withAreaM2(areaM2))
                .build();
    }

    @ParameterizedTest
    @ValueSource(strings = {"OwnersForecast", "FlatOrTilted", "HowMuchArea"})
    void badInputIsALineAndNoStackTrace(String program) throws Exception {
        Path empty = Files.createFile(folder.resolve("empty"));
        for (Path file : List.of(folder.resolve("missing"), empty)) {
            String[] arguments = program.equals("OwnersForecast")
                    ? new String[] {file.toString(), folder.resolve("page").toString()}
                    : new String[] {file.toString()};
            assertThat(refused(program, 1, arguments)).startsWith(file + ":");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "OwnersForecast, give a scenario file and a folder for the page",
        "FlatOrTilted, give a weather file",
        "HowMuchArea, give a scenario file"
    })
    void noArgumentsAreALineThatSaysWhich(String program, String line) throws Exception {
        assertThat(refused(program, 2).strip()).isEqualTo(line);
        assertThat(refused(program, 2, "a", "b", "c").strip()).isEqualTo(line);
    }

    /** What a program prints in a JVM of its own. */
    private static String refused(String program, int exitCode, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "dev.warmlane.examples." + program));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(printed).isEqualTo(exitCode);
        assertThat(printed).doesNotContain("Exception", "\tat ");
        return printed;
    }

    /** The line of a table that starts with a label. */
    private static String row(String table, String label) {
        return table.lines()
                .filter(line -> line.strip().startsWith(label + " "))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + label + " in\n" + table));
    }

    private static List<String> afterTable(String printed) {
        return printed.substring(printed.indexOf("\n\n") + 2).lines().toList();
    }

    private static String printedBy(Program program) throws IOException {
        PrintStream before = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            program.run();
        } finally {
            System.setOut(before);
        }
        return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    private interface Program {
        void run() throws IOException;
    }
}
