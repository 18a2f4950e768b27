package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoistAirTest {

    /** Both directions are closed forms of one equation: only rounding is left. */
    private static final double ROUND_TRIP_K = 1e-8;

    @ParameterizedTest
    @ValueSource(doubles = {-40, -20, -5, 0, 5, 20, 40, 60})
    void dewPointUndoesSaturation(double temperatureC) {
        assertThat(MoistAir.dewPointC(MoistAir.saturationPressureKpa(temperatureC)))
                .isCloseTo(temperatureC, within(ROUND_TRIP_K));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.0001",
        "-5, 0.0001",
        "-10, 0.0001",
        "-20, 0.0004",
        "-30, 0.0005",
        "-40, 0.0024",
        "-50, 0.016",
        "-60, 0.05"
    })
    void staysCloseToAnEquationForSupercooledWater(double temperatureC, double relative) {
        double supercooled = murphyKoopKpa(temperatureC);
        assertThat(MoistAir.saturationPressureKpa(temperatureC)).isCloseTo(supercooled, within(relative * supercooled));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, -30, -20, -10, 0, 10, 20, 30, 40})
    void staysCloseToTheMagnusFormOfWeatherServices(double temperatureC) {
        // WMO Guide to Instruments and Methods of Observation, annex 4.B, -45 to 60 °C (from memory); the form itself
        // departs from the exact equations by up to 0.5 %
        double magnus = 0.6112 * Math.exp(17.62 * temperatureC / (243.12 + temperatureC));
        assertThat(MoistAir.saturationPressureKpa(temperatureC)).isCloseTo(magnus, within(0.0051 * magnus));
    }

    /** Murphy and Koop, Q. J. R. Meteorol. Soc. 131, 2005, 1539-1565, equation 10, for 123 to 332 K. */
    private static double murphyKoopKpa(double temperatureC) {
        double t = temperatureC + Constants.KELVIN;
        double log = Math.log(t);
        double supercooled = 53.878 - 1331.22 / t - 9.44523 * log + 0.014025 * t;
        return Math.exp(54.842763
                        - 6763.22 / t
                        - 4.210 * log
                        + 0.000367 * t
                        + Math.tanh(0.0415 * (t - 218.8)) * supercooled)
                / 1000;
    }
}
