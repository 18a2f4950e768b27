package dev.warmlane.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SolarDayTest {

    /**
     * The series is within 0.04 degrees, the calendar wanders by half a day, and a date stands here for its midnight:
     * at an equinox the declination moves by 0.4 degrees a day.
     */
    private static final double DECLINATION_DEG = 0.5;

    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvSource({"--06-21, 23.44", "--12-21, -23.44", "--03-20, 0", "--09-23, 0"})
    void declinationIsThatOfSolsticesAndEquinoxes(MonthDay date, double declination) {
        assertThat(SolarDay.of(40, date).declinationDeg()).isCloseTo(declination, within(DECLINATION_DEG));
    }

    @ParameterizedTest
    @CsvSource({"48, 23, 180", "48, -23, 180", "-37, 23, 0", "-37, -23, 0", "10, 23, 0"})
    void noonSunStandsInTheMeridian(double latitude, double declination, double azimuth) {
        SolarDay day = new SolarDay(latitude, declination);

        assertThat(day.zenithDeg(12)).isCloseTo(Math.abs(latitude - declination), within(ROUNDING));
        assertThat(day.azimuthDeg(12) % 360).isCloseTo(azimuth, within(ROUNDING));
    }

    @Test
    void equinoxDayIsTwelveHoursFromEastToWest() {
        SolarDay day = new SolarDay(48, 0);

        assertThat(day.zenithDeg(6)).isCloseTo(90, within(ROUNDING));
        assertThat(day.azimuthDeg(6)).isCloseTo(90, within(ROUNDING));
        assertThat(day.zenithDeg(18)).isCloseTo(90, within(ROUNDING));
        assertThat(day.azimuthDeg(18)).isCloseTo(270, within(ROUNDING));
    }
}
