package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SkyLongWaveTest {

    /** Half a unit of the last digit that the row states, and rounding. */
    private static final double EMISSIVITY = 6e-5;

    private static final double SKY_TEMPERATURE_K = 0.01;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/physics/sky.csv", useHeadersInDisplayName = true)
    void meetsTheClearSkyRows(double airC, double dewPointC, double emissivity, double skyC) {
        double found = SkyLongWave.clearSkyEmissivity(dewPointC);
        double irradiance = SkyLongWave.allSkyIrradianceWm2(airC, found, 0);
        assertThat(found).isCloseTo(emissivity, within(EMISSIVITY));
        assertThat(SkyLongWave.skyTemperatureC(irradiance)).isCloseTo(skyC, within(SKY_TEMPERATURE_K));
    }

    @Test
    void hourAndPressureShiftTheEmissivity() {
        double mean = SkyLongWave.clearSkyEmissivity(10);
        assertThat(SkyLongWave.clearSkyEmissivity(10, 0, 100)).isCloseTo(mean + 0.013, within(1e-12));
        assertThat(SkyLongWave.clearSkyEmissivity(10, 12, 100)).isCloseTo(mean - 0.013, within(1e-12));
        assertThat(SkyLongWave.clearSkyEmissivity(10, 6, 90)).isCloseTo(mean - 0.012, within(1e-12));
    }

    @Test
    void emissivityRisesWithDewPointAndStaysBelowOne() {
        double before = 0;
        for (double dewPointC = -60; dewPointC <= 45; dewPointC += 0.5) {
            double emissivity = SkyLongWave.clearSkyEmissivity(dewPointC);
            assertThat(emissivity).isBetween(before, 1.0);
            before = emissivity;
        }
    }

    @Test
    void cloudFillsPartOfTheWindow() {
        double clear = SkyLongWave.allSkyIrradianceWm2(20, 0.8, 0);
        double overcast = SkyLongWave.allSkyIrradianceWm2(20, 0.8, 1);
        double half = SkyLongWave.allSkyIrradianceWm2(20, 0.8, 0.5);
        assertThat(clear).isEqualTo(0.8 * Constants.blackBody(20));
        assertThat((overcast - clear) / (0.2 * Constants.blackBody(20))).isCloseTo(Math.exp(-2 / 8.2), within(1e-12));
        assertThat(half).isCloseTo((clear + overcast) / 2, within(1e-9));
        assertThat(overcast).isLessThan(Constants.blackBody(20));
    }

    @Test
    void skyTemperatureUndoesTheBlackBody() {
        assertThat(SkyLongWave.skyTemperatureC(Constants.blackBody(-12.5))).isCloseTo(-12.5, within(1e-10));
    }
}
