package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.RealWeather;
import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Published typical years: sums and means as told beside the files, and closure at the time the format says. */
class RealFilesTest {

    /** The table beside the files is rounded to 1 kWh/m². */
    private static final double KWH = 0.5001;

    private static final double DEGREES = 0.0501;

    /** The table is rounded to 0.01 m/s. */
    private static final double WIND = 0.00501;

    /** A scan of days in hundreds of cloudy hours, and the table is rounded to 0.01 h. */
    private static final double HOURS = 0.03;

    /** The table is rounded to 0.1 W/m² and takes the sun of sunrise hours at their middle, not at that of the sunlit part. */
    private static final double RMSE = 0.45;

    /** The plain csv has three decimals. */
    private static final double DECIMALS = 0.00051;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/weather/real-files.csv", numLinesToSkip = 4)
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

    /**
     * An EPW whose minute column is 30 in every row; its sums were added up column by column by a separate program. Its
     * irradiance closes half an hour before the time that the labels say, which is told.
     */
    @Test
    void minuteColumnOfOneConstant() throws IOException {
        WeatherYear weather = WeatherFiles.read(RealWeather.file("shanghai-minute-30.epw"));
        WeatherSummary.Period year = WeatherSummary.of(weather).year();
        assertThat(year.globalKwhM2()).isCloseTo(1470.75, within(0.01));
        assertThat(year.directKwhM2()).isCloseTo(1348.09, within(0.01));
        assertThat(year.diffuseKwhM2()).isCloseTo(594.99, within(0.01));
        assertThat(year.airC()).isCloseTo(17.018, within(0.001));
        assertThat(year.windMs()).isCloseTo(3.384, within(0.001));
        Closure closure = Objects.requireNonNull(weather.closure());
        assertThat(closure.usedShiftHours()).isCloseTo(closure.bestShiftHours(), within(HOURS));
        assertThat(closure.usedShiftHours() - closure.statedShiftHours()).isCloseTo(-0.5, within(0.05));
        assertThat(weather.findings()).anyMatch(f -> f.message().contains("half an hour"));
    }

    /** Half an hour of its own must not hide an hour of its header. */
    @ParameterizedTest
    @CsvSource({
        "9, 9, 'the UTC offset in the header is wrong, or the labels are: with UTC+9 the sun is half an hour early'",
        "7, 8, 'it says UTC+7, but irradiance follows the sun with UTC+8, half an hour late by its labels'",
        "0, 8, 'it says UTC+0, but irradiance follows the sun with UTC+8, half an hour late by its labels'",
        "-8, 8, 'or its longitude -121.34 if that is where a sign was lost'"
    })
    void wrongOffsetBesideHalfAnHour(double stated, double used, String told) throws IOException {
        List<String> lines = lines("shanghai-minute-30.epw");
        Breakage.set(lines, 1, 9, Double.toString(stated));
        WeatherYear weather = Breakage.read(folder, lines);
        assertThat(weather.site().utcOffsetHours()).isEqualTo(used);
        assertThat(weather.findings()).anySatisfy(f -> {
            assertThat(f.kind()).isEqualTo(WeatherFinding.Kind.WARNING);
            assertThat(f.message()).contains(told, "UTC+8");
        });
        int noon = HourOfYear.of(7, 14, 12);
        WeatherYear right = WeatherFiles.read(RealWeather.file("shanghai-minute-30.epw"));
        assertThat(weather.sun().cosZenith(noon)).isCloseTo(right.sun().cosZenith(noon), within(0.01));
    }

    @Test
    void plainCsvKeepsARealYear() throws IOException {
        WeatherYear weather = WeatherFiles.read(RealWeather.file("po-valley-pvgis.csv"));
        Path file = folder.resolve("po-valley.csv");
        PlainWeatherWriter.write(weather, file);
        WeatherYear read = WeatherFiles.read(file);
        assertThat(read.site()).isEqualTo(weather.site());
        assertThat(read.longWaveOrigin()).isEqualTo(weather.longWaveOrigin());
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(read.globalHorizontalWm2(hour)).isCloseTo(weather.globalHorizontalWm2(hour), within(DECIMALS));
            assertThat(read.skyLongWaveWm2(hour)).isCloseTo(weather.skyLongWaveWm2(hour), within(DECIMALS));
            assertThat(read.dewPointC(hour)).isCloseTo(weather.dewPointC(hour), within(DECIMALS));
            assertThat(read.sun().zenithDeg(hour)).isEqualTo(weather.sun().zenithDeg(hour));
        }
    }

    @Test
    void wrongOffsetInTheHeader() throws IOException {
        List<String> lines = lines("greensboro-tmy3.csv");
        lines.set(0, lines.get(0).replace(",-5.0,", ",-6.0,"));
        WeatherYear weather = Breakage.read(folder, lines);
        assertThat(weather.site().utcOffsetHours()).isEqualTo(-5);
        assertThat(weather.findings()).anySatisfy(f -> {
            assertThat(f.kind()).isEqualTo(WeatherFinding.Kind.WARNING);
            assertThat(f.line()).isEqualTo(1);
            assertThat(f.message()).contains("UTC offset in the header is wrong", "UTC-6", "UTC-5 is used");
        });
    }

    @Test
    void oneMonthShifted() throws IOException {
        List<String> lines = lines("fortaleza-swera.epw");
        int first = HourOfYear.firstHourOf(8) + 9;
        Breakage.shift(lines, first, first + 31 * 24 - 1, 2, 7, 23);
        WeatherYear weather = Breakage.read(folder, lines);
        assertThat(weather.findings())
                .filteredOn(f -> f.kind() == WeatherFinding.Kind.WARNING)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.line()).isEqualTo(first);
                    assertThat(f.message()).contains("in August it is 2 hours early");
                });
    }

    private static List<String> lines(String file) throws IOException {
        return new ArrayList<>(Files.readAllLines(RealWeather.file(file)));
    }
}
