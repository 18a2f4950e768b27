package dev.warmlane.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class PipeRunTest {

    private static PipeRun run(double length, double buried) {
        return new PipeRun(0.05, length, 1.5e-6, 15, Optional.of(new PipeRun.Coat(0.06, 0.19, 0, 0.04, buried, 0.6)));
    }

    /** By hand as in {@code PipeLossTest} of hydraulics: 2.7403 W/mK in the air and 2.2410 in the ground. */
    @Test
    void losesByItsLengthsInAirAndGround() {
        assertThat(run(30, 20).heatLossWK(15).orElseThrow()).isCloseTo(25 * 2.7403 + 20 * 2.2410, within(0.02));
        assertThat(run(0, 0).heatLossWK(0)).contains(0.0);
        assertThat(new PipeRun(0.05, 30, 0, 0, Optional.empty()).heatLossWK(15)).isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> run(30, 31)).withMessageContaining("in the ground");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new PipeRun(0.06, 30, 0, 0, Optional.of(new PipeRun.Coat(0.06, 0.19, 0, 0.04, 0, 0.6))))
                .withMessageContaining("above its inner one");
    }

    /** By hand: 0.002 m³/s against 8 m of water of 1000 kg/m³ at an efficiency of 0.4 is 392.3 W. */
    @Test
    void aPumpTakesFlowTimesHeadOverEfficiency() {
        assertThat(new PumpChoice(0.4, Optional.empty()).powerW(0.002, 1000, 8)).isCloseTo(392.266, within(1e-3));
    }
}
