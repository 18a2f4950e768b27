package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.Air;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.FilmAir;
import dev.warmlane.physics.NaturalFace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirHoursTest {

    /** The slope is one number for forced and natural convection and all temperatures; see its Javadoc for the spread. */
    private static final double SLOPE_SPREAD_PER_K = 0.0002;

    @ParameterizedTest
    @CsvSource({"0", "10", "20", "30", "40", "50"})
    void theSurfaceSlopeIsThatOfTheAirsProperties(double filmC) {
        double step = 1;
        double forced = Math.log(forced(filmC + step) / forced(filmC - step)) / (4 * step);
        double natural = Math.log(natural(filmC + step) / natural(filmC - step)) / (4 * step);
        assertThat(forced).isCloseTo(AirHours.SURFACE_SLOPE_PER_K, within(SLOPE_SPREAD_PER_K));
        assertThat(natural).isCloseTo(AirHours.SURFACE_SLOPE_PER_K, within(SLOPE_SPREAD_PER_K));
    }

    private static double forced(double filmC) {
        return Film.forcedTurbulent(
                3,
                2,
                1,
                new FilmAir(Air.conductivityWmK(filmC), Air.kinematicViscosityM2S(filmC, 101.325), AirHours.PRANDTL));
    }

    private static double natural(double filmC) {
        return NaturalFace.buoyancy(
                Air.conductivityWmK(filmC),
                Film.rayleighPerKelvin(
                        Air.expansionPerK(filmC), Air.kinematicViscosityM2S(filmC, 101.325), AirHours.PRANDTL));
    }
}
