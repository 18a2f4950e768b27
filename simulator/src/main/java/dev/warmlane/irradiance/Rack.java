package dev.warmlane.irradiance;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * One rack: a plate leaning over the roof. The same whether it is lit in rows, gives heat or is compared with others.
 *
 * @param tiltDeg tilt of the plate, degrees
 * @param azimuthDeg the direction its front faces, degrees clockwise from north
 * @param chordM length of the plate up its slope, m
 * @param clearanceM height of its lower edge above the roof, m
 */
public record Rack(double tiltDeg, double azimuthDeg, double chordM, double clearanceM) {

    /** Range of {@link #chordM}. */
    public static final Range CHORD = Range.of("rack chord", Dimension.LENGTH, 0.2, 20);

    /** Range of {@link #clearanceM}. */
    public static final Range CLEARANCE = Range.of("rack clearance", Dimension.LENGTH, 0, 5);

    /** Checks every range; tilt and azimuth are those of a {@link Plane}. */
    public Rack {
        Plane.TILT.check(tiltDeg);
        Plane.AZIMUTH.check(azimuthDeg);
        CHORD.check(chordM);
        CLEARANCE.check(clearanceM);
    }

    /** The plane of the front. */
    public Plane plane() {
        return new Plane(tiltDeg, azimuthDeg);
    }

    /** How far the plate reaches over the roof, m. */
    public double runM() {
        return chordM * Math.cos(Math.toRadians(tiltDeg));
    }

    /** How far the upper edge stands above the lower, m. */
    public double riseM() {
        return chordM * Math.sin(Math.toRadians(tiltDeg));
    }

    /** Height of the middle of the slope above the roof, m. */
    public double middleM() {
        return clearanceM + riseM() / 2;
    }

    /** The same rack at another tilt, degrees. */
    public Rack withTiltDeg(double value) {
        return new Rack(value, azimuthDeg, chordM, clearanceM);
    }

    /** The same rack at another height of its lower edge, m. */
    public Rack withClearanceM(double value) {
        return new Rack(tiltDeg, azimuthDeg, chordM, value);
    }

    /** The same rack facing the other way. */
    public Rack turned() {
        return new Rack(tiltDeg, Plane.opposite(azimuthDeg), chordM, clearanceM);
    }
}
