package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.heater.Boiler;
import dev.warmlane.pool.Flow;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sums and differences of the numbers of a season. */
class SeasonForecastTest {

    /** Sums in another order differ in their last digits: of 1e6 kWh by less than a ten-thousandth of a watt-hour. */
    private static final Offset<Double> SAME_SUM = within(1e-7);

    /** The ledger closes to 1e-9 of its flows in every hour, thousands of hours of up to 1000 kWh. */
    private static final Offset<Double> CLOSES = within(1e-3);

    private static final Offset<Double> ROUNDING = within(1e-6);

    private static List<SeasonForecast> forecasts() {
        return SampleForecasts.all();
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void monthsWeeksAndDaysAddUpToTheSeason(SeasonForecast forecast) {
        PeriodSummary season = forecast.summary().season();
        List<ToDoubleFunction<PeriodSummary>> sums = List.of(
                p -> p.balance().deliveredKwh(),
                p -> p.balance().kwh(Flow.HEATER),
                p -> p.balance().kwh(Flow.EVAPORATION),
                p -> p.balanceWithout().kwh(Flow.LONG_WAVE),
                p -> p.balance().storedKwh(),
                p -> p.balance().evaporatedKg(),
                p -> p.balance().makeUpM3(),
                p -> p.collectors().irradiationKwh(),
                p -> p.collectors().refusedKwh(),
                p -> p.gas().replacedKwh(),
                p -> p.pump().hours());
        List<ToDoubleFunction<PeriodSummary>> opened = List.of(
                p -> p.water().meanC() * p.period().hours(),
                p -> p.airMeanC() * p.period().hours(),
                p -> p.comfort().daysAtComfort(),
                p -> p.comfort().daysTooWarm(),
                p -> p.comfort().openDays(),
                p -> p.comfort().openHoursAtComfort(),
                PeriodSummary::daysGained);

        for (List<PeriodSummary> parts : List.of(forecast.months(), forecast.weeks(), forecast.days())) {
            for (ToDoubleFunction<PeriodSummary> number : sums) {
                assertThat(parts.stream().mapToDouble(number).sum()).isCloseTo(number.applyAsDouble(season), SAME_SUM);
            }
            for (ToDoubleFunction<PeriodSummary> number : opened) {
                assertThat(SampleForecasts.opened(forecast, parts).stream()
                                .mapToDouble(number)
                                .sum())
                        .isCloseTo(number.applyAsDouble(season), SAME_SUM);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void heatOfAllKindsIsWhatTheWaterStored(SeasonForecast forecast) {
        for (PeriodSummary month : forecast.months()) {
            assertThat(month.balance().kwh().values().stream()
                            .mapToDouble(Double::doubleValue)
                            .sum())
                    .isCloseTo(month.balance().storedKwh(), CLOSES);
            assertThat(month.balanceWithout().kwh(Flow.COLLECTORS)).isZero();
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void extremesOfTheSeasonAreThoseOfItsDays(SeasonForecast forecast) {
        TemperatureSummary season = forecast.summary().season().water();
        List<PeriodSummary> days = SampleForecasts.opened(forecast, forecast.days());

        assertThat(days.stream().mapToDouble(d -> d.water().lowestC()).min()).hasValue(season.lowestC());
        assertThat(days.stream().mapToDouble(d -> d.water().highestC()).max()).hasValue(season.highestC());
        assertThat(days.stream().mapToDouble(d -> d.water().meanC()).min())
                .hasValue(season.coldestDay().meanC());
        assertThat(days.stream().mapToDouble(d -> d.water().meanC()).max())
                .hasValue(season.warmestDay().meanC());
    }

    @Test
    void gasDisplacedIsTheDifferenceOfTwoSimulations() {
        SeasonForecast forecast = SampleForecasts.MUNICIPAL;
        GasSummary.Displaced gas =
                (GasSummary.Displaced) forecast.summary().season().gas();
        double efficiency = ((Boiler) forecast.installation().heater().orElseThrow()).efficiency();

        assertThat(gas.burnedKwh())
                .isCloseTo(
                        forecast.with().heatKwh(Flow.HEATER, Periods.season(forecast.with())) / efficiency, ROUNDING);
        assertThat(gas.replacedKwh())
                .isCloseTo(
                        forecast.without().heatKwh(Flow.HEATER, Periods.season(forecast.without())) / efficiency
                                - gas.burnedKwh(),
                        ROUNDING)
                .isPositive();
        // the warmer pool loses more, so less gas is displaced than the heat delivered would have taken
        assertThat(gas.replacedKwh() * efficiency)
                .isLessThan(forecast.summary().season().balance().deliveredKwh());
    }

    @Test
    void poolWithoutHeaterTellsWhatAHeaterWouldHaveBurned() {
        PeriodSummary season = SampleForecasts.SOUTHERN.summary().season();
        GasSummary.WouldHaveBurned gas = (GasSummary.WouldHaveBurned) season.gas();

        assertThat(gas.efficiency()).isEqualTo(0.82);
        assertThat(gas.replacedKwh()).isEqualTo(season.balance().deliveredKwh() / 0.82);
        assertThat(gas.fuel().name()).isEqualTo("natural gas");
        // 38.60 MJ/m³ and 50.29 kg CO2 per GJ
        assertThat(gas.replacedUnits()).isCloseTo(gas.replacedKwh() * 3.6 / 38.60, within(1e-6));
        assertThat(gas.replacedCo2Kg()).isCloseTo(gas.replacedKwh() * 3.6e-3 * 50.29, within(1e-6));
    }

    @Test
    void withoutCollectorsNothingIsGained() {
        SeasonSummary summary = SampleForecasts.BARE.summary();
        PeriodSummary season = summary.season();

        assertThat(season.gainedK()).isZero();
        assertThat(season.daysGained()).isZero();
        assertThat(season.gas().replacedKwh()).isZero();
        assertThat(season.collectors().deliveredKwh()).isZero();
        assertThat(season.collectors().deliveredKwhPerM2()).isEmpty();
        assertThat(season.collectors().efficiency()).isEmpty();
        assertThat(season.collectors().highestOutletC()).isEmpty();
        assertThat(season.pump().hours()).isZero();
        assertThat(summary.workingRange()).isEmpty();
        assertThat(summary.nextSquareMetre()).isEmpty();
        assertThat(summary.arrays()).isEmpty();
        assertThat(summary.money().orElseThrow().collectorCost()).isEmpty();
    }

    @Test
    void bareForecastIsTheOtherForecastsSeasonWithoutCollectors() {
        assertThat(SampleForecasts.BARE.summary().season().water())
                .isEqualTo(SampleForecasts.MUNICIPAL.summary().season().waterWithout());
    }
}
