package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.plant.Control;
import dev.warmlane.plant.Pipes;
import org.junit.jupiter.api.Test;

/** What supply and return lose to the air. */
class PipeLossTest {

    /** Means of an hour against the middle of it: the water moves by some tenths of a kelvin, against 5 to 20 to the air. */
    private static final double MEANS_PERCENT = 0.5;

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
}
