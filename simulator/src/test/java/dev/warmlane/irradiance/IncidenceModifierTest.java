package dev.warmlane.irradiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IncidenceModifierTest {

    private static final double ROUNDING = 1e-12;

    static Stream<IncidenceModifier> all() {
        return Stream.of(
                new MatteBlack(),
                new AngleTable(List.of(1.0, 1.0, 0.99, 0.99, 0.98, 0.96, 0.92, 0.84, 0.66, 0.0), 0.93),
                new AngleCoefficient(0.1, 0.9));
    }

    @ParameterizedTest
    @MethodSource("all")
    void fallsFromOneToNothingWithoutAStep(IncidenceModifier modifier) {
        assertThat(modifier.beam(0)).isEqualTo(1);
        assertThat(modifier.beam(90)).isZero();
        assertThat(modifier.beam(120)).isZero();
        for (double angle = 0; angle < 90; angle += 0.25) {
            double step = modifier.beam(angle + 0.25) - modifier.beam(angle);
            // the steepest is 0.07 a degree, from 80 to 90 degrees, and none rises but by rounding
            assertThat(step).as("at %s degrees", angle).isBetween(-0.02, ROUNDING);
        }
    }

    @Test
    void matteBlackFollowsItsPolynomial() {
        MatteBlack black = new MatteBlack();
        // equation 4.11.1 worked term by term at 60 degrees
        double byHand = 1
                - 1.5879e-3 * 60
                + 2.7314e-4 * 3600
                - 2.3026e-5 * 216_000
                + 9.0244e-7 * 12_960_000
                - 1.8e-8 * 777_600_000
                + 1.7734e-10 * 46_656_000_000.0
                - 6.9937e-13 * 2_799_360_000_000.0;
        assertThat(black.beam(60)).isCloseTo(byHand, within(ROUNDING)).isBetween(0.85, 0.95);
        assertThat(black.beam(85)).isCloseTo(black.beam(80) / 2, within(ROUNDING));
    }

    @Test
    void matteBlackTakesDiffuseLightAtItsEffectiveAngle() {
        MatteBlack black = new MatteBlack();
        assertThat(black.skyDiffuse(0)).isEqualTo(black.beam(59.68));
        // 59.68 - 4.164 + 1.3473 and 90 - 17.364 + 2.4237
        assertThat(black.skyDiffuse(30)).isCloseTo(black.beam(56.8633), within(ROUNDING));
        assertThat(black.groundReflected(30)).isCloseTo(black.beam(75.0597), within(ROUNDING));
        assertThat(black.groundReflected(0)).isZero();
        // an upright plane sees sky and ground alike
        assertThat(black.skyDiffuse(90)).isCloseTo(black.groundReflected(90), within(0.005));
    }

    @Test
    void certificatesGiveTheirValues() {
        AngleTable table = new AngleTable(List.of(1.0, 1.0, 0.99, 0.98, 0.96, 0.94, 0.9, 0.8, 0.6, 0.0), 0.93);
        assertThat(table.beam(50)).isEqualTo(0.94);
        assertThat(table.beam(55)).isCloseTo(0.92, within(ROUNDING));
        assertThat(table.skyDiffuse(30)).isEqualTo(table.groundReflected(10)).isEqualTo(0.93);
        AngleCoefficient coefficient = new AngleCoefficient(0.2, 0.9);
        assertThat(coefficient.beam(60)).isCloseTo(0.8, within(ROUNDING));
        assertThat(coefficient.beam(75)).isCloseTo(0.4, within(ROUNDING));
        assertThat(coefficient.skyDiffuse(30)).isEqualTo(0.9);
        assertThat(coefficient.groundReflected(10)).isEqualTo(0.9);
    }

    @Test
    void refusesTablesThatAreNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AngleTable(List.of(1.0, 0.9), 0.9))
                .withMessageContaining("ten values")
                .withMessageContaining("got 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AngleTable(List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 0.5), 0.9))
                .withMessageContaining("90 degrees");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AngleTable(List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.6, 1.0, 1.0, 1.0, 0.0), 0.9))
                .withMessageContaining("50 degrees");
        assertThatIllegalArgumentException().isThrownBy(() -> new AngleCoefficient(-0.1, 0.9));
    }
}
