package dev.warmlane.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.hydraulics.PumpCurve.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class PumpCurveTest {

    private static final PumpCurve CURVE =
            new PumpCurve(List.of(new Point(0, 12), new Point(0.002, 10), new Point(0.004, 4)));

    /** By hand: between the last two points the head is 16 - 3000 V, the circuit's 2 + 500 V; they meet at 14/3500. */
    @Test
    void meetsAStraightCircuitWhereTheHandDoes() {
        assertThat(CURVE.meets(v -> 2 + 500 * v).orElseThrow()).isCloseTo(14.0 / 3500, within(1e-10));
    }

    /** By hand: 12 - 1000 V = 4e6 V², so V = (-1000 + √(1e6 + 192e6))/8e6. */
    @Test
    void meetsAParabolaWhereTheHandDoes() {
        double byHand = (-1000 + Math.sqrt(1e6 + 192e6)) / 8e6;
        assertThat(CURVE.meets(v -> 4e6 * v * v).orElseThrow()).isCloseTo(byHand, within(1e-10));
    }

    @Test
    void meetsNothingWhereTheLiftIsTooHighOrTheCircuitTooEasy() {
        assertThat(CURVE.meets(v -> 13 + v)).isEmpty();
        assertThat(CURVE.meets(v -> 3.0)).isEmpty();
    }

    @Test
    void tellsNothingBeyondItsEnds() {
        assertThat(CURVE.headM(0.001).orElseThrow()).isCloseTo(11, within(1e-12));
        assertThat(CURVE.headM(0.0041)).isEmpty();
    }

    @Test
    void refusesPointsThatDoNotFall() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PumpCurve(List.of(new Point(0, 5), new Point(0.001, 6))))
                .withMessageContaining("point 2");
        assertThatIllegalArgumentException().isThrownBy(() -> new PumpCurve(List.of(new Point(0, 5))));
    }
}
