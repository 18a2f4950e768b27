package dev.warmlane.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.scenario.Finding;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioException;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.scenario.ScenarioWriter;
import dev.warmlane.season.ImpossibleSeasonException;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A broken scenario is refused with findings that say where, or it is a scenario that comes back from its own writing and
 * whose season keeps to physics, unless it is refused as impossible.
 */
class ScenarioFuzzTest {

    private static final int PERMILLE = 800;

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** The one finding of the whole file, which has no line. */
    private static final Pattern OF_THE_WHOLE_FILE =
            Pattern.compile("\\d+ errors, the first 20 below: is this a scenario file\\?");

    /** A season takes as long as reading fifty scenarios: of so many accepted ones, one is simulated. */
    private static final int ONE_SEASON_OF = 20;

    /** Ice is not modelled, and the forecast says so; pools are not colder than the coldest air of the sample years, °C. */
    private static final double COLDEST_C = -15;

    @TempDir
    private static Path folder;

    @Test
    void brokenScenariosAreRefusedByLine() throws IOException {
        List<String> demos = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("..", "examples", "scenarios"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".toml")).sorted().toList()) {
                demos.add(Files.readString(file).replaceFirst("weather = \"[^\"]*\"", "weather = \"year.csv\""));
            }
        }
        assertThat(demos).hasSizeGreaterThan(3);
        Files.writeString(folder.resolve("year.csv"), "");
        List<WeatherYear> years = SampleYears.read();
        Fuzz.run(ScenarioFuzzTest.class, PERMILLE, chance -> {
            Scenario accepted = check(demos.get(chance.nextInt(demos.size())), chance);
            if (accepted != null && chance.nextInt(ONE_SEASON_OF) == 0) {
                simulate(accepted.installation(), years.get(chance.nextInt(years.size())));
            }
        });
    }

    private static void simulate(Installation built, WeatherYear weather) {
        try {
            SeasonLedger ledger = SeasonSimulator.simulate(built, SeasonForcing.of(built, weather));
            LedgerLimits.hold(ledger, COLDEST_C, ImpossibleSeasonException.HOTTEST_C);
        } catch (ImpossibleSeasonException declared) {
            assertThat(declared.getMessage()).contains("cannot be meant");
        }
    }

    /** The scenario, where it is accepted. */
    private static @Nullable Scenario check(String demo, Random chance) throws IOException {
        Path file = Files.createTempFile(folder, "job", ".toml");
        try {
            Files.write(file, mutated(demo, chance));
            Scenario scenario = ScenarioReader.read(file);
            String written = ScenarioWriter.write(scenario.installation(), "year.csv", scenario.report());
            Files.writeString(file, written);
            Scenario again = ScenarioReader.read(file);
            assertThat(ScenarioWriter.write(again.installation(), "year.csv", again.report()))
                    .isEqualTo(written);
            return scenario;
        } catch (ScenarioException declared) {
            assertThat(declared.findings()).isNotEmpty().allSatisfy(ScenarioFuzzTest::saysWhere);
            return null;
        } finally {
            Files.delete(file);
        }
    }

    private static void saysWhere(Finding finding) {
        assertThat(finding.message()).isNotBlank().doesNotContain("\n");
        if (!OF_THE_WHOLE_FILE.matcher(finding.message()).matches()) {
            assertThat(finding.line()).as(finding.toString()).isPositive();
        }
    }

    private static byte[] mutated(String demo, Random chance) {
        List<String> lines = new ArrayList<>(List.of(demo.split("\n", -1)));
        int times = 1 + chance.nextInt(4);
        for (int i = 0; i < times; i++) {
            int line = chance.nextInt(lines.size());
            String text = lines.get(line);
            switch (chance.nextInt(8)) {
                case 0 -> lines.remove(line);
                case 1 -> lines.add(chance.nextInt(lines.size()), text);
                case 2 -> lines.set(line, lines.get(chance.nextInt(lines.size())));
                case 3, 4 -> lines.set(line, otherNumber(text, chance));
                case 5 -> lines.set(line, text.replaceFirst("= .*", "= " + otherValue(chance)));
                case 6 -> lines.set(line, text.replaceFirst("[\\w_]+", "wnid"));
                default -> lines.set(line, text.substring(0, chance.nextInt(text.length() + 1)));
            }
            if (lines.isEmpty()) {
                lines.add("");
            }
        }
        byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        for (int i = chance.nextInt(4) == 0 ? 1 + chance.nextInt(8) : 0; i > 0 && bytes.length > 0; i--) {
            bytes[chance.nextInt(bytes.length)] = (byte) chance.nextInt(256);
        }
        return chance.nextInt(20) == 0 ? Arrays.copyOf(bytes, chance.nextInt(bytes.length + 1)) : bytes;
    }

    private static String otherNumber(String text, Random chance) {
        Matcher number = NUMBER.matcher(text);
        String other = Fuzz.oneOf(
                chance, "0", "-1", "1e308", "nan", "0.5", "7", "40", "100000", "1e-300", "99999999999999999999");
        return number.find() ? text.substring(0, number.start()) + other + text.substring(number.end()) : text;
    }

    private static String otherValue(Random chance) {
        return Fuzz.oneOf(
                chance,
                "\"20 m\"",
                "\"1e400 m2\"",
                "\"80 degF\"",
                "true",
                "[]",
                "[1, \"x\"]",
                "{ a = 1 }",
                "\"\"",
                "2026-01-01",
                "inf",
                "\"\\u001b[31m\"",
                "[".repeat(300),
                "\"wide\"",
                "\"NaN kW\"",
                "\"5 %\"");
    }
}
