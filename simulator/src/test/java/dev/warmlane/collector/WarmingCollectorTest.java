package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.physics.Water;
import org.junit.jupiter.api.Test;

class WarmingCollectorTest {

    private static final CertificateCurve STRAIGHT = CertificateCurve.plainWindBuilder(
                    0.475, 7.411, new TestStand(false, 1.7, 1, 4))
            .a3(1.7)
            .a4(0.437)
            .a6(0.003)
            .build();

    private static final CollectorMoment SUN = new CollectorMoment(new PlaneLight(700, 100, 20, 45), 380, 25, 2);

    private static final double CAPACITY = 42_200;
    private static final double FLOW = 0.02;
    private static final double INLET_C = 22;

    /** C dT/dt = b − k T has an exponential for its solution, D; here with the slope of the straight curve. */
    @Test
    void straightCurveWarmsExponentially() {
        double carried = 2 * FLOW * Water.specificHeatJKgK(25);
        double loss = 7.411 + 1.7 * 2;
        double end = (STRAIGHT.heatAtMeanWm2(SUN, 0) + carried * INLET_C) / (carried + loss);
        WarmingCollector collector = new WarmingCollector(STRAIGHT, CAPACITY, INLET_C);

        collector.step(SUN, INLET_C, FLOW, 120);
        double expected = end + (INLET_C - end) * Math.exp(-(carried + loss) * 120 / CAPACITY);

        assertThat(collector.meanC()).isCloseTo(expected, within(1e-6));
        // a step cut in two is the same step
        WarmingCollector halves = new WarmingCollector(STRAIGHT, CAPACITY, INLET_C);
        halves.step(SUN, INLET_C, FLOW, 50);
        halves.step(SUN, INLET_C, FLOW, 70);
        assertThat(halves.meanC()).isCloseTo(expected, within(1e-6));
    }

    @Test
    void whatIsNotCarriedAwayIsStored() {
        WarmingCollector collector = new WarmingCollector(STRAIGHT, CAPACITY, INLET_C);
        double before = STRAIGHT.heatAtMeanWm2(SUN, collector.meanC());

        double heat = collector.step(SUN, INLET_C, FLOW, 120);

        // the curve is straight, so its mean over the step lies at the step's mean temperature
        double meanC = INLET_C + heat / (2 * FLOW * Water.specificHeatJKgK(25));
        double stored = CAPACITY * (collector.meanC() - INLET_C) / 120;
        assertThat(heat + stored).isCloseTo(STRAIGHT.heatAtMeanWm2(SUN, meanC), within(1e-6));
        assertThat(heat).isLessThan(before / 2);
    }

    @Test
    void settlesAtTheSteadyHeat() {
        for (HeatAtMoment kind : new HeatAtMoment[] {STRAIGHT, new FreePlate(Absorber.USUAL_MAT, 2, 1, 0.5, 100)}) {
            WarmingCollector collector = new WarmingCollector(kind, CAPACITY, 60);
            double heat = 0;
            for (int minute = 0; minute < 120; minute++) {
                heat = collector.step(SUN, INLET_C, FLOW, 60);
            }
            double steady = kind.heatAtInletWm2(SUN, INLET_C, FLOW);
            assertThat(heat).isCloseTo(steady, within(0.005 * steady));
        }
    }
}
