package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {

    /** Vapour is taken as an ideal gas in the check by Clausius and Clapeyron; it is 0.1 to 0.3 % denser at 5 to 45 °C. */
    private static final Percentage IDEAL_VAPOUR = Percentage.withPercentage(0.4);

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/physics/properties.csv", useHeadersInDisplayName = true)
    void meetsThePublishedTables(String quantity, double temperatureC, double value, String unit, double tolerance) {
        double found =
                switch (quantity) {
                    case "saturation_pressure" -> MoistAir.saturationPressureKpa(temperatureC);
                    case "latent_heat" -> Water.latentHeatJKg(temperatureC) / 1000;
                    case "water_density" -> Water.densityKgM3(temperatureC);
                    case "water_viscosity" -> 1000 * Water.viscosityPaS(temperatureC);
                    case "water_specific_heat" -> Water.specificHeatJKgK(temperatureC) / 1000;
                    default -> throw new IllegalArgumentException("unknown quantity " + quantity + " in " + unit);
                };
        assertThat(found).isCloseTo(value, within(tolerance * value));
    }

    @Test
    void isDensestNearFourDegrees() {
        assertThat(Water.densityKgM3(4)).isGreaterThan(Water.densityKgM3(2)).isGreaterThan(Water.densityKgM3(6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 15, 25, 35, 45})
    void latentHeatFollowsFromTheSaturationPressure(double temperatureC) {
        double slope = Math.log(MoistAir.saturationPressureKpa(temperatureC + 0.01)
                        / MoistAir.saturationPressureKpa(temperatureC - 0.01))
                / 0.02;
        double kelvin = temperatureC + Constants.KELVIN;
        double vapourGasConstant = 8314.462618 / 18.015268;
        assertThat(Water.latentHeatJKg(temperatureC))
                .isCloseTo(vapourGasConstant * kelvin * kelvin * slope, IDEAL_VAPOUR);
    }

    @Test
    void endsAtTheFreezingPoint() {
        assertThat(Water.densityKgM3(-5)).isEqualTo(Water.densityKgM3(0));
        assertThat(Water.specificHeatJKgK(-5)).isEqualTo(Water.specificHeatJKgK(0));
        assertThat(Water.latentHeatJKg(-5)).isEqualTo(Water.latentHeatJKg(0));
        assertThat(Water.viscosityPaS(-5)).isEqualTo(Water.viscosityPaS(0));
    }
}
