package dev.warmlane.weather.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherYear;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every generated year, whatever the site and seed. */
class TypicalYearGeneratorTest {

    /** Means are solved for, so only arithmetic separates them; the requirement itself is 1 %. */
    private static final double SOLVED = 1e-9;

    /** W/m²: the beam is computed by closure. */
    private static final double CLOSURE_WM2 = 1e-9;

    /** K: the range is solved before the smooth course through the months is added, which drifts up to 0.3 K a day. */
    private static final double RANGE_K = 0.3;

    static Stream<Arguments> sitesAndSeeds() {
        return Stream.of(Climates.NORTH, Climates.SOUTH, Climates.TROPIC, Climates.HIGH)
                .flatMap(site -> Stream.of(1L, -7L, 20_260_101L).map(seed -> Arguments.of(site, seed)));
    }

    @ParameterizedTest
    @MethodSource("sitesAndSeeds")
    void monthMeansComeBack(Site site, long seed) {
        MonthlyNormals normals = Climates.of(site);
        WeatherYear year = TypicalYearGenerator.generate(site, normals, seed);
        for (int month = 1; month <= 12; month++) {
            MonthlyNormals.Values wanted = normals.month(month);
            assertThat(mean(month, year::globalHorizontalWm2) * 24 / 1000)
                    .isCloseTo(wanted.globalHorizontalKwhM2Day(), within(SOLVED));
            assertThat(mean(month, year::airTemperatureC)).isCloseTo(wanted.airTemperatureC(), within(SOLVED));
            assertThat(mean(month, year::dewPointC)).isCloseTo(wanted.dewPointC(), within(SOLVED));
            assertThat(mean(month, year::windSpeedMs)).isCloseTo(wanted.windSpeedMs(), within(SOLVED));
            assertThat(meanRange(month, year)).isCloseTo(wanted.dailyRangeK(), within(RANGE_K));
        }
    }

