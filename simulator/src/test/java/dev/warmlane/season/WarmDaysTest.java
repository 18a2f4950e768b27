package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.pool.Flow;
import org.junit.jupiter.api.Test;

class WarmDaysTest {

    @Test
    void countsTheDaysOfTheLedgers() {
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        int warmer = 0;
        int free = 0;
        for (PeriodSummary day : SampleForecasts.opened(forecast, forecast.days())) {
            free += day.balance().kwh(Flow.HEATER) == 0 ? 1 : 0;
        }
        for (Period day : Periods.days(forecast.with())) {
            if (day.from() < forecast.with().opening()) {
                continue;
            }
            double gained = 0;
            for (int index = day.from() + 9; index < day.from() + 20; index++) { // open from 9 to 20
                gained += forecast.with().waterC(index) - forecast.without().waterC(index);
            }
            warmer += gained / 11 >= 2 ? 1 : 0;
        }
        WarmDays days = WarmDays.of(forecast);

        assertThat(days.openDays()).isEqualTo(134);
        assertThat(days.withoutHeater()).isEqualTo(free).isGreaterThan(days.withoutHeaterBefore());
        assertThat(days.twoWarmer()).isEqualTo(warmer).isPositive();
    }

    @Test
    void withoutCollectorsNothingIsWarmer() {
        WarmDays days = WarmDays.of(SampleForecasts.BARE);

        assertThat(days.twoWarmer()).isZero();
        assertThat(days.withoutHeater()).isEqualTo(days.withoutHeaterBefore());
    }

    @Test
    void withoutAHeaterItNeverGivesAnything() {
        assertThat(WarmDays.of(SampleForecasts.SOUTHERN).withoutHeater()).isEqualTo(173);
    }

    @Test
    void daysBeforeOpeningAreNoneOfTheSeason() {
        WarmDays days = WarmDays.of(SampleForecasts.MUNICIPAL);
        int cold = WarmDays.of(SampleForecasts.municipalCold()).withoutHeaterBefore();

        assertThat(days.openDays()).isEqualTo(134);
        // not the 18 days before it in which the heater may not run
        assertThat(days.withoutHeaterBefore()).isBetween(cold, cold + 5);
    }
}
