package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * Walls of a rectangular basin that rise above its water, all round and of one height: they shade the water while the sun is
 * low, and hide the lowest part of the sky from it.
 *
 * <p>The shadow of their upper edge is that rectangle moved by h·tan z away from the sun; where the two overlap the water
 * is lit (derived). What the opening lets in and the water does not see falls on the walls. They reflect a share of it, half of
 * that down to the water and half to the sky (derived for walls that are low, reflecting evenly; what goes on between them is
 * left out). Of the sky the water sees the share that two equal parallel rectangles see of each other (Incropera, table 13.2;
 * from memory). The rest is wall at the temperature of the air.
 *
 * @param heightM from the water to the upper edge, m
 * @param lengthM side of the water along the axis, m
 * @param widthM side across it, m
 * @param axisDeg direction of the axis, degrees from north, clockwise
 * @param reflectance share of the light that the walls' inside reflects
 */
public record Freeboard(double heightM, double lengthM, double widthM, double axisDeg, double reflectance) {

    /** Range of {@link #heightM}. */
    public static final Range HEIGHT = Range.of("freeboard", Dimension.LENGTH, 0.01, 5);

    /** Range of {@link #lengthM} and {@link #widthM}. */
    public static final Range SIDE = Range.of("side of the pool", Dimension.LENGTH, 0.5, 500);

    /** Range of {@link #axisDeg}. */
    public static final Range AXIS = Range.of("direction of the pool's length", Dimension.DIRECTION, 0, 360);

    /** Range of {@link #reflectance}. */
    public static final Range REFLECTANCE = Range.share("reflectance of the walls above the water", 0, 1);

    /** Usual {@link #reflectance}. */
    public static final Usual USUAL_REFLECTANCE = REFLECTANCE.usually(
            0.4, "what concrete and paint of middle colour do not absorb, handbook tables from memory");

    /** Checks every range. */
    public Freeboard {
        HEIGHT.check(heightM);
        SIDE.check(lengthM);
        SIDE.check(widthM);
        AXIS.check(axisDeg);
        REFLECTANCE.check(reflectance);
    }

    /** Share of the water that the sun's disc reaches. */
    double litShare(double cosZenith, double sunAzimuthDeg) {
        if (!(cosZenith > 0)) {
            return 0;
        }
        double shadow = heightM * Math.sqrt(1 - Math.min(1, cosZenith * cosZenith)) / cosZenith;
        double off = Math.toRadians(sunAzimuthDeg - axisDeg);
        double along = Math.max(0, 1 - shadow * Math.abs(Math.cos(off)) / lengthM);
        double across = Math.max(0, 1 - shadow * Math.abs(Math.sin(off)) / widthM);
        return along * across;
    }

    /** Share of an even sky's light through the opening that falls on the water. */
    double openShare() {
        double x = lengthM / heightM;
        double y = widthM / heightM;
        double rootX = Math.sqrt(1 + x * x);
        double rootY = Math.sqrt(1 + y * y);
        return 2
                / (Math.PI * x * y)
                * (Math.log(rootX * rootY / Math.sqrt(1 + x * x + y * y))
                        + x * rootY * Math.atan(x / rootY)
                        + y * rootX * Math.atan(y / rootX)
                        - x * Math.atan(x)
                        - y * Math.atan(y));
    }

    /** What arrives at the water when a share of the light falls on it and the rest on the walls. */
    double withWalls(double share) {
        return share + (1 - share) * reflectance / 2;
    }
}
