package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.FilmCorrelation.Linear;
import dev.warmlane.physics.FilmCorrelation.Mitchell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmCorrelationTest {

    @ParameterizedTest
    @CsvSource({"WATMUFF, 2.8, 11.8", "MCADAMS, 5.7, 17.1", "TEST, 8.55, 16.23", "SHARPLES, 6.5, 16.4"})
    void linesAreThePublishedOnes(Linear fit, double inStillAir, double atThreeMs) {
        assertThat(fit.coefficient(0)).isEqualTo(inStillAir);
        assertThat(fit.coefficient(3)).isCloseTo(atThreeMs, within(1e-12));
    }

    @Test
    void mitchellFallsWithTheSizeOfTheBuildingToItsFloor() {
        assertThat(new Mitchell(1).coefficient(1)).isCloseTo(8.6, within(1e-12));
        assertThat(new Mitchell(1000).coefficient(5))
                .isCloseTo(8.6 * Math.pow(5, 0.6) / Math.pow(10, 0.4), within(1e-12));
        assertThat(new Mitchell(1000).coefficient(0)).isEqualTo(5);
        assertThatThrownBy(() -> new Mitchell(0)).hasMessageContaining("building volume");
    }

    /** A chord of 1 to 2 m at 3 m/s: the physics lies among the measurements on plates of that size. */
    @Test
    void physicsLiesAmongTheFits() {
        double forced = Film.forcedTurbulent(3, 1.5, 1, FilmAir.at(25, 101.325));
        assertThat(Film.rack(forced, 2.5)).isBetween(Linear.WATMUFF.coefficient(3), Linear.MCADAMS.coefficient(3));
    }
}
