package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class UsualTest {

    private static final Range GAP =
            Range.of("gap", Dimension.LENGTH, 0.001, 0.1).writtenIn("mm");

    @Test
    void liesInItsRange() {
        assertThat(GAP.usually(0.005, "a guess").value()).isEqualTo(0.005);
        assertThatThrownBy(() -> GAP.usually(0.2, "a guess"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("gap must be 0.001 to 0.1 m, was 0.2");
    }

    @Test
    void hasASource() {
        assertThatThrownBy(() -> GAP.usually(0.005, " "))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("say where the usual gap of 5 mm comes from, or that there is no source");
    }
}
