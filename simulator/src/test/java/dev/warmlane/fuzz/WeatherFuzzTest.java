package dev.warmlane.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.InventedYear;
import dev.warmlane.weather.WeatherFileException;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherFinding;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A broken weather file is refused with its own exception, or accepted; where what it says of the year moved by much, a
 * finding says so.
 */
class WeatherFuzzTest {

    /** Reading a year takes a hundred times as long as reading a scenario. */
    private static final int PERMILLE = 100;

    /** How far a year may move without a word: the accuracy that is asked of a typical year's sums. */
    private static final double SILENT = 0.02;

    /** The same for air, whose zero means nothing: two hundredths of the 25 K between a usual summer and winter. */
    private static final double SILENT_K = 0.5;

    private static final String AIR = "air";

    @TempDir
    private static Path folder;

    private record Sound(String name, List<String> lines, int headers, boolean separated, WeatherYear year) {}

    @Test
    void brokenFilesAreRefusedOrTold() throws IOException {
        InventedYear invented = InventedYear.sound();
        List<Sound> formats = new ArrayList<>();
        formats.add(sound("epw", invented.epw(), 8, true));
        formats.add(sound("tmy3", invented.tmy3(), 2, true));
        formats.add(sound("tmy2", invented.tmy2(), 1, false));
        formats.add(sound("pvgis", invented.pvgis(), 5, true));
        List<String> plain = Files.readAllLines(Path.of("..", "weather-samples", "cool-coast.csv"));
        int headers = 0;
        while (!plain.get(headers).matches("[\\d,].*")) {
            headers++;
        }
        formats.add(sound("plain", plain, headers, true));
        Fuzz.run(WeatherFuzzTest.class, PERMILLE, chance -> check(formats.get(chance.nextInt(formats.size())), chance));
    }

    private static Sound sound(String name, List<String> lines, int headers, boolean separated) throws IOException {
        Path file = Files.write(folder.resolve("sound." + name), lines);
        return new Sound(name, lines, headers, separated, WeatherFiles.read(file));
    }

    private static void check(Sound sound, Random chance) throws IOException {
        Path file = Files.createTempFile(folder, "broken", "." + sound.name());
        try {
            Files.write(file, WeatherMutations.mutated(sound.lines(), sound.headers(), sound.separated(), chance));
            WeatherYear year = WeatherFiles.read(file);
            Map<String, Double> moved = moved(sound.year(), year);
            if (!moved.isEmpty()) {
                assertThat(told(sound.year(), year))
                        .as("%s: moved without a finding: %s", sound.name(), moved)
                        .isTrue();
            }
        } catch (WeatherFileException declared) {
            assertThat(declared.getMessage()).isNotBlank().doesNotContain("\n");
        } finally {
            Files.delete(file);
        }
    }

    private static boolean told(WeatherYear sound, WeatherYear year) {
        List<WeatherFinding> found = new ArrayList<>(year.findings());
        found.removeAll(sound.findings());
        return !found.isEmpty();
    }

    /** What moved by more than may be silent, with how it moved. */
    private static Map<String, Double> moved(WeatherYear sound, WeatherYear year) {
        Map<String, Double> moved = new LinkedHashMap<>();
        Map<String, Double> before = sums(sound);
        sums(year).forEach((name, sum) -> {
            double was = Objects.requireNonNull(before.get(name));
            double silent = name.equals(AIR) ? SILENT_K * HourOfYear.HOURS : SILENT * was;
            if (!(Math.abs(sum - was) <= silent)) {
                moved.put(name, sum / was);
            }
        });
        return moved;
    }

    private static Map<String, Double> sums(WeatherYear year) {
        Map<String, IntToDoubleFunction> columns = new LinkedHashMap<>();
        columns.put("global", year::globalHorizontalWm2);
        columns.put("direct", year::directNormalWm2);
        columns.put("diffuse", year::diffuseHorizontalWm2);
        columns.put(AIR, year::airTemperatureC);
        columns.put("vapour", year::vapourPressureKpa);
        columns.put("pressure", year::pressureKpa);
        columns.put("wind", year::windSpeedMs);
        columns.put("long-wave", year::skyLongWaveWm2);
        return columns.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, column -> {
            double sum = 0;
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                sum += column.getValue().applyAsDouble(hour);
            }
            return sum;
        }));
    }
}
