package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.heater.Fuel;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers of a season that come from others, made again from the ledger. */
class DerivedNumbersTest {

    private static final Offset<Double> SAME_SUM = within(1e-6);

    /** Pumped from four in the afternoon, when the plates have had their hottest hour behind them. */
    private static final SeasonForecast AFTERNOON = SeasonForecast.of(
            Demo.pool(1.5)
                    .control(new Control(4, 0.3, 30, Schedule.daily(16, 20)))
                    .build(),
            Demo.weather("hot-dry"));

    /** Warmed for three weeks before it opens. */
    private static final SeasonForecast EARLY = SeasonForecast.of(
            Demo.pool(1.5)
                    .season(new OpeningSeason(MonthDay.of(5, 1), MonthDay.of(9, 30), Schedule.ALWAYS)
                            .after(new BeforeOpening(21, 0)))
                    .comfort(new Comfort(24, 30))
                    .build(),
            Demo.weather("warm-inland"));

    private static List<SeasonForecast> forecasts() {
        return Stream.concat(SampleForecasts.all().stream(), Stream.of(AFTERNOON, EARLY))
                .toList();
    }

    /** Collectors and their pipes count as one: what the pipes lose never arrived. */
    @ParameterizedTest
    @MethodSource("forecasts")
    void sharesAreOfWhatWarmedTheWater(SeasonForecast forecast) {
        for (PeriodSummary month : forecast.months()) {
            HeatBalance balance = month.balance();
            double gains = Math.max(0, balance.kwh(Flow.COLLECTORS) + balance.kwh(Flow.PIPES));
            for (Flow flow : Flow.values()) {
                boolean circuit = flow == Flow.COLLECTORS || flow == Flow.PIPES;
                gains += circuit || balance.kwh(flow) < 0 ? 0 : balance.kwh(flow);
            }
            assertThat(balance.gainsKwh()).isCloseTo(gains, SAME_SUM);
            assertShare(month.solarShareOfGains(), balance.deliveredKwh(), gains);
            assertShare(
                    month.solarShareOfHeating(),
                    balance.deliveredKwh(),
                    balance.deliveredKwh() + balance.kwh(Flow.HEATER));
            assertThat(month.gainedK())
                    .isEqualTo(month.water().meanC() - month.waterWithout().meanC());
        }
    }

