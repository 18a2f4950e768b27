package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.site.Horizon;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Shade of obstacles and parapets on panels, against shadows drawn by hand and by the geometry library. */
class StandingOnRoofTest {

    private static final PanelRules RULES = PanelRules.usual(1.2, 3.0);

    private static final Surface HALL = Surface.flat("hall", Outline.rectangle(30, 14), 180, 6);

    private static final Obstacle STAIRS =
            new Obstacle("stairs", Obstacle.Block.around(new RoofPoint(9, 7), 3, 2.5), 2.4, 0.3);

    private static final Obstacle CHIMNEY =
            new Obstacle("chimney", new Obstacle.Disc(new RoofPoint(20, 5), 1.2), 3, 0.3);

    /** Some four hundred places on the panels stand for all of them, and directions come in steps of two degrees. */
    private static final Offset<Double> PLACES = within(0.012);

    private static RoofLayout mats(Surface surface) {
        return RoofLayout.most(List.of(surface), RULES, new Laying.Mats());
    }

    private static Skylines seen(RoofLayout layout) {
        return StandingOnRoof.skylines(layout, 0, Horizon.LEVEL);
    }

    @Test
    void aBareRoofSeesTheWholeSky() {
        assertThat(seen(mats(HALL)).isOpen()).isTrue();
        assertThat(StandingOnRoof.anything(HALL)).isFalse();
    }

    /** The shadow of a parapet is as long as its height over the tangent of the sun's height. */
    @Test
    void theShadowOfAParapetByHand() {
        RoofLayout layout = mats(withParapet(HALL, 1));
        Skylines seen = seen(layout);
        // seven banks of 12 m with panels of 3 m across the roof, from 1 m to 13 m off the edge in the south: at 45°
        // the
        // shadow of 1 m ends where the panels begin; of 4 m it covers 3 m of 12 m of each
        assertThat(seen.litShare(180, 45.1)).isEqualTo(1);
        assertThat(seen.litShare(180, Math.toDegrees(Math.atan(1 / 4.0)))).isCloseTo(9 / 12.0, PLACES);
        assertThat(seen.litShare(180, Math.toDegrees(Math.atan(1 / 13.0)) - 0.1))
                .isZero();
    }

    private static Surface withParapet(Surface surface, double heightM) {
        return new Surface(
                surface.name(),
                surface.outline(),
                surface.azimuthDeg(),
                surface.slopeDeg(),
                surface.heightM(),
                heightM,
                surface.edgeDistanceM(),
                surface.obstacles());
    }

    /** Shadows swept along the roof and cut with the panels. */
    @ParameterizedTest
    @CsvSource({"180, 45", "180, 20", "90, 30", "230, 15", "316, 8", "40, 60"})
    void agreesWithShadowsThatTheGeometryLibraryCuts(double azimuthDeg, double heightDeg) {
        RoofLayout layout = mats(HALL.withObstacles(List.of(STAIRS, CHIMNEY)));

        // HALL's edge faces south: x runs to the east and y to the north
        double away = Math.toRadians(azimuthDeg + 180);
        double cotangent = 1 / Math.tan(Math.toRadians(heightDeg));
        Geometry shadow = shadow(STAIRS, away, cotangent).union(shadow(CHIMNEY, away, cotangent));
        double dark = 0;
        for (Bank bank : layout.surfaces().get(0).banks()) {
            for (Patch panel : bank.panelPatches()) {
                dark += hull(panel.corners(), 0, 0).intersection(shadow).getArea();
            }
        }

        assertThat(seen(layout).litShare(azimuthDeg, heightDeg)).isCloseTo(1 - dark / layout.areaM2(), PLACES);
    }

    private static Geometry shadow(Obstacle obstacle, double away, double cotangent) {
        double length = obstacle.heightM() * cotangent;
        return hull(obstacle.outline(), length * Math.sin(away), length * Math.cos(away));
    }

    /** The hull of corners and of the same corners farther on: what a shape that has no dents sweeps. */
    private static Geometry hull(List<RoofPoint> corners, double byX, double byY) {
        Coordinate[] all = new Coordinate[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            all[2 * i] = new Coordinate(corners.get(i).xM(), corners.get(i).yM());
            all[2 * i + 1] =
                    new Coordinate(corners.get(i).xM() + byX, corners.get(i).yM() + byY);
        }
        return new GeometryFactory().createMultiPointFromCoords(all).convexHull();
    }

