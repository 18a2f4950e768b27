package dev.warmlane.roof;

import java.util.List;

/**
 * A rectangle somewhere on a surface.
 *
 * @param corner where it begins
 * @param alongDeg the direction of its length, degrees anticlockwise from the x axis; its depth runs to the left of it
 * @param lengthM along that direction, m
 * @param depthM square to it, m
 */
public record Patch(RoofPoint corner, double alongDeg, double lengthM, double depthM) {

    /** A point of it, along and across from its corner, m. */
    public RoofPoint at(double alongM, double acrossM) {
        double cos = Math.cos(Math.toRadians(alongDeg));
        double sin = Math.sin(Math.toRadians(alongDeg));
        return new RoofPoint(corner.xM() + alongM * cos - acrossM * sin, corner.yM() + alongM * sin + acrossM * cos);
    }

    /** A rectangle within it, from a point along and across, m. */
    public Patch part(double alongM, double acrossM, double partLengthM, double partDepthM) {
        return new Patch(at(alongM, acrossM), alongDeg, partLengthM, partDepthM);
    }

    /** Its corners, anticlockwise. */
    public List<RoofPoint> corners() {
        return List.of(corner, at(lengthM, 0), at(lengthM, depthM), at(0, depthM));
    }

    /** Area, m². */
    public double areaM2() {
        return lengthM * depthM;
    }
}
