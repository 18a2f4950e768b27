package dev.warmlane.roof;

import dev.warmlane.site.Roof;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.List;

/**
 * One plane of a roof as it is drawn, in true lengths measured on it.
 *
 * <p>Its axes: y runs away from the reference edge, on a pitched roof up the slope from the eaves; x runs along that edge
 * to the right of whoever stands on the roof and looks along y. {@link #azimuthDeg} is the way that the reference edge
 * faces: against y.
 *
 * @param name what people call it
 * @param outline its edges
 * @param azimuthDeg where the reference edge faces and a pitched roof falls, degrees clockwise from north
 * @param slopeDeg slope, degrees; up to {@link #FLAT_UP_TO_DEG} it is a flat roof
 * @param heightM height above the ground, m
 * @param parapetM height of the parapet around it, m; 0 for none
 * @param edgeDistanceM how far panels stay away from every edge, m
 * @param obstacles what stands on it
 */
public record Surface(
        String name,
        Outline outline,
        double azimuthDeg,
        double slopeDeg,
        double heightM,
        double parapetM,
        double edgeDistanceM,
        List<Obstacle> obstacles) {

    /** Range of {@link #azimuthDeg}. */
    public static final Range AZIMUTH = Range.of("azimuth of the roof surface", Dimension.DIRECTION, 0, 360);

    /** Range of {@link #slopeDeg}. */
    public static final Range SLOPE = Range.of("slope of the roof surface", Dimension.TILT, 0, 75);

    /** Range of {@link #parapetM}. */
    public static final Range PARAPET = Range.of("parapet height", Dimension.LENGTH, 0, 5);

    /** Range of {@link #edgeDistanceM}. */
    public static final Range EDGE_DISTANCE = Range.of("distance from the edge", Dimension.LENGTH, 0, 20);

    /** Usual {@link #slopeDeg}. */
    public static final Usual USUAL_SLOPE = SLOPE.usually(0, "a flat roof");

    /** Usual {@link #parapetM}. */
    public static final Usual USUAL_PARAPET = PARAPET.usually(0, "no parapet");

    /** Usual {@link #edgeDistanceM}. */
    public static final Usual USUAL_EDGE_DISTANCE =
            EDGE_DISTANCE.usually(1, "common practice, no source; local codes decide");

    /** The steepest fall of what still counts as a flat roof, degrees; own choice. */
    public static final double FLAT_UP_TO_DEG = 5;

    /** The most obstacles on one surface; own choice. */
    public static final int MOST_OBSTACLES = 200;

    /** Checks every range and keeps its own copy of the list. */
    public Surface {
        AZIMUTH.check(azimuthDeg);
        SLOPE.check(slopeDeg);
        Roof.HEIGHT.check(heightM);
        PARAPET.check(parapetM);
        EDGE_DISTANCE.check(edgeDistanceM);
        if (obstacles.size() > MOST_OBSTACLES) {
            throw new IllegalArgumentException("surface \"" + name + "\" has " + obstacles.size()
                    + " obstacles; allowed: at most " + MOST_OBSTACLES);
        }
        obstacles = List.copyOf(obstacles);
    }

    /** A flat surface without obstacles or parapet, at the usual distance from its edge. */
    public static Surface flat(String name, Outline outline, double azimuthDeg, double heightM) {
        return new Surface(
                name,
                outline,
                azimuthDeg,
                USUAL_SLOPE.value(),
                heightM,
                USUAL_PARAPET.value(),
                USUAL_EDGE_DISTANCE.value(),
                List.of());
    }

    /** The same surface with other obstacles. */
    public Surface withObstacles(List<Obstacle> value) {
        return new Surface(name, outline, azimuthDeg, slopeDeg, heightM, parapetM, edgeDistanceM, value);
    }

    /** The same surface without a parapet, its obstacles level with it. */
    Surface withoutHeights() {
        List<Obstacle> flat = obstacles.stream()
                .map(one -> new Obstacle(one.name(), one.shape(), 0, one.clearanceM()))
                .toList();
        return new Surface(name, outline, azimuthDeg, slopeDeg, heightM, 0, edgeDistanceM, flat);
    }

    /** The same surface with another distance from its edges, m. */
    public Surface withEdgeDistanceM(double value) {
        return new Surface(name, outline, azimuthDeg, slopeDeg, heightM, parapetM, value, obstacles);
    }

    /** Whether mats and racks can be on it as on a flat roof. */
    public boolean isFlat() {
        return slopeDeg <= FLAT_UP_TO_DEG;
    }

    /**
     * The direction that panels and banks are laid along, degrees anticlockwise from the x axis: on a flat roof that of
     * its longest edge, on a pitched one the eaves.
     */
    public double alongDeg() {
        return isFlat() ? outline.longestEdgeDeg() : 0;
    }

    /** The lines that panels stay inside of, at the distance from the edges; none where nothing is left. */
    public List<List<RoofPoint>> insideEdges() {
        return Shapes.inside(outline, edgeDistanceM);
    }

    /** The compass direction of a direction on the surface, degrees clockwise from north, 0 to below 360. */
    public double compassDeg(double surfaceDeg) {
        return turn(azimuthDeg + 270 - surfaceDeg);
    }

    /**
     * The direction that rows run along which face a compass direction, degrees anticlockwise from the x axis; they stand
     * one behind the other to the left of it.
     */
    public double rowsAlongDeg(double facingDeg) {
        return turn(azimuthDeg - facingDeg);
    }

    /**
     * The direction square to one of the layout's lines that is nearest to a wanted one, degrees clockwise from north:
     * what racks face that stand parallel to the roof's edges.
     */
    public double squareFacingDeg(double wantedDeg) {
        double along = compassDeg(alongDeg());
        double skew = turn(wantedDeg - along);
        return turn(along + 90 * Math.rint(skew / 90));
    }

    private static double turn(double degrees) {
        double turned = degrees % 360;
        return turned < 0 ? turned + 360 : turned;
    }
}
