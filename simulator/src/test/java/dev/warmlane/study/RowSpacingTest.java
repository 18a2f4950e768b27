package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.RowSpacing.FixedPitch;
import dev.warmlane.study.RowSpacing.Unshaded;
import dev.warmlane.sun.SolarDay;
import java.time.MonthDay;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowSpacingTest {

    private static final OpeningSeason SUMMER =
            new OpeningSeason(MonthDay.of(5, 15), MonthDay.of(9, 15), Schedule.ALWAYS);

    /** The lowest sun is looked for minute by minute; between two minutes it may be lower by less than this share. */
    private static final double SHADE = 1e-5;

    @ParameterizedTest
    @CsvSource({
        "48, 180, 30, 12, 12, --12-21",
        "48, 180, 30, 9, 15, --09-15",
        "48, 220, 45, 9, 15, --06-21",
        "36, 135, 15, 8, 12, --03-20",
        "-37, 0, 60, 9.5, 14.5, --06-21",
        "-37, 30, 20, 10, 14, --04-10"
    })
    void rowsAreFreeOfShadeInTheHoursAskedForAndNoFurtherApartThanThatTakes(
            double latitude, double azimuth, double tilt, double from, double to, MonthDay date) {
        RowSpacing spacing = new Unshaded(from, to, Optional.of(date));
        double pitch = spacing.pitchM(2, tilt, azimuth, latitude, SUMMER);
        SolarDay sun = SolarDay.of(latitude, date);

        assertThat(mostShade(new RackRows(new Rack(tilt, azimuth, 2, 0.3), pitch, 3), sun, from, to))
                .isLessThan(SHADE);
        assertThat(mostShade(new RackRows(new Rack(tilt, azimuth, 2, 0.3), 0.99 * pitch, 3), sun, from, to))
                .isGreaterThan(0.001);
    }

    private static double mostShade(RackRows rows, SolarDay sun, double from, double to) {
        double most = 0;
        int steps = 5000;
        for (int i = 0; i <= steps; i++) {
            double hour = from + (to - from) * i / steps;
            double profile = rows.profileDeg(sun.zenithDeg(hour), sun.azimuthDeg(hour));
            if (profile <= 90) {
                most = Math.max(most, rows.shadedShare(profile));
            }
        }
        return most;
    }

    @Test
    void noonPitchIsThatOfTheNoonSun() {
        MonthDay date = MonthDay.of(12, 21);
        double height = 90 - SolarDay.of(48, date).zenithDeg(12);

        assertThat(new Unshaded(12, 12, Optional.of(date)).pitchM(2, 30, 180, 48, SUMMER))
                .isCloseTo(2 * Math.sin(Math.toRadians(height + 30)) / Math.sin(Math.toRadians(height)), within(1e-9));
    }

    @Test
    void moreHoursNeedMoreRoom() {
        double noon = new Unshaded(12, 12, Optional.empty()).pitchM(2, 30, 150, 48, SUMMER);

        assertThat(new Unshaded(9, 15, Optional.empty()).pitchM(2, 30, 150, 48, SUMMER))
                .isGreaterThan(noon);
    }

    @Test
    void withoutADateTheLowestNoonSunOfTheSeasonCounts() {
        assertThat(new Unshaded(12, 12, Optional.empty()).dateAt(48, SUMMER)).isEqualTo(MonthDay.of(9, 15));
        assertThat(new Unshaded(12, 12, Optional.empty())
                        .dateAt(-37, new OpeningSeason(MonthDay.of(10, 20), MonthDay.of(4, 10), Schedule.ALWAYS)))
                .isEqualTo(MonthDay.of(4, 10));
        assertThat(new Unshaded(12, 12, Optional.empty())
                        .dateAt(48, OpeningSeason.wholeYear())
                        .getMonthValue())
                .isEqualTo(12);
    }

    @Test
    void rowsWithTheSunBehindThemMayTouch() {
        double run = 2 * Math.cos(Math.toRadians(20));

        assertThat(new Unshaded(11, 13, Optional.of(MonthDay.of(6, 21))).pitchM(2, 20, 0, 48, SUMMER))
                .isCloseTo(run, within(1e-9));
    }

    @Test
    void hoursWithoutSunAreRefusedWithAWayOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Unshaded(7, 17, Optional.of(MonthDay.of(12, 21))).pitchM(2, 30, 180, 60, SUMMER))
                .withMessageContaining("7.0 to 17.0 o'clock solar time on --12-21 at latitude 60.0")
                .withMessageContaining("choose hours nearer noon, another date, or a fixed pitch");
    }

    @Test
    void fixedPitchIsAsGiven() {
        assertThat(new FixedPitch(3.3).pitchM(2, 30, 180, 48, SUMMER)).isEqualTo(3.3);
    }
}
