package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelInside;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.PipeRun;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.circuit.PumpChoice;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.FlowSplit;
import dev.warmlane.collector.Mounting;
import dev.warmlane.hydraulics.Manifold.Outlet;
import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.hydraulics.PumpCurve.Point;
import dev.warmlane.pool.Flow;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The water of a whole array: invented mats of 1.2 m by 3 m with 120 tubes of 5 mm on headers of 54 mm. */
class WaterCircuitTest {

    /** Networks are solved to 1e-7, and banks within them drawn through points. */
    private static final double SOLVED = 1e-4;

    private static final PumpChoice CHOSEN = new PumpChoice(0.4, Optional.empty());
    private static final Hydraulics.Lift SIPHON = new Hydraulics.Lift(6.5, true);
    private static final PipeRun BARE = new PipeRun(0.059, 40, 1.5e-6, 15, Optional.empty());

    private static PanelTubes panel(Optional<PanelTubes.Shape> shape) {
        return new PanelTubes(new PanelInside.Tubes(120, 0.005, 1.5), 0.054, Outlet.FAR_END, shape);
    }

    private static final PanelTubes DRAWN = panel(Optional.empty());
    private static final PanelTubes UNDRAWN = panel(Optional.of(new PanelTubes.Shape(3, 1.2, 10)));

    private static Installation drawn(Hydraulics hydraulics, double areaM2) {
        return Demo.pool(1.8)
                .plan(new RoofPlan(
                        List.of(Surface.flat("hall", Outline.rectangle(30, 14), 200, 6)), PanelRules.usual(1.2, 3.0)))
                .arrays(new CollectorArray("mats", areaM2, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT, 0.05, 3.6))
                .hydraulics(hydraulics)
                .build();
    }

    private static Installation undrawn(Hydraulics hydraulics, double areaM2) {
        return Demo.pool(1.8)
                .arrays(new CollectorArray("mats", areaM2, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT, 0.05, 3.6))
                .hydraulics(hydraulics)
                .build();
    }

    private static WaterCircuit circuit(Installation installation) {
        return WaterCircuit.of(installation).orElseThrow();
    }

    private static final Installation DIRECT = drawn(new Hydraulics(DRAWN, BARE, Outlet.SAME_END, SIPHON, CHOSEN), 180);

    @Test
    void flowsOfBanksSumUp() {
        WaterCircuit circuit = circuit(DIRECT);
        assertThat(circuit.banks()).hasSizeGreaterThan(3);
        double sum = circuit.banks().stream()
                .mapToDouble(WaterCircuit.BankFlow::flowM3h)
                .sum();
        assertThat(sum).isCloseTo(3600 * circuit.flowM3S(), within(SOLVED * sum));
        assertThat(circuit.flowM3S()).isCloseTo(180 * 0.05 / 997.05, within(1e-6));
    }

    @Test
    void partsSumUpToTheHead() {
        for (boolean full : new boolean[] {true, false}) {
            WaterCircuit circuit = circuit(
                    drawn(new Hydraulics(DRAWN, BARE, Outlet.FAR_END, new Hydraulics.Lift(6.5, full), CHOSEN), 180));
            double sum = circuit.parts().stream()
                    .mapToDouble(WaterCircuit.PartHead::headM)
                    .sum();
            assertThat(sum).isCloseTo(circuit.headM(), within(SOLVED * sum));
            assertThat(circuit.parts())
                    .allSatisfy(part -> assertThat(part.headM()).isNotNegative());
            assertThat(circuit.parts().get(0).headM()).isEqualTo(full ? 0 : 6.5);
        }
    }

    /** One bank of one panel, by hand: tubes, its connection, and the run; no pipe beside it. */
    @Test
    void oneBankTakesWhatTheHandFinds() {
        Installation one = undrawn(new Hydraulics(UNDRAWN, BARE, Outlet.SAME_END, SIPHON, CHOSEN), 3.6);
        double kgS = 3.6 * 0.05;
        double tube = new Pipe(0.005, 3, 1.5e-6, 1.5).dropPa(kgS / 120, Hydraulics.WATER);
        double tees = new Pipe(0.054, 0, 0, 3.6).dropPa(kgS, Hydraulics.WATER);
        double pressure = tube + tees + BARE.run().dropPa(kgS, Hydraulics.WATER);
        double head = pressure / (Hydraulics.WATER.densityKgM3() * 9.80665);
        WaterCircuit circuit = circuit(one);
        assertThat(circuit.headM()).isCloseTo(head, within(1e-5 * head));
        assertThat(circuit.powerW()).isCloseTo(kgS / Hydraulics.WATER.densityKgM3() * pressure / 0.4, within(1e-4));
        assertThat(circuit.pipesOnRoofM()).isZero();
        assertThat(WaterCircuit.applied(one).arrays().get(0).split().least()).isCloseTo(1, within(1e-9));
    }

    @Test
    void banksAlikeWithAReversedReturnAreMirrored() {
        List<WaterCircuit.BankFlow> banks = circuit(
                        undrawn(new Hydraulics(UNDRAWN, BARE, Outlet.FAR_END, SIPHON, CHOSEN), 144))
                .banks();
        assertThat(banks).hasSize(4);
        assertThat(banks.get(0).overMean()).isCloseTo(banks.get(3).overMean(), within(SOLVED));
        assertThat(banks.get(1).overMean()).isCloseTo(banks.get(2).overMean(), within(SOLVED));
        List<WaterCircuit.BankFlow> two = circuit(
                        undrawn(new Hydraulics(UNDRAWN, BARE, Outlet.FAR_END, SIPHON, CHOSEN), 72))
                .banks();
        assertThat(two).allSatisfy(bank -> assertThat(bank.overMean()).isCloseTo(1, within(SOLVED)));
    }

