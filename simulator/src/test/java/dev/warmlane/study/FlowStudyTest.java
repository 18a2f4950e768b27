package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelInside;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.PipeRun;
import dev.warmlane.circuit.PumpChoice;
import dev.warmlane.hydraulics.Manifold.Outlet;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FlowStudyTest {

    private static final WeatherYear WEATHER = Demo.weather("warm-inland");

    private static final Hydraulics HYDRAULICS = new Hydraulics(
            new PanelTubes(
                    new PanelInside.Tubes(120, 0.005, 1.5),
                    0.054,
                    Outlet.SAME_END,
                    Optional.of(new PanelTubes.Shape(3, 1.2, 8))),
            new PipeRun(0.0814, 60, 1.5e-6, 15, Optional.empty()),
            Outlet.FAR_END,
            new Hydraulics.Lift(6, true),
            new PumpChoice(0.4, Optional.empty()));

    private static FlowStudy study(double gas, double electricity) {
        Installation built = WaterCircuit.applied(Demo.pool(1.8)
                .heater(Demo.HEATER)
                .hydraulics(HYDRAULICS)
                .prices(new Prices("EUR", gas, electricity, 0))
                .build());
        return FlowStudy.of(SeasonForecast.of(built, WEATHER), new SharedForcing(WEATHER), Runs.onAllCores())
                .orElseThrow();
    }

    private static final FlowStudy STUDY = study(0.09, 0.28);

    @Test
    void theBestGainsMostAndNoEndOfTheRangeDoes() {
        Prices prices = STUDY.prices().orElseThrow();
        double best = STUDY.best().orElseThrow().netGain(prices);
        assertThat(STUDY.choices())
                .allSatisfy(one -> assertThat(one.netGain(prices)).isLessThanOrEqualTo(best));
        assertThat(STUDY.bestIsAtAnEnd()).isFalse();
        assertThat(STUDY.asGoodFromKgSM2().orElseThrow())
                .isLessThanOrEqualTo(STUDY.best().orElseThrow().flowKgSM2());
        assertThat(STUDY.asGoodUpToKgSM2().orElseThrow())
                .isGreaterThanOrEqualTo(STUDY.best().orElseThrow().flowKgSM2());
    }

    /** Saved gas at its price less the pump's running at its power, by hand. */
    @Test
    void theGainIsWhatIsSavedLessThePump() {
        FlowStudy.Choice one = STUDY.choices().get(0);
        double byHand = 0.09 * one.season().gas().replacedKwh()
                - 0.28 * one.season().pump().hours() * one.circuit().powerW() / 1000;
        assertThat(one.netGain(STUDY.prices().orElseThrow())).isCloseTo(byHand, within(1e-6 * Math.abs(byHand)));
    }

    @Test
    void headAndPowerGrowWithTheFlow() {
        for (int i = 1; i < STUDY.choices().size(); i++) {
            WaterCircuit before = STUDY.choices().get(i - 1).circuit();
            WaterCircuit now = STUDY.choices().get(i).circuit();
            assertThat(now.headM()).isGreaterThan(before.headM());
            // with a head that grows with the flow the power grows faster than the flow
            assertThat(now.powerW() / before.powerW()).isGreaterThan(now.flowM3S() / before.flowM3S());
        }
    }

    @Test
    void dearElectricityAsksForSlowerWater() {
        assertThat(study(0.09, 2).best().orElseThrow().flowKgSM2())
                .isLessThan(STUDY.best().orElseThrow().flowKgSM2());
    }

    @Test
    void withoutADescribedCircuitThereIsNone() {
        Installation plain = Demo.pool(1.8).build();
        assertThat(FlowStudy.of(SeasonForecast.of(plain, WEATHER), new SharedForcing(WEATHER), Runs.onAllCores()))
                .isEmpty();
    }
}
