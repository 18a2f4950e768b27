package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What supply and return lose to the air. */
class PipeLossTest {

    /** Means of an hour against the middle of it: the water moves by some tenths of a kelvin, against 5 to 20 to the air. */
    private static final double MEANS_PERCENT = 0.5;

    /** Rounding of a season. */
    private static final double SAME = 1e-9;

    private static final double AIR_C = 12;
    private static final double LOSS_WK = 300;

    /** The supply is as warm as the pool, the return as the outlet: their mean stands over the air. */
    @Test
    void isThatOfTheMeanOfSupplyAndReturn() {
        Installation installation = Demo.pool(2)
                .pipes(new Pipes(LOSS_WK, 0))
                .control(Control.withLimit(40))
                .build();
        SeasonLedger ledger = SeasonSimulator.simulate(
                installation,
                SeasonForcing.of(
                        installation, SyntheticYear.at(35).airC(hour -> AIR_C).build()));
        int whole = 0;
        double mostRiseK = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            if (ledger.runShare(0, index) == 1) {
                whole++;
                double outlet = ledger.outletC(0, index);
                mostRiseK = Math.max(mostRiseK, outlet - ledger.waterC(index));
                double meanC = (ledger.waterC(index) + outlet) / 2;
                double lostKwh = LOSS_WK * (meanC - AIR_C) / 1000;
                assertThat(-ledger.heatKwh(Flow.PIPES, index))
                        .as("index %d", index)
                        .isCloseTo(lostKwh, withinPercentage(MEANS_PERCENT));
            }
        }
        assertThat(whole).isGreaterThan(500);
        assertThat(mostRiseK).isGreaterThan(2);
    }

    /** Pipes that lose more than the collectors gain are not pumped, hour by hour, however poor they are. */
    @ParameterizedTest
    @CsvSource({"warm-inland, 20", "cool-coast, 20", "hot-dry, 20", "cool-coast, 200", "hot-dry, 0.5"})
    void noHourDeliversALoss(String sample, double areaM2) {
        WeatherYear weather = Demo.weather(sample);
        double before = Double.POSITIVE_INFINITY;
        for (double lossWK : new double[] {0, 20, 100, 500, 5000}) {
            Installation installation = Demo.pool(1.5)
                    .arrays(Demo.FLAT.withAreaM2(areaM2))
                    .pipes(new Pipes(lossWK, 0))
                    .build();
            SeasonLedger ledger = SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
            double sum = 0;
            for (int index = 0; index < ledger.hours(); index++) {
                double arrives = ledger.heatKwh(Flow.COLLECTORS, index) + ledger.heatKwh(Flow.PIPES, index);
                assertThat(arrives).as("%s W/K, index %d", lossWK, index).isNotNegative();
                sum += arrives;
            }
            // where the air is hotter than the pool for long, poor pipes warm it
            if (sample.equals("cool-coast")) {
                assertThat(sum).as("%s W/K", lossWK).isLessThan(before);
            }
            before = Math.max(sum, Double.MIN_VALUE);
        }
    }

    /** The pipes are one conductance: collectors in three arrays lose as much in them as in one. */
    @ParameterizedTest
    @CsvSource({"warm-inland, 30", "warm-inland, 24", "cool-coast, 30"})
    void collectorsInThreeArraysHaveTheSeasonOfOne(String sample, double limitC) {
        WeatherYear weather = Demo.weather(sample);
        SeasonLedger one = split(weather, limitC, Demo.FLAT);
        SeasonLedger three =
                split(weather, limitC, Demo.FLAT.withAreaM2(110), Demo.FLAT.withAreaM2(60), Demo.FLAT.withAreaM2(30));
        int hours = one.hours();
        double collected = one.heatKwh(Flow.COLLECTORS, Periods.season(one));
        assertThat(one.heatKwh(Flow.PIPES, Periods.season(one))).isNegative();
        for (Flow flow : Flow.values()) {
            assertThat(three.heatKwh(flow, Periods.season(three)))
                    .as(flow.name())
                    .isCloseTo(one.heatKwh(flow, Periods.season(one)), within(SAME * collected));
        }
        assertThat(three.refusedKwh(Periods.season(three)))
                .isCloseTo(one.refusedKwh(Periods.season(one)), within(SAME * collected));
        for (int index = 0; index < hours; index++) {
            assertThat(three.waterEndC(index)).isCloseTo(one.waterEndC(index), within(SAME));
        }
    }

    private static SeasonLedger split(WeatherYear weather, double limitC, CollectorArray... arrays) {
        Installation installation = Demo.pool(1.5)
                .arrays(arrays)
                .pipes(new Pipes(LOSS_WK, 0))
                .heater(Demo.HEATER)
                .control(Control.withLimit(limitC))
                .build();
        return SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
    }

    /**
     * A pool above its limit takes nothing, so that good pipes and poor ones have the same water, and what they would have
     * lost is the whole difference of the heat refused.
     */
    @Test
    void heatRefusedIsWhatWouldHaveArrived() {
        WeatherYear weather = Demo.weather("warm-inland");
        SeasonLedger good = aboveItsLimit(weather, 0);
        SeasonLedger poor = aboveItsLimit(weather, LOSS_WK);
        double kwPerK = 200 * Demo.FLAT.flowKgSM2() * Water.specificHeatJKgK(25) / 1000;
        double left = Math.exp(-LOSS_WK / 1000 / kwPerK / 2);
        int whole = 0;
        for (int index = 1; index < good.hours() - 1; index++) {
            double heat = good.refusedKwh(index);
            assertThat(poor.waterEndC(index)).isEqualTo(good.waterEndC(index)).isGreaterThan(10);
            if (poor.refusedKwh(index - 1) > 0 && poor.refusedKwh(index) > 0 && poor.refusedKwh(index + 1) > 0) {
                whole++;
                double aboveAirK = good.waterC(index) - weather.airTemperatureC(good.hourOfYear(index));
                double arrives = heat * left - kwPerK * (1 - left * left) * aboveAirK;
                assertThat(poor.refusedKwh(index)).isCloseTo(arrives, within(0.01 * heat));
            }
        }
        assertThat(whole).isGreaterThan(30);
    }

    private static SeasonLedger aboveItsLimit(WeatherYear weather, double lossWK) {
        Installation installation = Demo.pool(5)
                .pipes(new Pipes(lossWK, 0))
                .control(Control.withLimit(10))
                .startWater(new StartWater.Given(20))
                .season(new OpeningSeason(MonthDay.of(6, 1), MonthDay.of(6, 20), Schedule.ALWAYS))
                .build();
        return SeasonSimulator.simulate(installation, SeasonForcing.of(installation, weather));
    }
}
