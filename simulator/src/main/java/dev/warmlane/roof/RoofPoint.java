package dev.warmlane.roof;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * A place on a roof surface, in the surface's own plane; see {@link Surface} for its axes.
 *
 * @param xM along the surface's reference edge, m
 * @param yM away from that edge, up the slope, m, in true length
 */
public record RoofPoint(double xM, double yM) {

    /** Range of either coordinate. */
    public static final Range COORDINATE = Range.of("coordinate on the roof", Dimension.LENGTH, -1000, 1000);

    /** Checks the range. */
    public RoofPoint {
        COORDINATE.check(xM);
        COORDINATE.check(yM);
    }

    /** Distance to another place, m. */
    public double distanceM(RoofPoint other) {
        return Math.hypot(other.xM - xM, other.yM - yM);
    }
}
