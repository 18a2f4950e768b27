package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ComfortSummaryTest {

    private static final SeasonForecast SOUTHERN = SampleForecasts.SOUTHERN;

    @Test
    void countsDaysByTheMeanOfTheirOpenHours() {
        SeasonLedger ledger = SOUTHERN.with();
        List<MonthDay> warm = new ArrayList<>();
        int hoursAtComfort = 0;
        for (int day = 0; day < ledger.hours() / 24; day++) {
            double sum = 0;
            // the scenario is open from 7 to 20
            for (int hour = 7; hour < 20; hour++) {
                sum += ledger.waterC(24 * day + hour);
                hoursAtComfort += ledger.waterC(24 * day + hour) >= 25 ? 1 : 0;
            }
            if (sum / 13 >= 25) {
                warm.add(HourOfYear.dateOf(ledger.hourOfYear(24 * day)));
            }
        }

        ComfortSummary comfort = ComfortSummary.of(ledger, Periods.season(ledger));

        assertThat(warm).isNotEmpty();
        assertThat(comfort.daysAtComfort()).isEqualTo(warm.size());
        assertThat(comfort.firstDay()).contains(warm.get(0));
        assertThat(comfort.lastDay()).contains(warm.get(warm.size() - 1));
        assertThat(comfort.openHoursAtComfort()).isEqualTo(hoursAtComfort);
        assertThat(comfort.openDays()).isEqualTo(173);
        assertThat(comfort.openHours()).isEqualTo(173 * 13);
    }

    @Test
    void firstDayOfASouthernSeasonLiesBeforeNewYearAndTheLastAfterIt() {
        ComfortSummary comfort = ComfortSummary.of(SOUTHERN.with(), Periods.season(SOUTHERN.with()));

        assertThat(comfort.firstDay().orElseThrow().getMonthValue()).isGreaterThan(9);
        assertThat(comfort.lastDay().orElseThrow().getMonthValue()).isLessThan(5);
    }

    @Test
    void heaterThatHoldsTheComfortTemperatureCountsInEveryDay() {
        // 26.666... has no end in binary, so that sums of it are rounded
        double comfort = 80.0 / 3;
        Installation built = SampleForecasts.BARE.installation().toBuilder()
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.85, 5000, comfort))
                .startWater(new StartWater.Given(comfort))
                .comfort(new Comfort(comfort, 30))
                .build();

        SeasonLedger ledger = SampleForecasts.municipal(built).with();

        assertThat(ComfortSummary.of(ledger, Periods.season(ledger)).daysAtComfort())
                .isEqualTo(134);
    }

    @Test
    void closedDaysAreNotCounted() {
        ComfortSummary july = SampleForecasts.INDOOR.months().get(6).comfort();

        assertThat(july).isEqualTo(new ComfortSummary(0, 0, 0, 0, 0, Optional.empty(), Optional.empty()));
    }

    @Test
    void warmUpLastsUntilTheWaterFirstReachesComfort() {
        SeasonLedger ledger = SOUTHERN.with();

        int hours = SOUTHERN.summary().warmUpHours().orElseThrow();

        assertThat(ledger.waterEndC(hours - 1)).isGreaterThanOrEqualTo(25);
        for (int index = 0; index < hours - 1; index++) {
            assertThat(ledger.waterEndC(index)).isLessThan(25);
        }
    }

    @Test
    void warmUpIsNothingWhereThePoolOpensWarmAndNeverWhereItStaysCold() {
        Installation.Builder winter = SampleForecasts.BARE.installation().toBuilder()
                .heater(null)
                .season(new OpeningSeason(MonthDay.of(1, 1), MonthDay.of(1, 31), Schedule.ALWAYS));

        SeasonForecast warm = SampleForecasts.municipal(
                winter.startWater(new StartWater.Given(30)).build());
        SeasonForecast cold = SampleForecasts.municipal(
                winter.startWater(new StartWater.Given(10)).build());

        assertThat(warm.summary().warmUpHours()).hasValue(0);
        assertThat(cold.summary().warmUpHours()).isEmpty();
    }
}
