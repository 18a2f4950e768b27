package dev.warmlane.roof;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A closed shape with straight edges: its corners in order, the last joined to the first. Kept anticlockwise, whichever
 * way round it was given; the first corner stays the first.
 *
 * @param corners 3 to 200 corners, no edge crossing or touching another
 */
public record Outline(List<RoofPoint> corners) {

    /** Range of the number of corners. */
    public static final Range CORNERS = Range.number("corners of an outline", 3, 200);

    /** Range of the area inside. */
    public static final Range AREA = Range.of("area of an outline", Dimension.AREA, 0.0001, 250_000);

    /** Edges whose lengths differ by less count as equally long, m. */
    private static final double SAME_LENGTH_M = 1e-6;

    /** Checks that there is an area inside and that edges do not cross. */
    public Outline {
        CORNERS.check(corners.size());
        if (!Shapes.isSimple(corners)) {
            throw new IllegalArgumentException("the edges of an outline cross or touch each other; give its corners in"
                    + " the order in which one walks around it, each once");
        }
        AREA.check(Math.abs(signedAreaM2(corners)));
        if (signedAreaM2(corners) < 0) {
            List<RoofPoint> turned = new ArrayList<>(corners);
            Collections.reverse(turned.subList(1, turned.size()));
            corners = turned;
        }
        corners = List.copyOf(corners);
    }

    /** A rectangle with a corner at the origin, m. */
    public static Outline rectangle(double lengthM, double widthM) {
        return rectangle(new RoofPoint(0, 0), lengthM, widthM);
    }

    /** A rectangle along the axes from its corner with the least coordinates, m. */
    public static Outline rectangle(RoofPoint corner, double lengthM, double widthM) {
        double right = corner.xM() + lengthM;
        double top = corner.yM() + widthM;
        return new Outline(List.of(
                corner, new RoofPoint(right, corner.yM()), new RoofPoint(right, top), new RoofPoint(corner.xM(), top)));
    }

    /** Area inside, m². */
    public double areaM2() {
        return signedAreaM2(corners);
    }

    /** Direction of the first of the longest edges, degrees anticlockwise from the x axis, 0 to below 360. */
    public double longestEdgeDeg() {
        double longest = 0;
        double direction = 0;
        for (int i = 0; i < corners.size(); i++) {
            RoofPoint from = corners.get(i);
            RoofPoint to = corners.get((i + 1) % corners.size());
            double length = from.distanceM(to);
            if (length > longest + SAME_LENGTH_M) {
                longest = length;
                direction = Math.toDegrees(Math.atan2(to.yM() - from.yM(), to.xM() - from.xM()));
            }
        }
        return direction < 0 ? direction + 360 : direction;
    }

    /** Whether a place lies inside, by the edges that a line from it to the right crosses. */
    public boolean holds(RoofPoint point) {
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            RoofPoint from = corners.get(i);
            RoofPoint to = corners.get((i + 1) % corners.size());
            if (from.yM() > point.yM() != to.yM() > point.yM()) {
                double along = (point.yM() - from.yM()) / (to.yM() - from.yM());
                inside ^= from.xM() + along * (to.xM() - from.xM()) > point.xM();
            }
        }
        return inside;
    }

    private static double signedAreaM2(List<RoofPoint> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            RoofPoint from = corners.get(i);
            RoofPoint to = corners.get((i + 1) % corners.size());
            twice += from.xM() * to.yM() - to.xM() * from.yM();
        }
        return twice / 2;
    }
}
