package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.Constants;
import dev.warmlane.site.HourOfYear;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class WeatherSummaryTest {

    private static final double EXACT = 1e-9;

    private static final InventedYear YEAR = InventedYear.sound();
    private final WeatherSummary summary = WeatherSummary.of(YEAR.weather());

    @Test
    void monthsAddUpToTheYear() {
        assertThat(summary.months()).hasSize(12);
        assertThat(summary.months().stream()
                        .mapToDouble(WeatherSummary.Period::globalKwhM2)
                        .sum())
                .isCloseTo(summary.year().globalKwhM2(), within(EXACT));
        assertThat(summary.year().directKwhM2())
                .isCloseTo(Arrays.stream(YEAR.direct).sum() / 1000, within(EXACT));
        assertThat(summary.year().diffuseKwhM2())
                .isCloseTo(Arrays.stream(YEAR.diffuse).sum() / 1000, within(EXACT));
    }

    @Test
    void aMonthIsOfItsOwnHours() {
        double[] june = Arrays.copyOfRange(YEAR.air, HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7));
        WeatherSummary.Period period = summary.months().get(5);
        assertThat(period.airC()).isCloseTo(Arrays.stream(june).average().orElseThrow(), within(EXACT));
        assertThat(period.lowestAirC()).isEqualTo(Arrays.stream(june).min().orElseThrow());
        assertThat(period.highestAirC()).isEqualTo(Arrays.stream(june).max().orElseThrow());
        assertThat(period.relativeHumidity()).isBetween(0.0, 1.0);
    }

    @Test
    void skyTemperatureRadiatesTheMeanOfTheSky() {
        assertThat(Constants.blackBody(summary.year().skyTemperatureC()))
                .isCloseTo(Arrays.stream(YEAR.longWave).average().orElseThrow(), within(1e-6));
    }
}
