package dev.warmlane.roof;

import dev.warmlane.irradiance.Skylines;
import dev.warmlane.irradiance.Wall;
import dev.warmlane.site.Horizon;
import java.util.ArrayList;
import java.util.List;

/**
 * What the panels of a layout see of the sky above what stands on their roof: obstacles with their heights, which stand
 * plumb and are level with the roof along their tops, and the parapet along the edge. Each surface by itself: what stands on
 * one throws no shade on another.
 */
public final class StandingOnRoof {

    /** About how many places on the panels look at the sky; own choice, the test holds what it makes of shadows. */
    private static final int PLACES = 400;

    /** No finer than this, m; own choice. */
    private static final double FINEST_M = 0.25;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final int sides;
    private final double tiltDeg;
    private final double clearanceM;
    private final double cellM;

    private StandingOnRoof(RoofLayout layout, double clearanceM) {
        this.sides = layout.laying().sides();
        this.tiltDeg = layout.laying().match(mats -> 0.0, Laying.Racks::tiltDeg);
        this.clearanceM = clearanceM;
        this.cellM = Math.max(FINEST_M, Math.sqrt(layout.areaM2() / PLACES));
    }

    /** Whether anything stands up on a surface, so that panels on it may be shaded. */
    public static boolean anything(Surface surface) {
        return surface.parapetM() > 0 || surface.obstacles().stream().anyMatch(one -> one.heightM() > 0);
    }

    /**
     * The skylines of a layout's panels.
     *
     * @param layout the panels; at least one
     * @param clearanceM height of their lower edges above the roof, m; 0 for mats
     * @param horizon what stands farther away
     */
    public static Skylines skylines(RoofLayout layout, double clearanceM, Horizon horizon) {
        StandingOnRoof standing = new StandingOnRoof(layout, clearanceM);
        List<Skylines> each = new ArrayList<>();
        List<Integer> weights = new ArrayList<>();
        for (SurfaceLayout on : layout.surfaces()) {
            if (!on.banks().isEmpty()) {
                List<Wall.Eye> places = standing.places(on);
                each.add(Skylines.seen(places, walls(on.surface()), horizon));
                weights.add(places.size());
            }
        }
        return Skylines.together(each, weights);
    }

    /**
     * A place in each of equal cells of the panels, as many in each bank as it has area. They step aside from cell to cell by
     * the golden section, so that none of them lie on one line that a shadow's edge could fall along.
     */
    private List<Wall.Eye> places(SurfaceLayout on) {
        List<Wall.Eye> places = new ArrayList<>();
        Plumb plumb = new Plumb(on.surface());
        double aside = 0.5;
        for (Bank bank : on.banks()) {
            Patch panels = bank.panelsPatch();
            int along = (int) Math.max(1, Math.round(panels.lengthM() / cellM));
            int up = (int) Math.max(1, Math.round(bank.panelLengthM() / cellM));
            for (int i = 0; i < along; i++) {
                for (int j = 0; j < up; j++) {
                    aside = (aside + GOLDEN) % 1;
                    double share = (j + aside) / up;
                    aside = (aside + GOLDEN) % 1;
                    RoofPoint point = panels.at(panels.lengthM() * (i + aside) / along, panels.depthM() * share);
                    double upSlope = isFarSide(bank) ? 1 - share : share;
                    double above = clearanceM + upSlope * bank.panelLengthM() * Math.sin(Math.toRadians(tiltDeg));
                    places.add(new Wall.Eye(plumb.eastM(point), plumb.northM(point), plumb.upM(point) + above));
                }
            }
        }
        return places;
    }

    /** Of tents every second row of banks falls away from the first. */
    private boolean isFarSide(Bank bank) {
        return sides == 2 && bank.row() % 2 == 0;
    }

    private static List<Wall> walls(Surface surface) {
        List<Wall> walls = new ArrayList<>();
        Plumb plumb = new Plumb(surface);
        if (surface.parapetM() > 0) {
            plumb.stand(surface.outline().corners(), surface.parapetM(), walls);
        }
        for (Obstacle obstacle : surface.obstacles()) {
            if (obstacle.heightM() > 0) {
                plumb.stand(obstacle.outline(), obstacle.heightM(), walls);
            }
        }
        return walls;
    }

    /** A surface as it lies under the sky: its points east, north and up of its origin, m. */
    private static final class Plumb {

        private final double xEast;
        private final double xNorth;
        private final double yEast;
        private final double yNorth;
        private final double yUp;

        Plumb(Surface surface) {
            double x = Math.toRadians(surface.compassDeg(0));
            double y = Math.toRadians(surface.compassDeg(90));
            double slope = Math.toRadians(surface.slopeDeg());
            xEast = Math.sin(x);
            xNorth = Math.cos(x);
            yEast = Math.sin(y) * Math.cos(slope);
            yNorth = Math.cos(y) * Math.cos(slope);
            yUp = Math.sin(slope);
        }

        double eastM(RoofPoint point) {
            return point.xM() * xEast + point.yM() * yEast;
        }

        double northM(RoofPoint point) {
            return point.xM() * xNorth + point.yM() * yNorth;
        }

        double upM(RoofPoint point) {
            return point.yM() * yUp;
        }

        void stand(List<RoofPoint> corners, double heightM, List<Wall> walls) {
            for (int i = 0; i < corners.size(); i++) {
                RoofPoint from = corners.get(i);
                RoofPoint to = corners.get((i + 1) % corners.size());
                walls.add(new Wall(
                        eastM(from), northM(from), upM(from) + heightM, eastM(to), northM(to), upM(to) + heightM));
            }
        }
    }
}
