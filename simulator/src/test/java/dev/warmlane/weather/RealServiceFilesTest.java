package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.RealWeather;
import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Real files of services: rows as a plain reading of the text has them, and the sums of the year. */
class RealServiceFilesTest {

    private static final double EXACT = 1e-6;
    /** What repairs of single hours change of a year's sum, of 1. */
    private static final double REPAIRS = 1e-4;

    @Test
    void nsrdbByTheHalfHour() throws IOException {
        List<String> lines = lines("nsrdb-psm3-one-year.csv");
        WeatherYear read = WeatherFiles.read(RealWeather.file("nsrdb-psm3-one-year.csv"));
        for (int hour : new int[] {0, 12, 4000, 5003, HourOfYear.HOURS - 1}) {
            assertThat(read.globalHorizontalWm2(hour)).isEqualTo(ofHalves(lines, hour, 6));
            assertThat(read.directNormalWm2(hour)).isEqualTo(ofHalves(lines, hour, 7));
            assertThat(read.diffuseHorizontalWm2(hour)).isEqualTo(ofHalves(lines, hour, 5));
            assertThat(read.airTemperatureC(hour)).isCloseTo(ofHalves(lines, hour, 20), within(EXACT));
            assertThat(read.windSpeedMs(hour)).isCloseTo(ofHalves(lines, hour, 16), within(EXACT));
            assertThat(read.pressureKpa(hour)).isCloseTo(ofHalves(lines, hour, 21) / 10, within(EXACT));
        }
        double all = lines.stream()
                .skip(3)
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[6]))
                .sum();
        assertThat(sum(read::globalHorizontalWm2)).isCloseTo(all / 2, within(all * REPAIRS));
        assertThat(read.site().utcOffsetHours()).isEqualTo(-7);
        assertThat(read.closure()).isNotNull().satisfies(c -> {
            assertThat(c.usedShiftHours()).isEqualTo(0.25);
            assertThat(c.usedRmseWm2()).as("what real files close within").isLessThan(5);
        });
    }

    private static double ofHalves(List<String> lines, int hour, int cell) {
        return (Double.parseDouble(lines.get(3 + 2 * hour).split(",", -1)[cell])
                        + Double.parseDouble(lines.get(4 + 2 * hour).split(",", -1)[cell]))
                / 2;
    }

    @Test
    void pvgisJsonAndCsvAreOneYear() throws IOException {
        WeatherYear json = WeatherFiles.read(RealWeather.file("pvgis-tmy.json"));
        WeatherYear csv = WeatherFiles.read(RealWeather.file("pvgis-53-tmy.csv"));
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(json.globalHorizontalWm2(hour)).isEqualTo(csv.globalHorizontalWm2(hour));
            assertThat(json.directNormalWm2(hour)).isEqualTo(csv.directNormalWm2(hour));
            assertThat(json.airTemperatureC(hour)).isEqualTo(csv.airTemperatureC(hour));
            assertThat(json.skyLongWaveWm2(hour)).isEqualTo(csv.skyLongWaveWm2(hour));
            assertThat(json.sun().zenithDeg(hour)).isEqualTo(csv.sun().zenithDeg(hour));
        }
        Matcher numbers = Pattern.compile("\"G\\(h\\)\": ([\\d.]+)")
                .matcher(Files.readString(RealWeather.file("pvgis-tmy.json")));
        double all = 0;
        while (numbers.find()) {
            all += Double.parseDouble(numbers.group(1));
        }
        assertThat(sum(json::globalHorizontalWm2)).isCloseTo(all, within(all * REPAIRS));
    }

    @Test
    void testReferenceYears() throws IOException {
        for (String name : List.of("try-2010-12.dat", "try-2015-12.txt")) {
            boolean of2010 = name.contains("2010");
            List<String> lines = lines(name);
            // the first record of 2010 is that of 31 December, which ends the file again
            int first = 1 + lines.indexOf(of2010 ? "***" : "*** ") + (of2010 ? 1 : 0);
            WeatherYear read = WeatherFiles.read(RealWeather.file(name));
            int beam = of2010 ? 13 : 12;
            int air = of2010 ? 8 : 5;
            double all = 0;
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                String[] cells = lines.get(first + hour).strip().split("\\s+", -1);
                double global = Double.parseDouble(cells[beam]) + Double.parseDouble(cells[beam + 1]);
                all += global;
                assertThat(read.globalHorizontalWm2(hour)).isEqualTo(global);
                assertThat(read.airTemperatureC(hour)).isEqualTo(Double.parseDouble(cells[air]));
            }
            assertThat(sum(read::globalHorizontalWm2)).isCloseTo(all, within(EXACT));
            assertThat(read.site().latitudeDeg()).as("Mannheim").isCloseTo(49.5, within(0.05));
            assertThat(read.site().longitudeDeg()).as("Mannheim").isCloseTo(8.5, within(0.1));
            assertThat(read.findings()).noneMatch(f -> f.message().contains("middle of the light"));
        }
    }

    private static List<String> lines(String name) throws IOException {
        return Files.readAllLines(RealWeather.file(name), StandardCharsets.UTF_8);
    }

    private static double sum(IntToDoubleFunction values) {
        return IntStream.range(0, HourOfYear.HOURS).mapToDouble(values).sum();
    }
}
