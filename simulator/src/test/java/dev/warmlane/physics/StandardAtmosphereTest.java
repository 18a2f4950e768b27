package dev.warmlane.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardAtmosphereTest {

    /** ISO 2533, geopotential heights (from memory), to the last digit of the table. */
    @ParameterizedTest
    @CsvSource({"0, 101.325", "1000, 89.875", "2000, 79.495", "5000, 54.020"})
    void meetsTheTable(double elevationM, double pressureKpa) {
        assertThat(StandardAtmosphere.pressureKpa(elevationM)).isCloseTo(pressureKpa, within(0.001));
    }
}
