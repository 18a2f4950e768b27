package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.physics.Air;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.FilmAir;
import dev.warmlane.physics.NaturalFace;
import org.junit.jupiter.api.Test;
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

    /** The film of air at 10 °C lies halfway to the 30 °C it is worked out for; a surface of 45 °C is 15 K beyond. */
    @Test
    void propertiesAreThoseOfTheFilmAndAreCorrectedForOtherSurfaces() {
        AirHours air = new AirHours(
                SyntheticYear.at(40).airC(hour -> 10).pressureKpa(90).build());
        int hour = 4000;
        assertThat(air.conductivityWmK[hour]).isEqualTo(Air.conductivityWmK(20));
        assertThat(air.viscosityM2S[hour]).isEqualTo(Air.kinematicViscosityM2S(20, 90));
        assertThat(air.expansionPerK[hour]).isEqualTo(Air.expansionPerK(20));
        assertThat(air.rootBuoyancy[hour] * air.rootBuoyancy[hour]).isCloseTo(air.buoyancy[hour], within(1e-12));
        assertThat(air.rootConductivity[hour] * air.rootConductivity[hour])
                .isCloseTo(Air.conductivityWmK(20), within(1e-15));
        assertThat(air.surfaceCorrection(hour, 35)).isCloseTo(0.985, within(1e-12));
        assertThat(air.surfaceCorrection(hour, 20)).isEqualTo(1);
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
