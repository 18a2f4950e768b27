package dev.warmlane.irradiance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoofStripsTest {

    /** The integrals are closed forms; what is left is rounding. */
    private static final double CLOSURE = 1e-9;

    /** Midpoint sums over directions and places in {@link #seenByRays}: their steps are 1/1500 and 1/60. */
    private static final double RAYS = 2e-3;

    /** What {@link StripCut} promises of the lit roof that a back sees; more than a tenth of it was wrong with equal strips. */
    private static final double LIT_SEEN = 2e-3;

    private static final RackRows ROWS = new RackRows(new Rack(30, 180, 1.2, 0.3), 2.4, 5);

    @ParameterizedTest
    @CsvSource({
        "0, 1.2, 1.2, 0.1",
        "0, 1.2, 2.4, 0.3",
        "0.2, 1.2, 2.4, 0.3",
        "5, 1.2, 2, 0",
        "15, 3, 4.5, 1",
        "30, 1.2, 2.4, 0.3",
        "30, 1.2, 1.04, 0.3",
        "60, 2, 3, 2",
        "90, 1.5, 2, 0.2"
    })
    void everythingSeenIsSomething(double tiltDeg, double chordM, double pitchM, double clearanceM) {
        RackRows rows = new RackRows(new Rack(tiltDeg, 180, chordM, clearanceM), pitchM, 5);
        for (RowPlace place : RowPlace.values()) {
            RoofStrips strips = RoofStrips.below(rows, place);
            for (int i = 0; i < strips.count(); i++) {
                assertThat(strips.skyView(i)).isBetween(-CLOSURE, 1.0);
                assertThat(strips.viewOfFront(i)).isBetween(0.0, 1.0);
                assertThat(strips.viewOfBack(i)).isBetween(0.0, 1 + CLOSURE);
                if (Double.isFinite(strips.widthM(i))) {
                    assertThat(strips.frontView(i) * chordM)
                            .as("reciprocity")
                            .isCloseTo(strips.viewOfFront(i) * strips.widthM(i), within(CLOSURE));
                }
            }
            // strips by their shadows, sky and neighbour by crossed strings: two ways that must meet
            assertThat(sum(strips, strips::frontView) + rows.frontSkyView(place) + rows.frontNeighbourView(place))
                    .isCloseTo(1, within(CLOSURE));
            assertThat(sum(strips, strips::backView) + rows.backSkyView(place) + rows.frontNeighbourView(place))
                    .isCloseTo(1, within(CLOSURE));
        }
    }

    @ParameterizedTest
    @CsvSource({"10, 1.2, 1.6, 0.1", "30, 1.2, 2.4, 0.3", "50, 2, 3, 1"})
    void raysFindTheSame(double tiltDeg, double chordM, double pitchM, double clearanceM) {
        RackRows rows = new RackRows(new Rack(tiltDeg, 180, chordM, clearanceM), pitchM, 81);
        for (RowPlace place : RowPlace.values()) {
            RoofStrips strips = RoofStrips.below(rows, place);
            int[] some = IntStream.of(0, 3, 4, 5, 7)
                    .map(eighth -> eighth * strips.count() / 8)
                    .toArray();
            for (int i : some) {
                double[] seen = seenByRays(rows, place, strips.fromM(i), strips.widthM(i));
                assertThat(strips.skyView(i)).isCloseTo(seen[0], within(RAYS));
                assertThat(strips.viewOfFront(i)).isCloseTo(seen[1], within(RAYS));
                assertThat(strips.viewOfBack(i)).isCloseTo(seen[2], within(RAYS));
            }
        }
    }

    /** Low plates, where the shadow's edge lies as near to the plate as a strip is wide. */
    @ParameterizedTest
    @CsvSource({
        "30, 3, 0.15",
        "20, 3, 0.15",
        "10, 3, 0.02",
        "30, 2, 0.3",
        "45, 2, 1",
        "3, 2, 0.03",
        "0, 2, 0.05",
        "20, 2, 0"
    })
    void backSeesAsMuchLitRoofAsRaysFind(double tiltDeg, double chordM, double clearanceM) {
        RackRows row = new RackRows(new Rack(tiltDeg, 180, chordM, clearanceM), Double.POSITIVE_INFINITY, 1);
        RoofStrips strips = RoofStrips.below(row, RowPlace.FIRST);
        for (double profileDeg = 25; profileDeg < 180; profileDeg += 12.5) {
            assertThat(litSeen(strips, profileDeg))
                    .as("sun at " + profileDeg)
                    .isCloseTo(litSeenByRays(row, profileDeg), within(LIT_SEEN));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "30, 3, 4.5, 0.15",
        "20, 3, 3.5, 0.15",
        "30, 2, 4, 0.3",
        "45, 2, 3, 1",
        "0, 2, 2.2, 0.05",
        "30, 2, 80, 0.3"
    })
    void finerStripsSeeTheSame(double tiltDeg, double chordM, double pitchM, double clearanceM) {
        RackRows rows = new RackRows(new Rack(tiltDeg, 180, chordM, clearanceM), pitchM, 5);
        for (RowPlace place : RowPlace.values()) {
            RoofStrips usual = RoofStrips.below(rows, place);
            RoofStrips halved = RoofStrips.below(rows, place, 2);
            assertThat(halved.count()).isGreaterThan((int) (1.6 * usual.count()));
            for (double profileDeg = 10; profileDeg < 180; profileDeg += 3) {
                assertThat(litSeen(halved, profileDeg)).isCloseTo(litSeen(usual, profileDeg), within(LIT_SEEN));
            }
        }
    }

    @Test
    void parallelPlatesSeeWhatHottelFound() {
        RackRows flat = new RackRows(new Rack(0, 180, 1.2, 0.3), Double.POSITIVE_INFINITY, 1);
        RoofStrips strips = RoofStrips.below(flat, RowPlace.FIRST);
        double below = IntStream.range(0, strips.count())
                .filter(i -> strips.fromM(i) >= -1.2 && strips.fromM(i) + strips.widthM(i) <= 0)
                .mapToDouble(strips::backView)
                .sum();
        double gap = 0.3 / 1.2;
        assertThat(below).isCloseTo(Math.sqrt(1 + gap * gap) - gap, within(CLOSURE));
        assertThat(sum(strips, strips::frontView)).isCloseTo(0, within(CLOSURE));
    }

    @Test
    void mountingStandsSymmetricWhenItLies() {
        RoofStrips strips =
                RoofStrips.below(new RackRows(new Rack(0, 180, 1.2, 0.3), Double.POSITIVE_INFINITY, 1), RowPlace.FIRST);
        int last = strips.count() - 2;
        for (int i = 0; i <= last; i++) {
            assertThat(strips.skyView(i)).isCloseTo(strips.skyView(last - i), within(CLOSURE));
        }
    }

    @ParameterizedTest
    @CsvSource({"5", "25", "60", "90", "120", "149", "151", "175"})
    void lightThatMissesThePlatesReachesTheRoof(double profileDeg) {
        RoofStrips strips = RoofStrips.below(ROWS, RowPlace.INTERIOR);
        double[] lit = new double[strips.count()];
        strips.litShares(profileDeg, lit);
        double onRoof = sum(strips, i -> lit[i] * strips.widthM(i)) * Math.sin(Math.toRadians(profileDeg));
        double across =
                Math.abs(Math.sin(Math.toRadians(profileDeg + ROWS.rack().tiltDeg())));
        double onPlate = ROWS.chordM() * across * (1 - ROWS.shadedShare(profileDeg));
        assertThat(onRoof + onPlate).isCloseTo(ROWS.pitchM() * Math.sin(Math.toRadians(profileDeg)), within(CLOSURE));
    }

    @Test
    void shadowFallsBehindThePlateWhenTheSunStandsBeforeIt() {
        RackRows row = new RackRows(new Rack(30, 180, 1.2, 0.3), Double.POSITIVE_INFINITY, 1);
        RoofStrips strips = RoofStrips.below(row, RowPlace.FIRST);
        double[] lit = new double[strips.count()];
        strips.litShares(45, lit);
        for (int i = 0; i < strips.count() - 1; i++) {
            double fromM = strips.fromM(i);
            double toM = fromM + strips.widthM(i);
            // at 45 degrees an edge throws its shadow as far as it stands high
            double darkM = Math.min(toM, -0.3) - Math.max(fromM, -row.runM() - 0.3 - row.riseM());
            assertThat(lit[i]).isCloseTo(1 - Math.max(0, darkM) / strips.widthM(i), within(CLOSURE));
        }
        assertThat(lit[strips.count() - 1]).as("the roof beyond").isEqualTo(1);
    }

    @Test
    void skyViewIsTheMeanOfTheLightFromEachDirection() {
        RoofStrips strips = RoofStrips.below(ROWS, RowPlace.INTERIOR);
        double[] lit = new double[strips.count()];
        double[] seen = new double[strips.count()];
        int directions = 20_000;
        for (int k = 0; k < directions; k++) {
            double profile = (k + 0.5) * Math.PI / directions;
            strips.litShares(Math.toDegrees(profile), lit);
            for (int i = 0; i < lit.length; i++) {
                seen[i] += lit[i] * Math.sin(profile) * Math.PI / directions / 2;
            }
        }
        for (int i = 0; i < lit.length; i++) {
            // midpoint rule over kinks, step 1.6e-4
            assertThat(strips.skyView(i)).isCloseTo(seen[i], within(1e-6));
        }
    }

    @Test
    void clearanceSpreadsTheDarkButDoesNotLessenIt() {
        RoofStrips low = RoofStrips.below(new RackRows(new Rack(20, 180, 1.2, 0.05), 2, 5), RowPlace.INTERIOR);
        RoofStrips high = RoofStrips.below(new RackRows(new Rack(20, 180, 1.2, 1.5), 2, 5), RowPlace.INTERIOR);
        assertThat(sum(low, i -> low.skyView(i) * low.widthM(i)))
                .isCloseTo(sum(high, i -> high.skyView(i) * high.widthM(i)), within(CLOSURE));
        assertThat(spread(high)).isLessThan(0.3 * spread(low));
    }

    @Test
    void rowsFarApartLeaveTheRoofOpen() {
        RackRows apart = new RackRows(new Rack(30, 180, 1.2, 0.3), 1200, 2);
        RoofStrips interior = RoofStrips.below(apart, RowPlace.INTERIOR);
        RoofStrips alone = RoofStrips.below(apart, RowPlace.FIRST);
        assertThat(sum(interior, interior::frontView)).isCloseTo(sum(alone, alone::frontView), within(1e-3));
        assertThat(sum(interior, interior::backView)).isCloseTo(sum(alone, alone::backView), within(1e-3));
        assertThat(interior.skyView(interior.count() / 2)).isCloseTo(1, within(1e-3));
    }

    @Test
    void roofBeyondIsOpenAndSmallToThePlate() {
        RoofStrips alone = RoofStrips.below(ROWS, RowPlace.FIRST);
        int beyond = alone.count() - 1;
        assertThat(alone.skyView(beyond)).isEqualTo(1);
        assertThat(alone.widthM(beyond)).isInfinite();
        // a mean height of 0.6 m over the reach is the angle it fills, seen at 60 degrees to the normal of the back
        double estimate = 0.5 * (0.6 / (RoofStrips.REACH_CHORDS * ROWS.chordM())) * Math.cos(Math.toRadians(60));
        assertThat(alone.backView(beyond)).isCloseTo(estimate, withinPercentage(10));
    }

    @Test
    void aRowAloneHasNoInterior() {
        RackRows alone = new RackRows(new Rack(30, 180, 1.2, 0.3), Double.POSITIVE_INFINITY, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofStrips.below(alone, RowPlace.INTERIOR))
                .withMessageContaining("no interior");
    }

    /** What a piece of roof sees of sky, fronts and backs, by rays from many places in many directions. */
    private static double[] seenByRays(RackRows rows, RowPlace place, double fromM, double widthM) {
        int places = 60;
        int directions = 1500;
        int neighbours = place == RowPlace.INTERIOR ? 40 : 0;
        double[] seen = new double[3];
        for (int p = 0; p < places; p++) {
            double x = fromM + (p + 0.5) * widthM / places;
            for (int d = 0; d < directions; d++) {
                // equal shares of ½ sin p dp
                double cos = 1 - 2 * (d + 0.5) / directions;
                double sin = Math.sqrt(1 - cos * cos);
                double nearest = Double.POSITIVE_INFINITY;
                for (int k = -neighbours; k <= neighbours; k++) {
                    nearest = Math.min(nearest, hit(rows, k * rows.pitchM(), x, cos, sin));
                }
                boolean front = sin * Math.cos(Math.toRadians(rows.rack().tiltDeg()))
                                + cos * Math.sin(Math.toRadians(rows.rack().tiltDeg()))
                        < 0;
                int what = Double.isInfinite(nearest) ? 0 : front ? 1 : 2;
                seen[what] += 1.0 / (places * directions);
            }
        }
        return seen;
    }

    private static double litSeen(RoofStrips strips, double profileDeg) {
        double[] lit = new double[strips.count()];
        strips.litShares(profileDeg, lit);
        return sum(strips, i -> lit[i] * strips.backView(i));
    }

    /** The same by rays from many places of the back in many directions, and from where they meet the roof to the sun. */
    private static double litSeenByRays(RackRows row, double profileDeg) {
        int places = 400;
        int directions = 2000;
        double sin = Math.sin(Math.toRadians(row.rack().tiltDeg()));
        double cos = Math.cos(Math.toRadians(row.rack().tiltDeg()));
        double sunX = Math.cos(Math.toRadians(profileDeg));
        double sunZ = Math.sin(Math.toRadians(profileDeg));
        int lit = 0;
        for (int p = 0; p < places; p++) {
            double up = (p + 0.5) / places * row.chordM();
            for (int d = 0; d < directions; d++) {
                // equal shares of the sine of the angle from the back's normal
                double along = 1 - 2 * (d + 0.5) / directions;
                double away = Math.sqrt(1 - along * along);
                double x = -along * cos - away * sin;
                double z = along * sin - away * cos;
                if (z < 0) {
                    double onRoof = -up * cos - (row.clearanceM() + up * sin) * x / z;
                    lit += Double.isInfinite(hit(row, 0, onRoof, sunX, sunZ)) ? 1 : 0;
                }
            }
        }
        return (double) lit / (places * directions);
    }

    /** How far along a ray from the roof a plate is met; infinite where it is missed. */
    private static double hit(RackRows rows, double shiftM, double x, double cos, double sin) {
        // x + q·cos = shift - s·run, q·sin = clearance + s·rise, s from 0 to 1 up the plate
        double run = rows.runM();
        double rise = rows.riseM();
        double determinant = cos * rise + sin * run;
        double q = ((shiftM - x) * rise + rows.clearanceM() * run) / determinant;
        double s = ((shiftM - x) * sin - rows.clearanceM() * cos) / determinant;
        return q > 0 && s >= 0 && s <= 1 ? q : Double.POSITIVE_INFINITY;
    }

    private static double spread(RoofStrips strips) {
        double most = IntStream.range(0, strips.count())
                .mapToDouble(strips::skyView)
                .max()
                .orElseThrow();
        double least = IntStream.range(0, strips.count())
                .mapToDouble(strips::skyView)
                .min()
                .orElseThrow();
        return most - least;
    }

    private static double sum(RoofStrips strips, IntToDoubleFunction value) {
        return IntStream.range(0, strips.count()).mapToDouble(value).sum();
    }
}
