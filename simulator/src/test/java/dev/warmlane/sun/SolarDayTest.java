package dev.warmlane.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.time.MonthDay;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SolarDayTest {

    /**
     * The series is within 0.04 degrees, the calendar wanders by half a day, and a date stands here for its midnight:
     * at an equinox the declination moves by 0.4 degrees a day.
     */
    private static final double DECLINATION_DEG = 0.5;

    /** As above: half a day, 0.2 degrees at an equinox, beside the 0.04 of the series. */
    private static final double EPHEMERIS_DEG = 0.25;

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

    /** The sun rises where cos A = sin δ / cos φ, at the hour cos ω = -tan φ tan δ. */
    @ParameterizedTest
    @CsvSource({"48, 20", "48, -20", "-37, 15", "10, 23"})
    void risesWhereTheAmplitudeSays(double latitude, double declination) {
        double phi = Math.toRadians(latitude);
        double delta = Math.toRadians(declination);
        SolarDay day = new SolarDay(latitude, declination);
        double rise = 12 - Math.toDegrees(Math.acos(-Math.tan(phi) * Math.tan(delta))) / 15;

        assertThat(day.zenithDeg(rise)).isCloseTo(90, within(ROUNDING));
        assertThat(day.azimuthDeg(rise))
                .isCloseTo(Math.toDegrees(Math.acos(Math.sin(delta) / Math.cos(phi))), within(ROUNDING));
        assertThat(day.azimuthDeg(24 - rise)).isCloseTo(360 - day.azimuthDeg(rise), within(ROUNDING));
    }

    /** The mean of a leap cycle by the ephemeris: at the equator sin δ = sin θz cos A. */
    @Test
    void declinationIsThatOfTheEphemerisOnEveryDay() {
        Site equator = new Site("equator", 0, 0, 0, 0);
        double[] mean = new double[HourOfYear.DAYS];
        for (int year = 2001; year < 2005; year++) {
            int[] years = new int[HourOfYear.HOURS];
            Arrays.fill(years, year);
            SunPath path = SunPath.ofInstants(equator, years, 0);
            for (int day = 0; day < HourOfYear.DAYS; day++) {
                double zenith = Math.toRadians(path.zenithDeg(24 * day));
                double azimuth = Math.toRadians(path.azimuthDeg(24 * day));
                mean[day] += Math.toDegrees(Math.asin(Math.sin(zenith) * Math.cos(azimuth))) / 4;
            }
        }
        for (int day = 0; day < HourOfYear.DAYS; day++) {
            MonthDay date = MonthDay.of(HourOfYear.monthOf(24 * day), HourOfYear.dayOfMonth(24 * day));
            assertThat(SolarDay.of(0, date).declinationDeg())
                    .as(date.toString())
                    .isCloseTo(mean[day], within(EPHEMERIS_DEG));
        }
    }
}
