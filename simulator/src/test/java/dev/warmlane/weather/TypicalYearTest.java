package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A typical year of one's own: the statistic by hand, and that what is chosen is what is most like all years. */
class TypicalYearTest {

    private static final double ROUNDING = 1e-12;

    private static final WeatherYear SAMPLE = Demo.weather("cool-coast");

    private static final List<WeatherYear> GIVEN = IntStream.range(0, 7)
            .mapToObj(i -> RealYears.like(SAMPLE, 2001 + i, i - 3, 1 - 0.03 * Math.abs(i - 3)))
            .toList();

    private static final WeatherYears YEARS = WeatherYears.of(GIVEN);

    @TempDir
    private Path folder;

    /**
     * By hand: of the days 1 and 3 among 1, 2, 3, 4 a half and all are not above, of all days a quarter and three quarters:
     * a quarter apart at both.
     */
    @Test
    void theStatisticIsTheMeanDistanceOfTwoDistributions() {
        double[] all = {1, 2, 3, 4};
        assertThat(FinkelsteinSchafer.statistic(new double[] {3, 1}, all)).isCloseTo(0.25, within(ROUNDING));
        // 4 alone: all of its own, all of all
        assertThat(FinkelsteinSchafer.statistic(new double[] {4}, all)).isCloseTo(0, within(ROUNDING));
        assertThat(FinkelsteinSchafer.statistic(new double[] {1}, all)).isCloseTo(0.75, within(ROUNDING));
        assertThat(FinkelsteinSchafer.statistic(all, all)).isZero();
        // equal days are one step
        assertThat(FinkelsteinSchafer.statistic(new double[] {2, 2}, new double[] {1, 2, 2, 3}))
                .isCloseTo(0.25, within(ROUNDING));
    }

    @Test
    void runsAreOfTwoDaysAndMore() {
        DayRuns runs = new DayRuns();
        runs.add(new double[] {1, 0, 1, 1, 0, 1, 1, 1}, day -> day > 0.5);
        assertThat(runs.count()).isEqualTo(2);
        assertThat(runs.longest()).isEqualTo(3);
        runs.add(new double[] {0, 0, 0, 0}, day -> day < 0.5);
        assertThat(runs.count()).isEqualTo(3);
        assertThat(runs.longest()).isEqualTo(4);
        DayRuns none = new DayRuns();
        none.add(new double[] {1, 0, 1, 0}, day -> day > 0.5);
        assertThat(none.count()).isZero();
        assertThat(none.longest()).isZero();
    }

    @Test
    void aDayIsToldByItsHours() {
        WeatherYear weather = GIVEN.get(3);
        double[] july = DailyIndex.AIR_HIGHEST.ofMonth(weather, 7);
        assertThat(july).hasSize(31);
        int first = HourOfYear.of(7, 31, 0);
        double[] air = IntStream.range(first, first + 24)
                .mapToDouble(weather::airTemperatureC)
                .toArray();
        double[] light = IntStream.range(first, first + 24)
                .mapToDouble(weather::globalHorizontalWm2)
                .toArray();
        assertThat(july[30]).isEqualTo(Arrays.stream(air).max().orElseThrow());
        assertThat(DailyIndex.AIR_LOWEST.ofMonth(weather, 7)[30])
                .isEqualTo(Arrays.stream(air).min().orElseThrow());
        assertThat(DailyIndex.AIR_MEAN.ofMonth(weather, 7)[30])
                .isCloseTo(Arrays.stream(air).average().orElseThrow(), within(1e-9));
        assertThat(DailyIndex.GLOBAL.ofMonth(weather, 7)[30])
                .isCloseTo(Arrays.stream(light).average().orElseThrow(), within(1e-9));
        assertThat(DailyIndex.DIRECT.of(weather, 195)).isNotEqualTo(DailyIndex.GLOBAL.of(weather, 195));
        assertThat(DailyIndex.WIND_HIGHEST.of(weather, 195)).isGreaterThan(DailyIndex.WIND_MEAN.of(weather, 195));
        assertThat(DailyIndex.DEW_HIGHEST.of(weather, 195)).isGreaterThan(DailyIndex.DEW_LOWEST.of(weather, 195));
        assertThat(DailyIndex.DEW_MEAN.of(weather, 195))
                .isBetween(DailyIndex.DEW_LOWEST.of(weather, 195), DailyIndex.DEW_HIGHEST.of(weather, 195));
    }

