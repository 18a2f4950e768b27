package dev.warmlane.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.hydraulics.MeasuredDrop.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeasuredDropTest {

    private static final MeasuredDrop DROP =
            new MeasuredDrop(List.of(new Point(0.1, 1000), new Point(0.2, 4000), new Point(0.4, 8000)));

    /** By hand: the square of the flow up to 0.2 kg/s, the flow itself beyond. */
    @Test
    void isAPowerFromPointToPointAndBeyond() {
        assertThat(DROP.dropPa(0.1)).isCloseTo(1000, within(1e-9));
        assertThat(DROP.dropPa(0.15)).isCloseTo(2250, within(1e-9));
        assertThat(DROP.dropPa(0.3)).isCloseTo(6000, within(1e-9));
        assertThat(DROP.dropPa(0.8)).isCloseTo(16000, within(1e-9));
        assertThat(DROP.dropPa(0.05)).isCloseTo(250, within(1e-9));
        assertThat(DROP.dropPa(-0.1)).isCloseTo(-1000, within(1e-9));
        assertThat(DROP.dropPa(0)).isZero();
    }

    @Test
    void refusesPointsThatDoNotRise() {
        assertThatIllegalArgumentException().isThrownBy(() -> new MeasuredDrop(List.of(new Point(0.1, 1000))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeasuredDrop(List.of(new Point(0.1, 1000), new Point(0.2, 900))))
                .withMessageContaining("point 2");
    }
}
