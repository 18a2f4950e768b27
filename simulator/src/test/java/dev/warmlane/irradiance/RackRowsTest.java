package dev.warmlane.irradiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RackRowsTest {

    private static final double ROUNDING = 1e-12;

    private static final RackRows ROWS = new RackRows(new Rack(30, 180, 1.2, 0.3), 2.4, 5);

    @ParameterizedTest
    @CsvSource({"0, 1.2, 1.3", "10, 1.2, 1.2", "30, 1.2, 2.4", "60, 3, 4", "90, 2, 0.5"})
    void facesSeeSkyNeighbourAndRoofAndNothingElse(double tiltDeg, double chordM, double pitchM) {
        RackRows rows = new RackRows(new Rack(tiltDeg, 180, chordM, 0.2), pitchM, 3);
        for (RowPlace place : RowPlace.values()) {
            assertThat(rows.frontSkyView(place) + rows.frontRoofView(place) + rows.frontNeighbourView(place))
                    .isCloseTo(1, within(ROUNDING));
            assertThat(rows.backSkyView(place) + rows.backRoofView(place) + rows.frontNeighbourView(place))
                    .isCloseTo(1, within(ROUNDING));
        }
        assertThat(rows.frontSkyView(RowPlace.INTERIOR))
                .isLessThanOrEqualTo(rows.frontSkyView(RowPlace.FIRST) + ROUNDING);
    }

    @Test
    void rowsFarApartSeeWhatASingleRowSees() {
        RackRows apart = new RackRows(new Rack(35, 180, 1.2, 0.3), 12_000, 2);
        // the neighbour fills an angle of rise over pitch, 1e-4, near the horizon
        assertThat(apart.frontSkyView(RowPlace.INTERIOR)).isCloseTo(apart.frontSkyView(RowPlace.FIRST), within(1e-4));
        assertThat(apart.backSkyView(RowPlace.INTERIOR)).isCloseTo(apart.backSkyView(RowPlace.FIRST), within(1e-4));
        RackRows alone = new RackRows(new Rack(35, 180, 1.2, 0.3), Double.POSITIVE_INFINITY, 1);
        assertThat(alone.frontSkyView(RowPlace.INTERIOR)).isEqualTo(alone.frontSkyView(RowPlace.FIRST));
        assertThat(alone.frontNeighbourView(RowPlace.INTERIOR)).isZero();
        assertThat(alone.shadedShare(0.1)).isZero();
    }

    @Test
    void skyViewIsTheMeanOfWhatTheNeighbourLeavesOfEachDirection() {
        // ½∫ (1 - shaded)·sin(p + tilt) dp over the directions of the sky before the plate
        int directions = 20_000;
        double tilt = Math.toRadians(ROWS.rack().tiltDeg());
        double seen = 0;
        for (int i = 0; i < directions; i++) {
            double profile = (i + 0.5) * (Math.PI - tilt) / directions;
            seen += (1 - ROWS.shadedShare(Math.toDegrees(profile))) * Math.sin(profile + tilt) / 2;
        }
        double summed = seen * (Math.PI - tilt) / directions;
        // midpoint rule, step 1e-4
        assertThat(ROWS.frontSkyView(RowPlace.INTERIOR)).isCloseTo(summed, within(1e-7));
    }

    @Test
    void profileAngleIsTheHeightOfTheSunFromTheSide() {
        assertThat(ROWS.profileDeg(60, 180)).as("straight ahead").isCloseTo(30, within(1e-9));
        assertThat(ROWS.profileDeg(60, 0)).as("straight behind").isCloseTo(150, within(1e-9));
        assertThat(ROWS.profileDeg(60, 90)).as("along the rows").isCloseTo(90, within(1e-9));
        // tan p = tan(height)/cos(aside)
        assertThat(Math.tan(Math.toRadians(ROWS.profileDeg(60, 240))))
                .isCloseTo(Math.tan(Math.toRadians(30)) / 0.5, within(1e-9));
        RackRows east = new RackRows(new Rack(30, 90, 1.2, 0.3), 2.4, 5);
        assertThat(east.profileDeg(60, 90)).isCloseTo(30, within(1e-9));
    }

    @Test
    void pitchOfTheSpacingRuleJustEndsTheShade() {
        double pitch = RackRows.pitchForProfileAngle(1.2, 30, 20);
        RackRows rows = new RackRows(new Rack(30, 180, 1.2, 0.3), pitch, 5);
        // run + rise/tan p, the common form of the rule
        assertThat(pitch).isCloseTo(rows.runM() + rows.riseM() / Math.tan(Math.toRadians(20)), within(ROUNDING));
        assertThat(rows.shadedShare(20)).isCloseTo(0, within(1e-9));
        assertThat(rows.shadedShare(21)).isZero();
        assertThat(rows.shadedShare(15)).isPositive();
    }

    @Test
    void shadeGrowsAsTheSunSinks() {
        assertThat(ROWS.shadedShare(0)).isEqualTo(1);
        assertThat(ROWS.shadedShare(90)).isZero();
        for (int profile = 1; profile < 90; profile++) {
            assertThat(ROWS.shadedShare(profile)).isLessThanOrEqualTo(ROWS.shadedShare(profile - 1));
        }
        assertThat(ROWS.shadedShare(178)).as("the back, from the row behind").isPositive();
        assertThat(ROWS.shadedShare(150)).as("edge-on").isZero();
        RackRows flat = new RackRows(new Rack(0, 180, 1.2, 0.3), 1.2, 5);
        assertThat(flat.shadedShare(2))
                .as("plates that lie do not shade each other")
                .isCloseTo(0, within(ROUNDING));
    }

    @Test
    void yearOfShadingFollowsTheSun() {
        WeatherYear year = Years.clear(Years.NORTH);
        RowShading shading = RowShading.of(year.sun(), ROWS);
        PlaneIrradiance plane = PlaneIrradiance.of(year, ROWS.plane(), SkyModel.ISOTROPIC);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (year.sun().isUp(hour)) {
                boolean onFront = shading.profileDeg(hour) < 180 - ROWS.rack().tiltDeg();
                assertThat(onFront).isEqualTo(plane.incidenceDeg(hour) < 90);
            } else {
                assertThat(shading.shadedShare(hour)).isZero();
            }
        }
        assertThat(shading.shadedShare(HourOfYear.of(6, 21, 12))).isZero();
        assertThat(shading.shadedShare(HourOfYear.of(12, 21, 9))).isPositive();
    }

    @Test
    void refusesRowsThatStandOverEachOther() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RackRows(new Rack(30, 180, 1.2, 0.3), 1.0, 5))
                .withMessageContaining("row pitch must be at least")
                .withMessageContaining("widen the pitch");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RackRows(new Rack(30, 180, 1.2, 0.3), Double.POSITIVE_INFINITY, 2))
                .withMessageContaining("finite");
        assertThatIllegalArgumentException().isThrownBy(() -> new RackRows(new Rack(30, 180, 1.2, 0.3), Double.NaN, 2));
    }
}
