package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Collectors and heater that run before the pool opens. */
class BeforeOpeningTest {

    private static final WeatherYear WEATHER = Demo.weather("cool-coast");
    private static final OpeningSeason SEASON =
            new OpeningSeason(MonthDay.of(5, 15), MonthDay.of(9, 15), Schedule.daily(9, 19));
    /** Too small to reach its set point before opening. */
    private static final Boiler HEATER = new Boiler(Fuel.NATURAL_GAS, 0.82, 40, 26);

    private static final SeasonForecast EARLY = forecast(new BeforeOpening(20, 5), StartWater.StandingFilled.USUAL);
    private static final SeasonForecast TODAY = forecast(BeforeOpening.NOTHING, StartWater.StandingFilled.USUAL);

    /** Sums of the same numbers in another order. */
    private static final Offset<Double> ROUNDING = within(1e-6);

    @Test
    void bothPoolsStartFromTheSameWaterOnTheFirstDay() {
        assertThat(EARLY.with().opening()).isEqualTo(480);
        assertThat(EARLY.with().hours()).isEqualTo(480 + TODAY.with().hours());
        assertThat(EARLY.with().waterStartC(0)).isEqualTo(EARLY.without().waterStartC(0));
        assertThat(EARLY.opening().startC()).isEqualTo(EARLY.with().waterStartC(0));
        SeasonForecast given = forecast(new BeforeOpening(20, 5), new StartWater.Given(13));
        assertThat(given.with().waterStartC(0)).isEqualTo(13);
        assertThat(given.without().waterStartC(0)).isEqualTo(13);
    }

    @Test
    void collectorsRunFromTheirDayOnAndTheHeaterFromItsOwn() {
        SeasonLedger with = EARLY.with();
        double heat = 0;
        for (int index = 0; index < with.opening(); index++) {
            if (index < 15 * 24) {
                assertThat(with.boughtKwh(index)).isZero();
                assertThat(EARLY.without().boughtKwh(index)).isZero();
            }
            assertThat(with.heatJm2(Flow.BATHERS, index)).isZero();
            heat += with.deliveredKwh(index);
        }
        assertThat(heat).isGreaterThan(1000);
        assertThat(with.boughtKwh(15 * 24)).as("the heater starts at midnight").isPositive();

        SeasonLedger heaterFirst = forecast(new BeforeOpening(3, 10), StartWater.StandingFilled.USUAL)
                .with();
        for (int index = 0; index < 7 * 24; index++) {
            assertThat(heaterFirst.arrayHeatKwh(0, index)).isZero();
        }
    }

    @Test
    void theWaterAtOpeningAndWhatWasBoughtUntilThenAreResults() {
        OpeningSummary opening = EARLY.opening();
        assertThat(opening.date()).isEqualTo(MonthDay.of(5, 15));
        assertThat(opening.days()).isEqualTo(20);
        assertThat(opening.waterC()).isEqualTo(EARLY.with().waterEndC(479));
        assertThat(opening.waterC()).isGreaterThan(opening.waterWithoutC());
        double delivered = 0;
        for (int index = 0; index < 480; index++) {
            delivered += EARLY.with().deliveredKwh(index);
        }
        assertThat(opening.deliveredKwh()).isCloseTo(delivered, ROUNDING).isPositive();
        // the small heater runs at full load in both pools: the collectors show in the water
        assertThat(opening.boughtKwh()).isPositive().isLessThanOrEqualTo(opening.boughtWithoutKwh());
        assertThat(TODAY.opening().early()).isFalse();
        assertThat(TODAY.opening().boughtKwh()).isZero();
        assertThat(TODAY.opening().waterC()).isEqualTo(TODAY.opening().waterWithoutC());
    }

    @Test
    void meansAreOfTheOpenSeasonHeatAndFuelOfAllDays() {
        PeriodSummary season = EARLY.summary().season();
        SeasonLedger with = EARLY.with();
        double water = 0;
        for (int index = 480; index < with.hours(); index++) {
            water += with.waterC(index) / (with.hours() - 480);
        }
        assertThat(season.water().meanC()).isCloseTo(water, ROUNDING);
        assertThat(season.comfort().openDays()).isEqualTo(SEASON.days());
        double bought = 0;
        double delivered = 0;
        for (int index = 0; index < with.hours(); index++) {
            bought += with.boughtKwh(index);
            delivered += with.deliveredKwh(index);
        }
        assertThat(season.gas().displaced().orElseThrow().burnedKwh()).isCloseTo(bought, ROUNDING);
        assertThat(season.balance().deliveredKwh()).isCloseTo(delivered, ROUNDING);
        assertThat(season.balance().kwh().values().stream().mapToDouble(d -> d).sum())
                .isCloseTo(season.balance().storedKwh(), within(1e-3));
    }

    @Test
    void monthsAndWeeksHoldTheDaysBeforeOpeningAsOneAndAddUpToTheSeason() {
        for (List<PeriodSummary> parts : List.of(EARLY.months(), EARLY.weeks())) {
            PeriodSummary before = parts.get(0);
            assertThat(before.period().label()).isEqualTo("before opening");
            assertThat(before.comfort().openDays()).isZero();
            PeriodSummary season = EARLY.summary().season();
            assertThat(parts.stream().mapToDouble(p -> p.gas().replacedKwh()).sum())
                    .isCloseTo(season.gas().replacedKwh(), ROUNDING);
            assertThat(parts.stream().mapToDouble(p -> p.balance().makeUpM3()).sum())
                    .isCloseTo(season.balance().makeUpM3(), ROUNDING);
            assertThat(parts.stream().mapToInt(p -> p.comfort().daysAtComfort()).sum())
                    .isEqualTo(season.comfort().daysAtComfort());
        }
        assertThat(EARLY.weeks().get(1).period().label()).isEqualTo("week 1");
        assertThat(TODAY.months().get(0).period().label()).isEqualTo("May 15-31");
    }

    @Test
    void aSeasonBeforeWhichNothingRunsIsThatOfToday() {
        Installation plain = Demo.pool(1.5)
                .heater(HEATER)
                .season(new OpeningSeason(SEASON.first(), SEASON.last(), SEASON.openHours()))
                .startWater(StartWater.StandingFilled.USUAL)
                .build();
        SeasonLedger ledger = SeasonSimulator.simulate(plain, SeasonForcing.of(plain, WEATHER));
        for (int index = 0; index < ledger.hours(); index++) {
            assertThat(TODAY.with().waterEndC(index)).isEqualTo(ledger.waterEndC(index));
        }
    }

    @Test
    void nothingRunsBeforeThePoolHasClosed() {
        OpeningSeason long1 = new OpeningSeason(MonthDay.of(1, 11), MonthDay.of(12, 31), Schedule.ALWAYS);
        assertThat(long1.after(new BeforeOpening(10, 0)).beginHour()).isZero();
        assertThatThrownBy(() -> long1.after(new BeforeOpening(11, 0)))
                .hasMessageContaining("closed for 10 days of the year only");
    }

    private static SeasonForecast forecast(BeforeOpening before, StartWater start) {
        Installation built = Demo.pool(1.5)
                .heater(HEATER)
                .season(SEASON.after(before))
                .startWater(start)
                .build();
        return SeasonForecast.of(built, WEATHER);
    }
}
