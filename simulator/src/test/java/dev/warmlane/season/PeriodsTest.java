package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.warmlane.SampleForecasts;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PeriodsTest {

    private static List<SeasonForecast> forecasts() {
        return SampleForecasts.all();
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void eachCutHoldsEveryHourOnceAndInOrder(SeasonForecast forecast) {
        SeasonLedger ledger = forecast.with();

        for (List<Period> cut :
                List.of(Periods.hours(ledger), Periods.days(ledger), Periods.weeks(ledger), Periods.months(ledger))) {
            int at = 0;
            for (Period period : cut) {
                assertThat(period.from()).isEqualTo(at);
                at = period.to();
            }
            assertThat(at).isEqualTo(ledger.hours());
        }
    }

    @Test
    void southernMonthsComeInTheOrderOfTheSeason() {
        assertThat(Periods.months(SampleForecasts.SOUTHERN.with()))
                .extracting(Period::label)
                .containsExactly("Oct 20-31", "Nov", "Dec", "Jan", "Feb", "Mar", "Apr 1-10");
    }

    @Test
    void weeksCountFromOpeningAndTheLastIsShort() {
        List<Period> weeks = Periods.weeks(SampleForecasts.SOUTHERN.with());

        assertThat(weeks.get(0)).isEqualTo(new Period("week 1", 0, 168));
        // 173 days are 24 weeks and 5 days
        assertThat(weeks.get(24)).isEqualTo(new Period("week 25", 24 * 168, 173 * 24));
    }

    @Test
    void daysAndHoursAreCalledByTheirDate() {
        SeasonLedger ledger = SampleForecasts.SOUTHERN.with();

        assertThat(Periods.days(ledger).get(73).label()).isEqualTo("01-01");
        assertThat(Periods.hours(ledger).get(73 * 24 - 1).label()).isEqualTo("12-31 23:00");
    }

    @Test
    void wholeYearFromTheMiddleOfAMonthHasThatMonthTwice() {
        Installation built = SampleForecasts.BARE.installation().toBuilder()
                .season(new OpeningSeason(MonthDay.of(7, 15), MonthDay.of(7, 14), Schedule.ALWAYS))
                .build();

        List<Period> months = Periods.months(SampleForecasts.municipal(built).with());

        assertThat(months).hasSize(13);
        assertThat(months.get(0).label()).isEqualTo("Jul 15-31");
        assertThat(months.get(12).label()).isEqualTo("Jul 1-14");
    }

    @Test
    void emptyPeriodIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Period("nothing", 5, 5))
                .withMessageContaining("at least one hour");
    }
}
