package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AirTest {

    /** Two independent sets of property data agree about this well. */
    private static final Percentage TABLES = Percentage.withPercentage(1);

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/physics/air.csv", useHeadersInDisplayName = true)
    void meetsAnotherTable(double temperatureK, double conductivity, double viscosity, double prandtl) {
        double temperatureC = temperatureK - Constants.KELVIN;
        assertThat(Air.conductivityWmK(temperatureC)).isCloseTo(conductivity, TABLES);
        assertThat(Air.dynamicViscosityPaS(temperatureC)).isCloseTo(viscosity, TABLES);
        assertThat(Air.prandtl(temperatureC)).isCloseTo(prandtl, TABLES);
    }

    @Test
    void weighsAsTheStandardAtmosphere() {
        // U.S. Standard Atmosphere 1976, sea level: 1.2250 kg/m³, 1.7894e-5 Pa s, 1.4607e-5 m²/s, 0.025326 W/mK at 15
        // °C
        assertThat(Air.densityKgM3(15, 101.325)).isCloseTo(1.2250, within(5e-5));
        assertThat(Air.dynamicViscosityPaS(15)).isCloseTo(1.7894e-5, within(5e-10));
        assertThat(Air.kinematicViscosityM2S(15, 101.325)).isCloseTo(1.4607e-5, within(5e-10));
        assertThat(Air.conductivityWmK(15)).isCloseTo(0.025326, within(5e-7));
    }

    @Test
    void thinAirIsMoreViscousByItsVolume() {
        assertThat(Air.kinematicViscosityM2S(20, 80) / Air.kinematicViscosityM2S(20, 100))
                .isCloseTo(1.25, within(1e-12));
    }

    @Test
    void expandsAsItsDensityFalls() {
        double step = 0.01;
        double slope = -(Air.densityKgM3(20 + step, 100) - Air.densityKgM3(20 - step, 100))
                / (2 * step * Air.densityKgM3(20, 100));
        assertThat(Air.expansionPerK(20)).isCloseTo(slope, Percentage.withPercentage(1e-4));
    }
}
