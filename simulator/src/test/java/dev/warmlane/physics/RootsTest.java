package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RootsTest {

    /** Four units in the last place of a number just above a power of two. */
    private static final double ROUNDING = 9e-16;

    @Test
    void cubeRootIsThatOfTheJdk() {
        Random random = new Random(20260101);
        for (int i = 0; i < 100_000; i++) {
            double x = Math.exp(1280 * (random.nextDouble() - 0.5));
            double root = Math.cbrt(x);
            assertThat(Roots.cube(x)).isCloseTo(root, within(ROUNDING * root));
        }
    }

    @Test
    void cubeRootOfNothingIsNothing() {
        assertThat(Roots.cube(0)).isEqualTo(0);
        assertThat(Roots.cube(Double.MIN_VALUE)).isBetween(0.0, 1e-100);
    }

    @Test
    void logarithmIsThatOfTheJdkForSmallAndLargeNumbers() {
        Random random = new Random(20260102);
        for (int i = 0; i < 100_000; i++) {
            double x = Math.exp(80 * (random.nextDouble() - 0.5));
            double logarithm = Math.log1p(x);
            assertThat(Roots.logOnePlus(x)).isCloseTo(logarithm, within(ROUNDING * logarithm));
        }
        assertThat(Roots.logOnePlus(0)).isEqualTo(0);
        assertThat(Roots.logOnePlus(1e-300)).isEqualTo(1e-300);
    }
}
