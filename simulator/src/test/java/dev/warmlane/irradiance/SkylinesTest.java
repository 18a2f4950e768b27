package dev.warmlane.irradiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.Horizon;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SkylinesTest {

    /** Light of the sky is summed up in steps of a degree, straight between them. */
    private static final Offset<Double> SUMMED_UP = within(2e-4);

    /** Directions come in steps of two degrees, the brink of a half sky lies within one. */
    private static final Offset<Double> DIRECTIONS = within(0.01);

    private static final Plane SOUTH_WALL = new Plane(90, 180);

    private static final Wall.Eye HERE = new Wall.Eye(0, 0, 0);

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 10, 22.5, 45, 70})
    void anEvenHorizonLeavesTheSquareOfItsCosineToAPlaneThatLies(double heightDeg) {
        // ∫∫ sin h cos h dh dφ / π from H up: cos²H
        double cos = Math.cos(Math.toRadians(heightDeg));
        assertThat(Skylines.of(Horizon.even(heightDeg)).skyShare(Plane.HORIZONTAL))
                .isCloseTo(cos * cos, SUMMED_UP);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 30, 60})
    void anEvenHorizonBeforeAnUprightPlane(double heightDeg) {
        // (1/π) ∫ cos φ dφ ∫ cos²h dh from H up is (2/π)(π/4 − H/2 − sin 2H/4), of the half that an upright plane sees
        double h = Math.toRadians(heightDeg);
        double seen = 2 / Math.PI * (Math.PI / 4 - h / 2 - Math.sin(2 * h) / 4);
        assertThat(Skylines.of(Horizon.even(heightDeg)).skyShare(SOUTH_WALL)).isCloseTo(seen / 0.5, SUMMED_UP);
    }

    @Test
    void halfASkyIsHalfTheLightOfAPlaneThatLies() {
        Skylines half = Skylines.of(new Horizon(List.of(
                new Horizon.Height(0, 0),
                new Horizon.Height(179.99, 0),
                new Horizon.Height(180, 90),
                new Horizon.Height(359.99, 90))));
        assertThat(half.skyShare(Plane.HORIZONTAL)).isCloseTo(0.5, DIRECTIONS);
        assertThat(half.skyShare(new Plane(90, 90))).isCloseTo(1, DIRECTIONS);
        assertThat(half.skyShare(new Plane(90, 270))).isCloseTo(0, DIRECTIONS);
    }

    @Test
    void rowsAndHorizonHideThePartOfTheSkyThatBothHideOnce() {
        // at a pitch of 2 m and a tilt of 90° the row before is as high as the chord of 1 m: from the lower edge it
        // hides
        // all below 26.6°, so that a horizon of 5° before it takes less than it takes from a row alone
        RackRows rows = new RackRows(new Rack(90, 180, 1, 0), 2, 10);
        Skylines low = Skylines.of(Horizon.even(5));
        assertThat(low.skyShare(rows, RowPlace.FIRST, false)).isEqualTo(low.skyShare(SOUTH_WALL));
        assertThat(low.skyShare(rows, RowPlace.INTERIOR, false))
                .isGreaterThan(low.skyShare(SOUTH_WALL))
                .isLessThan(1);
        // upright in rows the back sees what the front sees
        assertThat(low.skyShare(rows, RowPlace.INTERIOR, true))
                .isCloseTo(low.skyShare(rows, RowPlace.INTERIOR, false), within(1e-12));
    }

    @Test
    void aLevelHorizonIsAnOpenSky() {
        assertThat(Skylines.of(Horizon.LEVEL).isOpen()).isTrue();
        assertThat(Skylines.of(Horizon.even(0)).isOpen()).isTrue();
        Wall low = new Wall(-5, 10, -1, 5, 10, -1);
        assertThat(Skylines.seen(List.of(HERE), List.of(low), Horizon.LEVEL).isOpen())
                .isTrue();
    }

    @Test
    void aHorizonIsStraightBetweenItsDirectionsAllTheWayRound() {
        Horizon horizon = new Horizon(List.of(new Horizon.Height(350, 20), new Horizon.Height(90, 10)));
        assertThat(horizon.heightDeg(90)).isEqualTo(10);
        assertThat(horizon.heightDeg(40)).isCloseTo(15, within(1e-12));
        assertThat(horizon.heightDeg(355)).isCloseTo(19.5, within(1e-12));
        assertThat(horizon.heightDeg(220)).isCloseTo(15, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Horizon(List.of(new Horizon.Height(0, 1), new Horizon.Height(360, 2))))
                .withMessageContaining("two heights at 0.0 deg");
    }

    @Test
    void aWallHidesTheSunByItsHeightOverTheWayToIt() {
        // 5 m high, 10 m due west, 20 m to either side
        Skylines beside = Skylines.seen(List.of(HERE), List.of(new Wall(-10, -20, 5, -10, 20, 5)), Horizon.LEVEL);
        // atan(5/10) = 26.6°; 60° aside the way is 20 m, atan(5/20) = 14.0°; beyond atan(20/10) = 63.4° it has ended
        assertThat(beside.litShare(270, 26)).isZero();
        assertThat(beside.litShare(270, 27)).isEqualTo(1);
        assertThat(beside.litShare(330, 13.9)).isZero();
        assertThat(beside.litShare(210, 14.2)).isEqualTo(1);
        assertThat(beside.litShare(336, 1)).isEqualTo(1);
        assertThat(beside.litShare(90, 1)).isEqualTo(1);
    }

    /**
     * On the equator on 20 March the sun goes straight up in the east and down in the west, by 15 degrees an hour, and clocks
     * are 7.5 minutes ahead of it (equation of time; from memory). Behind a wall of 30 degrees in the west it is gone 4 h
     * after noon, at 16:07: of the moments of that hour the first, at 16:05, is lit.
     */
    @Test
    void aWallInTheWestTakesTheSunAtTheHourWorkedByHand() {
        WeatherYear year = Years.clear(new Site("equator", 0, 0, 0, 0));
        double far = 1000;
        double high = far * Math.tan(Math.toRadians(30));
        Skylines west =
                Skylines.seen(List.of(HERE), List.of(new Wall(-far, -1e5, high, -far, 1e5, high)), Horizon.LEVEL);

        LightPast past = LightPast.of(west, year);

        assertThat(past.lit(HourOfYear.of(3, 20, 8))).isEqualTo(1);
        assertThat(past.lit(HourOfYear.of(3, 20, 15))).isEqualTo(1);
        assertThat(past.lit(HourOfYear.of(3, 20, 16))).isCloseTo(1.0 / 6, within(1e-12));
        assertThat(past.lit(HourOfYear.of(3, 20, 17))).isZero();
        assertThat(past.lit(HourOfYear.of(3, 20, 23))).isEqualTo(1);
    }

    @Test
    void theSunMovesOnWithinTheHourAsItDoesFromHourToHour() {
        WeatherYear year = Years.clear(Years.SOUTH);
        // in the middle of its hour the sun of one hour stands where the hour's own position says; half of all hours of
        // a
        // day are lit by a horizon that a morning's sun stands above and an evening's below
        Skylines evening = Skylines.of(new Horizon(List.of(
                new Horizon.Height(0, 0),
                new Horizon.Height(180, 0),
                new Horizon.Height(180.1, 90),
                new Horizon.Height(359.9, 90))));
        LightPast past = LightPast.of(evening, year);
        // from dawn to noon the sun goes from the east over north; the noon of 15 April is within a minute of 12
        // o'clock
        int day = HourOfYear.of(4, 15, 0);
        assertThat(IntStream.range(0, 12).allMatch(hour -> past.lit(day + hour) == 1))
                .isTrue();
        assertThat(IntStream.range(12, 24)
                        .filter(hour -> year.sun().isUp(day + hour))
                        .allMatch(hour -> past.lit(day + hour) <= 1.0 / 6))
                .isTrue();
    }
}
