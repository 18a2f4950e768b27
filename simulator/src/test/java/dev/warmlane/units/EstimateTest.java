package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class EstimateTest {

    @Test
    void independentDeviationsAddAsTheRootOfTheirSquaresOnEitherSide() {
        Estimate both = Estimate.combined(100, List.of(new Estimate(97, 100, 112), new Estimate(96, 100, 105)));

        assertThat(both.low()).isCloseTo(100 - 5, within(1e-12)); // 3, 4, 5
        assertThat(both.high()).isCloseTo(100 + 13, within(1e-12)); // 12, 5, 13
        assertThat(both.likely()).isEqualTo(100);
        assertThat(both.doubt()).isCloseTo(13, within(1e-12));
    }

    @Test
    void withoutAnythingUncertainNothingIs() {
        assertThat(Estimate.combined(7, List.of())).isEqualTo(Estimate.exactly(7));
        assertThat(Estimate.exactly(7).doubt()).isZero();
    }

    @Test
    void endsWhereTheNumberEnds() {
        assertThat(new Estimate(-3, 4, 12).within(0, 10)).isEqualTo(new Estimate(0, 4, 10));
    }

    @Test
    void refusesWhatDoesNotHoldItsLikelyValue() {
        assertThatThrownBy(() -> new Estimate(2, 1, 3)).hasMessageContaining("from low over likely to high, was 2.0");
        assertThatThrownBy(() -> new Estimate(1, 4, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Estimate(1, Double.NaN, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Estimate(1, 2, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Estimate(0, 4, 12).within(5, 10)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void isMeasuredOtherwise() {
        assertThat(new Estimate(10, 20, 30).map(c -> 1.8 * c + 32)).isEqualTo(new Estimate(50, 68, 86));
    }
}
