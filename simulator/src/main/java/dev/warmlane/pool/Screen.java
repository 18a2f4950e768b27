package dev.warmlane.pool;

import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.Wall;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * Something tall beside a pool: a building, a hedge, a row of trees. It stands upright and square to the way there, opaque
 * from end to end.
 *
 * @param name what people call it
 * @param directionDeg where it stands from the middle of the pool, degrees clockwise from north
 * @param distanceM how far it stands from the edge of the water, m
 * @param breadthM how broad it looks from there, m
 * @param heightM how high it stands above the water, m
 */
public record Screen(String name, double directionDeg, double distanceM, double breadthM, double heightM) {

    /** Range of {@link #distanceM}. */
    public static final Range DISTANCE = Range.of("distance from the pool", Dimension.LENGTH, 0, 1000);

    /** Range of {@link #breadthM}. */
    public static final Range BREADTH = Range.of("breadth beside the pool", Dimension.LENGTH, 0.1, 2000);

    /** Range of {@link #heightM}. */
    public static final Range HEIGHT = Range.of("height above the water", Dimension.LENGTH, 0, 300);

    /** Checks every range. */
    public Screen {
        Plane.AZIMUTH.check(directionDeg);
        DISTANCE.check(distanceM);
        BREADTH.check(breadthM);
        HEIGHT.check(heightM);
    }

    /** It as a wall about the middle of a pool that reaches so far towards it, m. */
    Wall wall(double reachM) {
        double direction = Math.toRadians(directionDeg);
        double sin = Math.sin(direction);
        double cos = Math.cos(direction);
        double away = reachM + distanceM;
        double aside = breadthM / 2;
        return new Wall(
                away * sin - aside * cos,
                away * cos + aside * sin,
                heightM,
                away * sin + aside * cos,
                away * cos - aside * sin,
                heightM);
    }
}
