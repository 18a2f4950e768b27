package dev.warmlane.physics;

import dev.warmlane.units.Checks;

/**
 * One face of a plate, as natural flow meets it.
 *
 * @param tiltDeg tilt from the horizontal, degrees, 0 to 90
 * @param facesUp whether it is the upper one
 * @param lengthM length along the slope, m, above 0
 * @param areaToPerimeterM area over perimeter of the plate, m, above 0
 */
public record PlateFace(double tiltDeg, boolean facesUp, double lengthM, double areaToPerimeterM) {

    /** Checks every range. */
    public PlateFace {
        Checks.within("tilt", tiltDeg, 0, 90, "degrees");
        Checks.within("length along the slope", lengthM, Double.MIN_NORMAL, 1e4, "m");
        Checks.within("area over perimeter", areaToPerimeterM, Double.MIN_NORMAL, 1e4, "m");
    }

    /** How much of gravity pulls along the slope, 0 to 1. */
    double sine() {
        return Math.sin(Math.toRadians(tiltDeg));
    }

    /** How much of it pulls away from the plate, 0 to 1. */
    double cosine() {
        return Math.max(0, Math.cos(Math.toRadians(tiltDeg)));
    }
}
