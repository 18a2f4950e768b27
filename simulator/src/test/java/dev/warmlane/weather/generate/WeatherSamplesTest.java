package dev.warmlane.weather.generate;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The committed samples are what the generator makes of their normals, byte for byte. To make them again after a change
 * of the generator run this test with {@code -Dsamples.write=true}.
 */
class WeatherSamplesTest {

    /** Samples stay small enough to open, read and keep under version control. */
    private static final int LARGEST_BYTES = 400_000;

    /** Three values, each rounded to 1 W/m², the direct one times at most 1. */
    private static final double ROUNDED_CLOSURE_WM2 = 1.5;

    @ParameterizedTest
    @ValueSource(strings = {"cool-coast", "warm-inland", "hot-dry", "southern-temperate"})
    void committedSampleComesFromItsNormals(String name) throws IOException {
        NormalsFile normals = NormalsFile.read(folder().resolve(name + ".normals.csv"));
        WeatherYear year = normals.generate();
        String text = SampleText.of(year, name + ".normals.csv", normals.seed());
        Path sample = folder().resolve(name + ".csv");
        if (Boolean.getBoolean("samples.write")) {
            Files.writeString(sample, text);
        }
        assertThat(Files.readString(sample)).isEqualTo(text);
        assertThat(Files.size(sample)).isLessThan(LARGEST_BYTES);
        assertThat(text).contains("INVENTED");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cool-coast", "warm-inland", "hot-dry", "southern-temperate"})
    void roundedSampleStillCloses(String name) throws IOException {
        WeatherYear year =
                NormalsFile.read(folder().resolve(name + ".normals.csv")).generate();
        double[][] rows;
        try (Stream<String> lines = Files.lines(folder().resolve(name + ".csv"))) {
            rows = lines.filter(line -> Character.isDigit(line.charAt(0)))
                    .map(line -> Stream.of(line.split(",", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
        }
        assertThat(rows).hasNumberOfRows(HourOfYear.HOURS);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double closed = rows[hour][5] + rows[hour][4] * year.sun().cosZenith(hour);
            assertThat(Math.abs(closed - rows[hour][3]))
                    .as(HourOfYear.label(hour))
                    .isLessThanOrEqualTo(ROUNDED_CLOSURE_WM2);
            assertThat(rows[hour][7]).as("dew point").isLessThanOrEqualTo(rows[hour][6]);
        }
    }

    /** The folder of samples, from the module's folder, where Maven runs tests, or from the root. */
    private static Path folder() {
        Path besideModule = Path.of("..", "weather-samples");
        return Files.isDirectory(besideModule) ? besideModule : Path.of("weather-samples");
    }
}