    @Test
    void aReversedReturnDividesMoreEvenlyAndTakesMorePipe() {
        PipeRun narrow = new PipeRun(0.07, 40, 1.5e-6, 15, Optional.empty());
        Installation direct = drawn(new Hydraulics(DRAWN, narrow, Outlet.SAME_END, SIPHON, CHOSEN), 216);
        Installation reversed = drawn(new Hydraulics(DRAWN, narrow, Outlet.FAR_END, SIPHON, CHOSEN), 216);
        FlowSplit uneven = WaterCircuit.applied(direct).arrays().get(0).split();
        FlowSplit even = WaterCircuit.applied(reversed).arrays().get(0).split();
        assertThat(even.greatest() - even.least()).isLessThan(uneven.greatest() - uneven.least());
        assertThat(even.heatShare(0.1)).isGreaterThan(uneven.heatShare(0.1));
        assertThat(circuit(reversed).pipesOnRoofM())
                .isCloseTo(1.5 * circuit(direct).pipesOnRoofM(), within(1e-9));
    }

    /** The pipes on the roof are those of the layout. */
    @Test
    void aDirectReturnTakesThePipeOfTheLayout() {
        assertThat(circuit(DIRECT).pipesOnRoofM())
                .isCloseTo(ArrayLayout.of(DIRECT).get(0).layout().pipesM(), within(1e-9));
    }

    @Test
    void pumpAndCircuitMeet() {
        PumpCurve curve = new PumpCurve(List.of(new Point(0, 14), new Point(0.003, 12), new Point(0.008, 2)));
        Installation pumped = drawn(
                new Hydraulics(DRAWN, BARE, Outlet.SAME_END, SIPHON, new PumpChoice(0.4, Optional.of(curve))), 180);
        Installation built = WaterCircuit.atPumpsFlow(pumped).applied();
        WaterCircuit circuit = circuit(built);
        double head = curve.headM(circuit.flowM3S()).orElseThrow();
        assertThat(circuit.headM()).isCloseTo(head, within(0.01 * head));
        assertThat(built.pipes().pumpPowerW())
                .isCloseTo(circuit.flowM3S() * 997.05 * 9.80665 * circuit.pumpHeadM() / 0.4, within(0.05));
        Installation weak = drawn(
                new Hydraulics(
                        DRAWN,
                        BARE,
                        Outlet.SAME_END,
                        new Hydraulics.Lift(20, false),
                        new PumpChoice(0.4, Optional.of(curve))),
                180);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterCircuit.atPumpsFlow(weak))
                .withMessageContaining("does not reach the collectors");
    }

    @Test
    void aFlowBelowThePumpsIsThrottled() {
        PumpCurve curve = new PumpCurve(List.of(new Point(0, 30), new Point(0.02, 20)));
        WaterCircuit circuit = circuit(drawn(
                new Hydraulics(DRAWN, BARE, Outlet.SAME_END, SIPHON, new PumpChoice(0.4, Optional.of(curve))), 180));
        assertThat(circuit.pumpHeadM()).isGreaterThan(20).isGreaterThan(circuit.headM());
    }

    /** 6.5 m of water at 25 °C pull with 63.6 kPa, by hand, which half of the run's own pressure eases. */
    @Test
    void aFullReturnPullsAtTheTop() {
        WaterCircuit circuit = circuit(DIRECT);
        double run = BARE.run().dropPa(180 * 0.05, Hydraulics.WATER) / 2000;
        assertThat(circuit.topKpa()).isCloseTo(run - 63.555, within(0.01));
    }

    @Test
    void withoutHydraulicsNothingChanges() {
        Installation plain = Demo.pool(1.8).pipes(new Pipes(10, 20)).build();
        assertThat(WaterCircuit.applied(plain)).isSameAs(plain);
    }

    /** A pipe of no length loses nothing, and a long one what its ledger says; the season closes with it all the same. */
    @Test
    void theSeasonPaysForItsPipes() {
        WeatherYear weather = Demo.weather("cool-coast");
        double before = Double.POSITIVE_INFINITY;
        for (double length : new double[] {0, 50, 200}) {
            PipeRun run =
                    new PipeRun(0.059, length, 1.5e-6, 15, Optional.of(new PipeRun.Coat(0.063, 0.19, 0, 0.04, 0, 0.6)));
            Installation built =
                    WaterCircuit.applied(undrawn(new Hydraulics(UNDRAWN, run, Outlet.SAME_END, SIPHON, CHOSEN), 36));
            SeasonLedger ledger = SeasonSimulator.simulate(built, SeasonForcing.of(built, weather));
            double pipes = 0;
            double arrives = 0;
            for (int index = 0; index < ledger.hours(); index++) {
                pipes += ledger.heatKwh(Flow.PIPES, index);
                arrives += ledger.heatKwh(Flow.COLLECTORS, index) + ledger.heatKwh(Flow.PIPES, index);
            }
            if (length == 0) {
                assertThat(built.pipes().heatLossWK()).isZero();
                assertThat(pipes).isZero();
            } else {
                assertThat(pipes).isNegative();
            }
            assertThat(arrives).isLessThan(before);
            before = arrives;
        }
    }

    /** Of twice the area at the same flow for each m² in the same pipes, the pump takes more than twice. */
    @Test
    void thePumpOfALargerAreaTakesMoreThanInProportion() {
        Installation small = WaterCircuit.applied(DIRECT);
        Installation large =
                PumpByFlow.with(small, List.of(small.arrays().get(0).withAreaM2(252)));
        assertThat(large.pipes().pumpPowerW())
                .isGreaterThan(1.1 * 252 / 180 * small.pipes().pumpPowerW());
    }
}