    @ParameterizedTest
    @MethodSource("sitesAndSeeds")
    void everyHourIsPossible(Site site, long seed) {
        WeatherYear year = TypicalYearGenerator.generate(site, Climates.of(site), seed);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double global = year.globalHorizontalWm2(hour);
            double diffuse = year.diffuseHorizontalWm2(hour);
            double beam = year.directNormalWm2(hour);
            assertThat(diffuse + beam * year.sun().cosZenith(hour)).isCloseTo(global, within(CLOSURE_WM2));
            assertThat(diffuse).isBetween(0.0, global);
            assertThat(beam).isBetween(0.0, year.sun().extraterrestrialNormalWm2(hour));
            if (!year.sun().isUp(hour)) {
                assertThat(global).isZero();
            } else {
                assertThat(global).as(HourOfYear.label(hour)).isPositive();
            }
            assertThat(year.dewPointC(hour)).isLessThanOrEqualTo(year.airTemperatureC(hour));
            assertThat(year.windSpeedMs(hour)).isBetween(0.0, 50.0);
            assertThat(year.skyLongWaveWm2(hour)).isBetween(100.0, 550.0);
        }
    }

    @Test
    void oneSeedGivesOneYear() {
        MonthlyNormals normals = Climates.of(Climates.NORTH);
        WeatherYear first = TypicalYearGenerator.generate(Climates.NORTH, normals, 5);
        WeatherYear again = TypicalYearGenerator.generate(Climates.NORTH, normals, 5);
        WeatherYear other = TypicalYearGenerator.generate(Climates.NORTH, normals, 6);
        int different = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(again.globalHorizontalWm2(hour)).isEqualTo(first.globalHorizontalWm2(hour));
            assertThat(again.directNormalWm2(hour)).isEqualTo(first.directNormalWm2(hour));
            assertThat(again.airTemperatureC(hour)).isEqualTo(first.airTemperatureC(hour));
            assertThat(again.dewPointC(hour)).isEqualTo(first.dewPointC(hour));
            assertThat(again.windSpeedMs(hour)).isEqualTo(first.windSpeedMs(hour));
            assertThat(again.skyLongWaveWm2(hour)).isEqualTo(first.skyLongWaveWm2(hour));
            different += other.airTemperatureC(hour) == first.airTemperatureC(hour) ? 0 : 1;
        }
        assertThat(different).isEqualTo(HourOfYear.HOURS);
    }

    @Test
    void anotherWindLeavesTheRestAsItWas() {
        MonthlyNormals.Builder windier = Climates.temperateBuilder().windSpeedMs(5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5);
        WeatherYear calm = TypicalYearGenerator.generate(Climates.NORTH, Climates.of(Climates.NORTH), 5);
        WeatherYear windy = TypicalYearGenerator.generate(Climates.NORTH, windier.build(), 5);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(windy.globalHorizontalWm2(hour)).isEqualTo(calm.globalHorizontalWm2(hour));
            assertThat(windy.airTemperatureC(hour)).isEqualTo(calm.airTemperatureC(hour));
            assertThat(windy.dewPointC(hour)).isEqualTo(calm.dewPointC(hour));
        }
    }

    @Test
    void southHasItsSummerAtNewYear() {
        WeatherYear north = TypicalYearGenerator.generate(Climates.NORTH, Climates.of(Climates.NORTH), 5);
        WeatherYear south = TypicalYearGenerator.generate(Climates.SOUTH, Climates.of(Climates.SOUTH), 5);
        assertThat(mean(1, south::globalHorizontalWm2)).isCloseTo(mean(7, north::globalHorizontalWm2), within(SOLVED));
        assertThat(mean(1, south::airTemperatureC)).isGreaterThan(mean(7, south::airTemperatureC) + 15);
        int noon = HourOfYear.of(1, 15, 12);
        assertThat(south.sun().azimuthDeg(noon))
                .as("sun in the north")
                .satisfiesAnyOf(azimuth -> assertThat(azimuth).isLessThan(45), azimuth -> assertThat(azimuth)
                        .isGreaterThan(315));
    }

    @Test
    void refusesMoreSunThanTheSkyHas() {
        double[] january = {4.2, 2.3, 3.6, 4.6, 5.6, 6.3, 6.5, 5.5, 4.0, 2.6, 1.5, 1.1};
        MonthlyNormals normals =
                Climates.temperateBuilder().globalHorizontalKwhM2Day(january).build();
        assertThatThrownBy(() -> TypicalYearGenerator.generate(Climates.NORTH, normals, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("January: mean global horizontal irradiation must be ")
                .hasMessageContaining("was 4.2")
                .hasMessageContaining("latitude");
    }

    @Test
    void refusesSummerSunOfTheOtherHemisphere() {
        assertThatThrownBy(() -> TypicalYearGenerator.generate(Climates.SOUTH, Climates.of(Climates.NORTH), 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("irradiation must be");
    }

    @Test
    void refusesPolarSites() {
        Site polar = new Site("polar", 70, 20, 10, 1);
        assertThatThrownBy(() -> TypicalYearGenerator.generate(polar, Climates.of(Climates.NORTH), 1))
                .hasMessage("latitude for a generated year must be -65 to 65 degrees, was 70");
    }

    private static double mean(int month, IntToDoubleFunction column) {
        double sum = 0;
        for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
            sum += column.applyAsDouble(hour);
        }
        return sum / (24 * HourOfYear.daysIn(month));
    }

    private static double meanRange(int month, WeatherYear year) {
        double sum = 0;
        for (int from = HourOfYear.firstHourOf(month); from < HourOfYear.firstHourOf(month + 1); from += 24) {
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (int hour = from; hour < from + 24; hour++) {
                lowest = Math.min(lowest, year.airTemperatureC(hour));
                highest = Math.max(highest, year.airTemperatureC(hour));
            }
            sum += highest - lowest;
        }
        return sum / HourOfYear.daysIn(month);
    }
}