    private static void assertShare(OptionalDouble share, double part, double whole) {
        if (whole > 0) {
            assertThat(share.orElseThrow()).isCloseTo(part / whole, within(1e-12));
        } else {
            assertThat(share).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void openHoursAreThoseOfTheSchedule(SeasonForecast forecast) {
        SeasonLedger ledger = forecast.with();
        int open = 0;
        for (int index = ledger.opening(); index < ledger.hours(); index++) {
            open += ledger.installation().season().openHours().at(ledger.hourOfYear(index)) > 0 ? 1 : 0;
        }
        assertThat(forecast.summary().season().comfort().openHours()).isEqualTo(open);
    }

    /** Counted from opening until the water first ends an hour at comfort. */
    @ParameterizedTest
    @MethodSource("forecasts")
    void warmUpEndsWithTheFirstHourAtComfort(SeasonForecast forecast) {
        SeasonSummary summary = forecast.summary();
        assertWarmUp(summary.warmUpHours(), forecast.with());
        assertWarmUp(summary.warmUpHoursWithout(), forecast.without());
    }

    private static void assertWarmUp(OptionalInt told, SeasonLedger ledger) {
        double comfortC = ledger.installation().comfortC() - 1e-6;
        int hours = 0;
        double waterC = ledger.waterStartC(ledger.opening());
        while (waterC < comfortC && ledger.opening() + hours < ledger.hours()) {
            waterC = ledger.waterEndC(ledger.opening() + hours);
            hours++;
        }
        if (waterC >= comfortC) {
            assertThat(told).hasValue(hours);
        } else {
            assertThat(told).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("forecasts")
    void theArraysGiveTogetherWhatTheCollectorsGave(SeasonForecast forecast) {
        SeasonLedger ledger = forecast.with();
        for (int index = 0; index < ledger.hours(); index++) {
            double sum = 0;
            for (int array = 0; array < forecast.installation().arrays().size(); array++) {
                sum += ledger.arrayHeatKwh(array, index);
            }
            assertThat(sum).isCloseTo(ledger.heatKwh(Flow.COLLECTORS, index), SAME_SUM);
        }
    }

    @Test
    void nothingIsPumpedOutOfTheHoursOfTheControl() {
        SeasonLedger ledger = AFTERNOON.with();
        int ran = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            int hourOfDay = HourOfYear.hourOfDay(ledger.hourOfYear(index));
            if (hourOfDay < 16 || hourOfDay >= 20) {
                assertThat(ledger.runShare(0, index)).isZero();
            } else {
                ran += ledger.runShare(0, index) > 0 ? 1 : 0;
            }
        }
        assertThat(ran).isGreaterThan(100);
    }

    /** Water that stood in the plates may be as hot as they were in the hour of the start and in the one before. */
    @ParameterizedTest
    @MethodSource("forecasts")
    void theFirstSlugIsAsHotAsThePlateStood(SeasonForecast forecast) {
        SeasonLedger ledger = forecast.with();
        double hottest = Double.NEGATIVE_INFINITY;
        for (int array = 0; array < forecast.installation().arrays().size(); array++) {
            CollectorForcing collector = forecast.forcing().collectors().get(array);
            for (int index = 0; index < ledger.hours(); index++) {
                boolean stood = index > 0 && ledger.runShare(array, index - 1) < 1;
                boolean runs = ledger.runShare(array, index) > 0;
                if (runs && stood) {
                    hottest = Math.max(hottest, plateC(ledger, collector, index - 1));
                }
                if (runs && (stood || index == 0 || ledger.runShare(array, index) < 1)) {
                    hottest = Math.max(hottest, plateC(ledger, collector, index));
                }
            }
        }
        OptionalDouble slug = forecast.summary()
                .workingRange()
                .map(WorkingRange::hottestFirstSlugC)
                .orElse(OptionalDouble.empty());
        if (Double.isInfinite(hottest)) {
            assertThat(slug).isEmpty();
        } else {
            assertThat(slug).hasValue(hottest);
        }
    }

    @Test
    void theSlugMayHaveStoodInAHotterHourThanTheStarts() {
        double highestFromFour = Double.NEGATIVE_INFINITY;
        SeasonLedger ledger = AFTERNOON.with();
        for (int index = 0; index < ledger.hours(); index++) {
            if (ledger.runShare(0, index) > 0) {
                highestFromFour = Math.max(
                        highestFromFour,
                        plateC(ledger, AFTERNOON.forcing().collectors().get(0), index));
            }
        }
        assertThat(AFTERNOON
                        .summary()
                        .workingRange()
                        .orElseThrow()
                        .hottestFirstSlugC()
                        .orElseThrow())
                .isGreaterThan(highestFromFour);
    }

    private static double plateC(SeasonLedger ledger, CollectorForcing collector, int index) {
        return collector.curves().highestPlateC(ledger.hourOfYear(index));
    }

    /** Rigid PVC of 7e-5/K, a bay of 6 m, from -10 to 70 °C: 33.6 mm. */
    @Test
    void aPipeMovesByItsExpansion() {
        WorkingRange told = SampleForecasts.MUNICIPAL.summary().workingRange().orElseThrow();
        WorkingRange range = new WorkingRange(
                70,
                -10,
                0,
                0,
                0,
                0,
                told.firstFrostInUse(),
                told.lastFrostInUse(),
                told.drainDown(),
                OptionalDouble.empty(),
                0);
        assertThat(range.pipeMovementMm(6, 7e-5)).isCloseTo(33.6, within(1e-9));
    }

    /** A hundredth more, or less where no more can be described; what is too small to shrink stays. */
    @Test
    void theNextSquareMetreIsLookedForWhereThereMayBeOne() {
        SeasonForecast usual = SampleForecasts.MUNICIPAL;
        double area = usual.installation().collectorAreaM2();
        assertThat(usual.grown().orElseThrow().installation().collectorAreaM2()).isCloseTo(1.01 * area, within(1e-9));

        CollectorArray array = usual.installation().arrays().get(0);
        SeasonForecast largest = SampleForecasts.municipal(usual.installation().toBuilder()
                .arrays(array.withAreaM2(CollectorArray.AREA.highest()), array.withAreaM2(CollectorArray.AREA.lowest()))
                .build());
        assertThat(largest.grown().orElseThrow().installation().arrays().stream()
                        .map(CollectorArray::areaM2))
                .containsExactly(0.99 * CollectorArray.AREA.highest(), CollectorArray.AREA.lowest());
        assertThat(SampleForecasts.BARE.grown()).isEmpty();
    }

    @Test
    void forcingOfOtherWeatherIsRefused() {
        SeasonForecast usual = SampleForecasts.MUNICIPAL;
        assertThatThrownBy(() -> SeasonForecast.of(usual.installation(), usual.forcing(), Demo.weather("hot-dry")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("weather");
    }

    /** 300 of gas without collectors, 100 with them and 20 for the pump; 1000 kWh of a gas of 100 kg/GJ are 360 kg. */
    @Test
    void whatIsSavedIsLessByThePump() {
        MoneySummary money = new MoneySummary("EUR", 100, 300, 20, 150, OptionalDouble.empty());
        assertThat(money.saved()).isEqualTo(180);
        Fuel fuel = new Fuel("invented gas", "m3", 36, 100);
        GasSummary.Displaced gas = new GasSummary.Displaced(fuel, 1000, 3000);
        assertThat(gas.burnedCo2Kg()).isCloseTo(360, within(1e-9));
        assertThat(gas.replacedKwh()).isEqualTo(2000);
    }
}
