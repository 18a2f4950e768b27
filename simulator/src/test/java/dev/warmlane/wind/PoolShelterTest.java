package dev.warmlane.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PoolShelterTest {

    private static final double EXACT = 1e-12;

    /** The published steps themselves, and the first and last proportion carried on: halved, and four thirds. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.075, 0.15", "0.15, 0.30", "0.30, 0.40", "0.40, 0.53333333333333333", "0.6, 0.8"})
    void oneStepMoreOpen(double of, double moreOpen) {
        assertThat(PoolShelter.moreOpen(of)).isCloseTo(moreOpen, within(EXACT));
        assertThat(PoolShelter.moreSheltered(moreOpen)).isCloseTo(of, within(EXACT));
    }

    @Test
    void everyFactorLiesBetweenItsNeighbours() {
        for (double factor = 0.01; factor < 1.2; factor += 0.01) {
            assertThat(factor)
                    .isGreaterThan(PoolShelter.moreSheltered(factor))
                    .isLessThan(PoolShelter.moreOpen(factor))
                    .isCloseTo(PoolShelter.moreSheltered(PoolShelter.moreOpen(factor)), within(EXACT));
        }
    }
}
