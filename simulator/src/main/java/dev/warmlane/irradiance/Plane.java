package dev.warmlane.irradiance;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * How a plane lies.
 *
 * @param tiltDeg angle between the plane and the horizontal, degrees, 0 (lying) to 90 (upright)
 * @param azimuthDeg the direction the plane faces, degrees clockwise from north; without meaning at tilt 0
 */
public record Plane(double tiltDeg, double azimuthDeg) {

    /** Range of {@link #tiltDeg}. */
    public static final Range TILT = Range.of("tilt", Dimension.TILT, 0, 90);

    /** Range of {@link #azimuthDeg}. */
    public static final Range AZIMUTH = Range.of("azimuth, clockwise from north,", Dimension.DIRECTION, 0, 360);

    /** The plane that lies flat. */
    public static final Plane HORIZONTAL = new Plane(0, 180);

    /** Checks both ranges. */
    public Plane {
        TILT.check(tiltDeg);
        AZIMUTH.check(azimuthDeg);
    }

    /** The azimuth of what faces the other way, degrees. */
    public static double opposite(double azimuthDeg) {
        return (azimuthDeg + 180) % 360;
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
