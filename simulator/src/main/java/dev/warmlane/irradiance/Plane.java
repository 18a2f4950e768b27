package dev.warmlane.irradiance;

import dev.warmlane.units.Checks;

/**
 * How a plane lies.
 *
 * @param tiltDeg angle between the plane and the horizontal, degrees, 0 (lying) to 90 (upright)
 * @param azimuthDeg the direction the plane faces, degrees clockwise from north, 0 to 360; without meaning at tilt 0
 */
public record Plane(double tiltDeg, double azimuthDeg) {

    /** The plane that lies flat. */
    public static final Plane HORIZONTAL = new Plane(0, 180);

    /** Checks both ranges. */
    public Plane {
        Checks.within("tilt", tiltDeg, 0, 90, "degrees");
        Checks.within("azimuth", azimuthDeg, 0, 360, "degrees clockwise from north");
    }

    /** Whether the plane lies flat. */
    public boolean horizontal() {
        return tiltDeg == 0;
    }

    /** What the front sees of an unobstructed sky, (1 + cos β)/2, 0.5 to 1. */
    public double skyView() {
        return (1 + Math.cos(Math.toRadians(tiltDeg))) / 2;
    }
}
