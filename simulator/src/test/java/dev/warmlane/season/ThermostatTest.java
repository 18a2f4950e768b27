package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermostatTest {

    private final Thermostat heater = new Thermostat(26, 300);

    @ParameterizedTest
    @CsvSource({
        // water, others, heat, whether the water is held
        "25.9, -100, 300, false",
        "25.9, 500, 300, false",
        "26.1, -500, 0, false",
        "26, 50, 0, false",
        "26, 0, 0, false",
        "26, -100, 100, true",
        // exhausted: all it has is not enough, and the water cools
        "26, -300, 300, false",
        "26, -450, 300, false"
    })
    void givesWhatIsMissing(double waterC, double others, double heat, boolean held) {
        assertThat(heater.heatWm2(waterC, others)).isEqualTo(heat);
        assertThat(heater.holds(waterC, heater.heatWm2(waterC, others))).isEqualTo(held);
    }

    @Test
    void withoutLookingItRunsBelowItsSetPointAlone() {
        assertThat(heater.regardlessWm2(25.9)).isEqualTo(300);
        assertThat(heater.regardlessWm2(26)).isZero();
        assertThat(heater.regardlessWm2(26.1)).isZero();
    }

    @Test
    void aHeaterWithoutHeatRests() {
        Thermostat none = Thermostat.of(24, 0, 100);
        assertThat(none.heatWm2(0, -500)).isZero();
        assertThat(none.regardlessWm2(0)).isZero();
        assertThat(Thermostat.of(24, 60, 200)).isEqualTo(new Thermostat(24, 300));
    }
}
