package dev.warmlane.weather.generate;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Hard climates that are real, and the project's own samples: the checks of weather find nothing wrong with them. */
class SoundYearsTest {

    @ParameterizedTest
    @ValueSource(strings = {"cool-coast", "warm-inland", "hot-dry", "southern-temperate"})
    void samples(String name) throws IOException {
        Path beside = Path.of("..", "weather-samples");
        Path folder = Files.isDirectory(beside) ? beside : Path.of("weather-samples");
        assertThat(WeatherFiles.read(folder.resolve(name + ".csv")).findings())
                .noneMatch(finding -> finding.kind() != Kind.NOTE);
    }

    /** Clearness and temperatures of invented places: each month's light is that share of what arrives outside. */
    @ParameterizedTest
    @CsvSource({
        "subarctic, 58, 0.40, 0.45, -8, 22, 9, 2",
        "desert, 24, 0.66, 0.70, 24, 10, 24, 3",
        "high desert, -24, 0.68, 0.72, 12, 10, 26, 5",
        "monsoon, 12, 0.30, 0.60, 27, 4, 7, 3",
        "fog coast, -12, 0.33, 0.50, 19, 6, 6, 4",
        "storm coast, 60, 0.33, 0.40, 6, 10, 5, 8.5"
    })
    void hardClimates(
            String name,
            double latitude,
            double darkest,
            double brightest,
            double airC,
            double swing,
            double range,
            double wind) {
        double[] light = new double[12];
        double[] air = new double[12];
        double[] dew = new double[12];
        for (int m = 0; m < 12; m++) {
            double season = -Math.cos(2 * Math.PI * m / 12) * Math.signum(latitude);
            // the wet half of a monsoon year is its summer
            double clearness = (darkest + brightest) / 2 + (brightest - darkest) / 2 * -season;
            light[m] = clearness * outsideKwhM2Day(latitude, m);
            air[m] = airC + swing * season;
            dew[m] = air[m] - 0.6 * range;
        }
        MonthlyNormals normals = MonthlyNormals.builder()
                .globalHorizontalKwhM2Day(light)
                .airTemperatureC(air)
                .dailyRangeK(fill(range))
                .dewPointC(dew)
                .windSpeedMs(fill(wind))
                .build();
        Site site = new Site(name, latitude, 0, 100, 0);
        for (long seed = 1; seed <= 5; seed++) {
            assertThat(TypicalYearGenerator.generate(site, normals, seed).findings())
                    .as(name + ", seed " + seed)
                    .noneMatch(finding -> finding.kind() != Kind.NOTE);
        }
    }

    /** On the horizontal outside the atmosphere in the middle of a month; textbook geometry, good to 2 %. */
    private static double outsideKwhM2Day(double latitudeDeg, int month) {
        double phi = Math.toRadians(latitudeDeg);
        double declination = Math.toRadians(-23.45 * Math.cos(2 * Math.PI * (30.4 * month + 25) / 365));
        double sunset = Math.acos(Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(declination))));
        return 24
                / Math.PI
                * 1.361
                * (Math.cos(phi) * Math.cos(declination) * Math.sin(sunset)
                        + sunset * Math.sin(phi) * Math.sin(declination));
    }

    private static double[] fill(double value) {
        double[] months = new double[12];
        Arrays.fill(months, value);
        return months;
    }
}
