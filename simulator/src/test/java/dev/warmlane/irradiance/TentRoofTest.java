package dev.warmlane.irradiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Views and shadows between tents, against rays that are followed to what they hit. */
class TentRoofTest {

    private static final double CLOSURE = 1e-9;

    /** Midpoint sums over 400 places and 1500 directions. */
    private static final double RAYS = 2e-3;

    /** What {@link TentRoof#STRIPS} promises. */
    private static final double STRIPS = 2e-3;

    private static RackRows tents(double tiltDeg, double chordM, double pitchM) {
        return new RackRows(new Rack(tiltDeg, 90, chordM, 0), pitchM, 5, true);
    }

    @ParameterizedTest
    @CsvSource({"0, 2, 4", "0, 2, 5", "10, 2, 4.5", "15, 3, 8", "30, 1.2, 3", "60, 2, 2.01"})
    void everythingSeenIsSomething(double tiltDeg, double chordM, double pitchM) {
        RackRows rows = tents(tiltDeg, chordM, pitchM);
        for (RowPlace place : RowPlace.values()) {
            TentRoof roof = new TentRoof(rows, place);
            double front = 0;
            double back = 0;
            for (int i = 0; i < roof.count(); i++) {
                assertThat(roof.skyView(i) + roof.viewOfFront(i) + roof.viewOfBack(i))
                        .isCloseTo(1, within(CLOSURE));
                front += roof.frontView(i);
                back += roof.backView(i);
            }
            assertThat(front).isCloseTo(rows.frontRoofView(place), within(CLOSURE));
            assertThat(front + rows.frontSkyView(place) + rows.frontNeighbourView(place))
                    .isCloseTo(1, within(CLOSURE));
            assertThat(back + rows.backSkyView(place) + rows.backNeighbourView(place))
                    .isCloseTo(1, within(CLOSURE));
        }
    }

    /** From the side of a tent: the shares of rays that end in the sky, on the roof and on the next tent. */
    @ParameterizedTest
    @CsvSource({"10, 2, 4.5", "15, 3, 8", "30, 1.2, 3", "45, 2, 3"})
    void raysFromASideEndWhereTheViewsSay(double tiltDeg, double chordM, double pitchM) {
        RackRows rows = tents(tiltDeg, chordM, pitchM);
        double tilt = Math.toRadians(tiltDeg);
        double sky = 0;
        double roof = 0;
        double next = 0;
        int places = 400;
        int directions = 1500;
        for (int p = 0; p < places; p++) {
            double up = (p + 0.5) / places * chordM;
            double x = -up * Math.cos(tilt);
            double z = up * Math.sin(tilt);
            for (int d = 0; d < directions; d++) {
                // even in the sine of the angle from the normal, as a matte face sends
                double angle = Math.PI / 2 - tilt + Math.asin(2 * (d + 0.5) / directions - 1);
                double dx = Math.cos(angle);
                double dz = Math.sin(angle);
                boolean hitsNext =
                        crosses(x, z, dx, dz, pitchM - 2 * rows.runM(), 0, pitchM - rows.runM(), rows.riseM());
                double share = 1.0 / places / directions;
                if (hitsNext) {
                    next += share;
                } else if (dz < 0) {
                    roof += share;
                } else {
                    sky += share;
                }
            }
        }
        assertThat(rows.frontSkyView(RowPlace.INTERIOR)).isCloseTo(sky, within(RAYS));
        assertThat(rows.frontRoofView(RowPlace.INTERIOR)).isCloseTo(roof, within(RAYS));
        assertThat(rows.frontNeighbourView(RowPlace.INTERIOR)).isCloseTo(next, within(RAYS));
    }

    @ParameterizedTest
    @CsvSource({"10, 2, 4.5", "15, 3, 8", "30, 1.2, 3", "45, 2, 3"})
    void theRoofBetweenIsLitWhereNoRidgeStandsInTheSun(double tiltDeg, double chordM, double pitchM) {
        RackRows rows = tents(tiltDeg, chordM, pitchM);
        TentRoof roof = new TentRoof(rows, RowPlace.INTERIOR);
        double[] lit = new double[roof.count()];
        double width = pitchM - 2 * rows.runM();
        for (double profileDeg = 4; profileDeg < 180; profileDeg += 7.3) {
            roof.litShares(profileDeg, lit);
            double mean = 0;
            for (int i = 0; i < TentRoof.STRIPS; i++) {
                mean += lit[i] / TentRoof.STRIPS;
            }
            double dx = Math.cos(Math.toRadians(profileDeg));
            double dz = Math.sin(Math.toRadians(profileDeg));
            int bright = 0;
            int places = 2000;
            for (int p = 0; p < places; p++) {
                double x = (p + 0.5) / places * width;
                boolean own = crosses(x, 0, dx, dz, 0, 0, -rows.runM(), rows.riseM());
                boolean next = crosses(x, 0, dx, dz, width, 0, width + rows.runM(), rows.riseM());
                bright += own || next ? 0 : 1;
            }
            assertThat(mean).as("sun at %s", profileDeg).isCloseTo((double) bright / places, within(RAYS));
            assertThat(lit[roof.count() - 1]).as("below the tent").isZero();
        }
    }

    @ParameterizedTest
    @CsvSource({"10, 2, 4.5", "15, 3, 8", "30, 1.2, 3", "45, 2, 3"})
    void finerStripsSendTheSame(double tiltDeg, double chordM, double pitchM) {
        RackRows rows = tents(tiltDeg, chordM, pitchM);
        TentRoof usual = new TentRoof(rows, RowPlace.INTERIOR);
        TentRoof finer = new TentRoof(rows, RowPlace.INTERIOR, 2 * TentRoof.STRIPS);
        for (double profileDeg = 2; profileDeg < 180; profileDeg += 3) {
            assertThat(sent(usual, profileDeg)).isCloseTo(sent(finer, profileDeg), within(STRIPS));
        }
    }

    /** The sky and the shade of one side are those of single plates at the same pitch: the upper edges are where they were. */
    @Test
    void aSideSeesTheSkyOfSinglePlates() {
        RackRows tents = tents(20, 2, 5);
        RackRows plates = new RackRows(tents.rack(), 5, 5);
        assertThat(tents.frontSkyView(RowPlace.INTERIOR)).isEqualTo(plates.frontSkyView(RowPlace.INTERIOR));
        for (double profileDeg = 1; profileDeg < 180; profileDeg += 3) {
            assertThat(tents.shadedShare(profileDeg)).isEqualTo(plates.shadedShare(profileDeg));
        }
    }

    @Test
    void tentsDoNotStandInEachOther() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tents(20, 2, 3))
                .withMessageContaining("at least the run of a tent on the roof, 3.75");
    }

    private static double sent(TentRoof roof, double profileDeg) {
        double[] lit = new double[roof.count()];
        roof.litShares(profileDeg, lit);
        double sent = 0;
        for (int i = 0; i < roof.count(); i++) {
            sent += roof.frontView(i) * lit[i];
        }
        return sent;
    }

    /** Whether a ray crosses a segment. */
    private static boolean crosses(
            double x, double z, double dx, double dz, double x1, double z1, double x2, double z2) {
        double ex = x2 - x1;
        double ez = z2 - z1;
        double det = dx * -ez + dz * ex;
        if (Math.abs(det) < 1e-12) {
            return false;
        }
        double along = ((x1 - x) * -ez + (z1 - z) * ex) / det;
        double on = (dx * (z1 - z) - dz * (x1 - x)) / det;
        return along > 1e-9 && on >= 0 && on <= 1;
    }
}