    @Test
    void aRoofAndItsSunTurnedBy90DegreesAreTheSame() {
        Surface here = withParapet(HALL.withObstacles(List.of(STAIRS, CHIMNEY)), 0.8);
        Surface turned =
                new Surface(here.name(), here.outline(), 270, 0, here.heightM(), here.parapetM(), 1, here.obstacles());
        Skylines one = seen(mats(here));
        Skylines other = seen(mats(turned));
        for (int azimuth = 0; azimuth < 360; azimuth += 14) {
            for (int height = 3; height < 90; height += 7) {
                assertThat(other.litShare((azimuth + 90) % 360, height)).isEqualTo(one.litShare(azimuth, height));
            }
        }
        assertThat(other.skyShare(Plane.HORIZONTAL)).isCloseTo(one.skyShare(Plane.HORIZONTAL), within(1e-9));
    }

    @Test
    void itIsNeverLighterThanWithoutNorDarkerThanDark() {
        Skylines some = seen(mats(HALL.withObstacles(List.of(CHIMNEY))));
        Skylines more = StandingOnRoof.skylines(
                mats(HALL.withObstacles(List.of(CHIMNEY))), 0, new Horizon(List.of(new Horizon.Height(200, 12))));
        for (int azimuth = 0; azimuth < 360; azimuth++) {
            double before = 0;
            for (int height = 0; height <= 90; height++) {
                double lit = some.litShare(azimuth, height);
                assertThat(lit).isBetween(before, 1.0);
                assertThat(more.litShare(azimuth, height)).isBetween(0.0, lit);
                before = lit;
            }
        }
        assertThat(more.skyShare(Plane.HORIZONTAL))
                .isPositive()
                .isLessThan(some.skyShare(Plane.HORIZONTAL))
                .isLessThan(1);
    }

    /** Panels on a slope are shaded by what stands plumb below them on it: its shadow in the plane, by hand. */
    @Test
    void aWallAtTheEavesOfAPitchedRoof() {
        double slope = 30;
        Surface pitched = new Surface("south", Outline.rectangle(30, 14), 180, slope, 6, 0, 1, List.of());
        Obstacle wall =
                new Obstacle("wall", new Obstacle.Block(Outline.rectangle(new RoofPoint(0, 0), 30, 0.2)), 2, 0.3);
        RoofLayout layout = mats(pitched.withObstacles(List.of(wall)));
        // sun in the south, h high: it passes the top, 2 m above the eaves' plane at y 0.2 m, and meets the slope at s
        // m
        // farther up where 2 m + s sin 30° = ... 2 - s cos 30° tan h = s sin 30°: s = 2 / (cos 30° tan h + sin 30°)
        double h = 10;
        double s =
                2 / (Math.cos(Math.toRadians(slope)) * Math.tan(Math.toRadians(h)) + Math.sin(Math.toRadians(slope)));
        double from = 0.2;
        double dark = layout.surfaces().get(0).banks().stream()
                .flatMap(bank -> bank.panelPatches().stream())
                .mapToDouble(panel -> {
                    double low = panel.corners().stream()
                            .mapToDouble(RoofPoint::yM)
                            .min()
                            .orElseThrow();
                    double high = panel.corners().stream()
                            .mapToDouble(RoofPoint::yM)
                            .max()
                            .orElseThrow();
                    return panel.areaM2() * Math.max(0, Math.min(high, from + s) - low) / (high - low);
                })
                .sum();
        assertThat(dark).isPositive();
        assertThat(seen(layout).litShare(180, h)).isCloseTo(1 - dark / layout.areaM2(), PLACES);
    }

    /** What stands behind racks in the sun's eyes is below their upper edges as much as above their lower ones. */
    @Test
    void aRackLooksOverWhatIsLowerThanItself() {
        Laying.Racks racks = new Laying.Racks(30, 180, 3, 6);
        RoofLayout layout = RoofLayout.most(List.of(withParapet(HALL, 0.5)), RULES, racks);
        Skylines lifted = StandingOnRoof.skylines(layout, 0.5, Horizon.LEVEL);
        Skylines onRoof = StandingOnRoof.skylines(layout, 0, Horizon.LEVEL);
        assertThat(lifted.isOpen()).isTrue();
        assertThat(onRoof.litShare(180, 2)).isStrictlyBetween(0.0, 1.0);
    }
}
