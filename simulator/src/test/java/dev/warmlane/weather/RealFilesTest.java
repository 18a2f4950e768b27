package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.RealWeather;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published typical years: sums and means as told beside the files, and closure at the time the format says. */
class RealFilesTest {

    /** The table beside the files is rounded to 1 kWh/m². */
    private static final double KWH = 0.5001;

    private static final double DEGREES = 0.0501;

    /** The table is rounded to 0.01 m/s. */
    private static final double WIND = 0.00501;

    /** A scan of days in hundreds of cloudy hours, and the table is rounded to 0.01 h. */
    private static final double HOURS = 0.03;

    /** The table is rounded to 0.1 W/m²; its sun is an algorithm other than ours. */
    private static final double RMSE = 0.15;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/weather/real-files.csv", numLinesToSkip = 3)
    void sumsAndClosureAreThePublished(
            String file,
            double global,
            double direct,
            double diffuse,
            double air,
            double wind,
            double shift,
            double rmse,
            double offset,
            int warnings)
            throws IOException {
        WeatherYear weather = WeatherFiles.read(RealWeather.file(file));
        WeatherSummary.Period year = WeatherSummary.of(weather).year();
        assertThat(year.globalKwhM2()).isCloseTo(global, within(KWH));
        assertThat(year.directKwhM2()).isCloseTo(direct, within(KWH));
        assertThat(year.diffuseKwhM2()).isCloseTo(diffuse, within(KWH));
        assertThat(year.airC()).isCloseTo(air, within(DEGREES));
        assertThat(year.windMs()).isCloseTo(wind, within(WIND));
        Closure closure = Objects.requireNonNull(weather.closure());
        assertThat(closure.usedShiftHours()).isEqualTo(closure.statedShiftHours());
        assertThat(closure.bestShiftHours()).isCloseTo(shift, within(HOURS));
        assertThat(closure.usedRmseWm2()).isCloseTo(rmse, within(RMSE));
        assertThat(weather.site().utcOffsetHours()).isEqualTo(offset);
        assertThat(weather.findings())
                .filteredOn(f -> f.kind() == WeatherFinding.Kind.WARNING)
                .hasSize(warnings);
    }
}
