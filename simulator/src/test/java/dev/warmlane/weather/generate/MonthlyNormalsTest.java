package dev.warmlane.weather.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MonthlyNormalsTest {

    private static final double[] SAME = {9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9};

    private static final String GOOD = """
            # Warmlane monthly normals csv
            # name: nowhere
            # latitude, degrees north: 44
            # longitude, degrees east: 8
            # elevation, m: 150
            # utc offset, h: 1
            # seed: 12
            month,global kWh/m2 day,air degC,daily range K,dew point degC,wind m/s
            1,1.4,2,6,-0.5,1.2
            2,2.3,4,7,0,1.5
            3,3.6,8,9,2.5,1.9
            4,4.6,12,9.5,6,2
            5,5.6,17,10,11,1.9
            6,6.3,21,10,14.5,1.8
            7,6.5,23,11,16,1.7
            8,5.5,22.5,10.5,16.5,1.6
            9,4.0,18.5,9,14,1.5
            10,2.6,13,8,10,1.3
            11,1.5,7,6,5,1.2
            12,1.1,3,5.5,1,1.2
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @Test
    void fileAndBuilderAgree() throws IOException {
        NormalsFile read = NormalsFile.read(write(GOOD));
        assertThat(read.normals()).isEqualTo(Climates.of(Climates.NORTH));
        assertThat(read.site().name()).isEqualTo("nowhere");
        assertThat(read.seed()).isEqualTo(12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # seed: 12       | # remark          | no header line "# seed: ..."; add it before the column names
            # seed: 12       | # seed: one       | :7: found seed "one", allowed is a number
            # seed: 12       | # seed: 1.5       | :7: found seed 1.5, allowed is a whole number
            degrees north: 44| degrees north: 94 | latitude must be -90 to 90 degrees, was 94
            air degC         | air degF          | :8: found the column names
            3,3.6,8,9,2.5,1.9| 3,3.6,8,9,2.5     | :11: found 5 cells, allowed is 6 cells for month 3
            3,3.6,8,9,2.5,1.9| 4,3.6,8,9,2.5,1.9 | :11: found month 4, allowed is month 3
            3,3.6,8,9,2.5,1.9| 3,3.6,8,9,x,1.9   | :11: found dew point degc "x", allowed is a number
            3,3.6,8,9,2.5,1.9| 3,36,8,9,2.5,1.9  | March: mean global horizontal irradiation must be 0.01 to 12
            3,3.6,8,9,2.5,1.9| 3,3.6,8,9,8.5,1.9 | March: mean dew point (not above the mean air temperature) must be
            3,3.6,8,9,2.5,1.9| 3,3.6,8,9,2.5,0   | March: mean wind speed must be 0.3 to 15 m/s
            12,1.1,3,5.5,1   | 12,1.1,3,NaN,1    | December: mean daily range of air temperature must be 1 to 30 K
            """)
    void brokenFilesSayWhatIsWrong(String good, String bad, String message) throws IOException {
        Path file = write(GOOD.replace(good, bad));
        assertThatThrownBy(() -> NormalsFile.read(file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(file.toString())
                .hasMessageContaining(message);
    }

    @Test
    void elevenMonthsAreNotAYear() throws IOException {
        Path file = write(GOOD.replace("12,1.1,3,5.5,1,1.2\n", ""));
        assertThatThrownBy(() -> NormalsFile.read(file)).hasMessageContaining("cells for month 12");
    }

    @Test
    void missingQuantityIsNamed() {
        MonthlyNormals.Builder noWind = MonthlyNormals.builder()
                .globalHorizontalKwhM2Day(SAME)
                .airTemperatureC(SAME)
                .dailyRangeK(SAME)
                .dewPointC(SAME);
        assertThatThrownBy(noWind::build).hasMessage("normals need 12 values of wind speed, January first, got 0");
    }

    @Test
    void dewPointAndHumidityTogetherAreRefused() {
        MonthlyNormals.Builder both = Climates.temperateBuilder().relativeHumidity(SAME);
        assertThatThrownBy(both::build).hasMessageContaining("one of the two");
    }

    @Test
    void humidityInPercentIsRefused() {
        MonthlyNormals.Builder percent = MonthlyNormals.builder()
                .globalHorizontalKwhM2Day(SAME)
                .airTemperatureC(SAME)
                .dailyRangeK(SAME)
                .windSpeedMs(SAME)
                .relativeHumidity(70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 70);
        assertThatThrownBy(percent::build).hasMessage("January: mean relative humidity must be 0.01 to 1, was 70");
    }

    @Test
    void humidityBecomesDewPoint() {
        // ASHRAE psychrometric chart, 25 °C and 60 %: dew point 16.7 °C, from memory, read to 0.1 K
        double[] air = new double[12];
        double[] humidity = new double[12];
        java.util.Arrays.fill(air, 25);
        java.util.Arrays.fill(humidity, 0.6);
        MonthlyNormals normals = MonthlyNormals.builder()
                .globalHorizontalKwhM2Day(SAME)
                .airTemperatureC(air)
                .dailyRangeK(SAME)
                .windSpeedMs(SAME)
                .relativeHumidity(humidity)
                .build();
        assertThat(normals.month(7).dewPointC()).isCloseTo(16.7, within(0.1));
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("normals.csv"), text);
    }
}