    /** Of seven years that differ by a kelvin each the extremes are never among the five candidates. */
    @Test
    void extremeYearsGiveNoMonth() {
        TypicalYear typical = TypicalYear.of(YEARS, new TypicalWeights(Map.of(DailyIndex.AIR_MEAN, 1.0)));
        assertThat(typical.months()).hasSize(12);
        assertThat(typical.months()).extracting(TypicalYear.Month::calendarYear).allSatisfy(year -> assertThat(year)
                .isBetween(2002, 2006));
        assertThat(typical.months()).allSatisfy(month -> {
            double[] all = YEARS.years().stream()
                    .flatMapToDouble(year -> Arrays.stream(DailyIndex.AIR_MEAN.ofMonth(year.weather(), month.month())))
                    .sorted()
                    .toArray();
            WeatherYear from = YEARS.years().get(month.calendarYear() - 2001).weather();
            assertThat(month.statistic())
                    .isEqualTo(FinkelsteinSchafer.statistic(DailyIndex.AIR_MEAN.ofMonth(from, month.month()), all));
        });
    }

    @Test
    void withinAMonthTheYearIsThatOfItsSource() {
        TypicalYear typical = TypicalYear.of(YEARS);
        for (TypicalYear.Month month : typical.months()) {
            WeatherYear from = YEARS.years().get(month.calendarYear() - 2001).weather();
            int hour = HourOfYear.of(month.month(), 15, 12);
            assertThat(typical.weather().airTemperatureC(hour)).isEqualTo(from.airTemperatureC(hour));
            assertThat(typical.weather().globalHorizontalWm2(hour)).isEqualTo(from.globalHorizontalWm2(hour));
            assertThat(typical.weather().vapourPressureKpa(hour)).isEqualTo(from.vapourPressureKpa(hour));
            assertThat(typical.weather().sun().calendarYear(hour)).isEqualTo(month.calendarYear());
        }
        assertThat(typical.weather().findings().get(0).message())
                .contains("Jan " + typical.months().get(0).calendarYear());
    }

    @Test
    void yearsInAnyOrderChooseTheSame() {
        List<WeatherYear> reversed = new ArrayList<>(GIVEN);
        Collections.reverse(reversed);
        assertThat(TypicalYear.of(WeatherYears.of(reversed)).months())
                .isEqualTo(TypicalYear.of(YEARS).months());
    }

    /** Ten kelvin apart the step is gone, the sixth hour is still as it was, and the means of both sides meet half-way. */
    @Test
    void aStepBetweenYearsIsSpreadOverSixHours() {
        WeatherYear cold = RealYears.like(SAMPLE, 2001, 0, 1);
        WeatherYear warm = RealYears.like(SAMPLE, 2002, 10, 1);
        int july = HourOfYear.of(7, 1, 0);
        int[] halves =
                IntStream.range(0, HourOfYear.HOURS).map(h -> h < july ? 0 : 1).toArray();
        WeatherYear year = new WeatherSplice(List.of(cold, warm), halves, "halves", List.of())
                .smoothed()
                .year();

        assertThat(year.airTemperatureC(july)).isCloseTo(year.airTemperatureC(july - 1), within(1e-9));
        double step = warm.airTemperatureC(july) - cold.airTemperatureC(july - 1);
        assertThat(year.airTemperatureC(july - 1)).isCloseTo(cold.airTemperatureC(july - 1) + step / 2, within(1e-9));
        assertThat(year.airTemperatureC(july + 3)).isCloseTo(warm.airTemperatureC(july + 3) - step / 4, within(1e-9));
        assertThat(year.airTemperatureC(july + 6)).isEqualTo(warm.airTemperatureC(july + 6));
        assertThat(year.airTemperatureC(july - 7)).isEqualTo(cold.airTemperatureC(july - 7));
        // and where December meets January
        assertThat(year.airTemperatureC(0)).isCloseTo(year.airTemperatureC(HourOfYear.HOURS - 1), within(1e-9));
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            assertThat(year.dewPointC(hour)).isLessThanOrEqualTo(year.airTemperatureC(hour));
            assertThat(year.windSpeedMs(hour)).isNotNegative();
        }
    }

    @Test
    void itIsWrittenAndReadBackAsATypicalYear() throws IOException {
        WeatherYear typical = TypicalYear.of(YEARS).weather();
        Path file = folder.resolve("typical.csv");
        PlainWeatherWriter.write(typical, file);
        WeatherYear read = WeatherFiles.read(file);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 97) {
            assertThat(read.airTemperatureC(hour)).isCloseTo(typical.airTemperatureC(hour), within(0.001));
            assertThat(read.sun().calendarYear(hour)).isEqualTo(typical.sun().calendarYear(hour));
        }
    }

    @Test
    void tooFewYearsAndWeightsThatDoNotAddUpAreRefused() {
        assertThatThrownBy(() -> TypicalYear.of(WeatherYears.of(GIVEN.subList(0, 2))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3");
        assertThatThrownBy(() -> new TypicalWeights(Map.of(DailyIndex.AIR_MEAN, 0.9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sum");
        assertThat(TypicalWeights.TMY3.weights().values().stream()
                        .mapToDouble(w -> w)
                        .sum())
                .isCloseTo(1, within(ROUNDING));
    }
}
