package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** What the geometry library does for the roof. It is known here and nowhere else. */
final class Shapes {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Square corners: a rounded one would be drawn by chords that cut it short. */
    private static final BufferParameters SQUARE = new BufferParameters(
            BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
            BufferParameters.CAP_FLAT,
            BufferParameters.JOIN_MITRE,
            BufferParameters.DEFAULT_MITRE_LIMIT);

    /** What may be missing of a distance, m. */
    private static final double EXACT_M = 1e-9;

    static {
        // the library would straighten an outline by a hundredth of the distance before it begins
        SQUARE.setSimplifyFactor(0);
    }

    private Shapes() {}

    /** Whether no edge crosses or touches another. */
    static boolean isSimple(List<RoofPoint> corners) {
        return polygon(corners).isValid();
    }

    /**
     * What is left of an outline at a distance from all its edges, as rings of corners; none where nothing is. Inner
     * corners stay square, so that it may be a little less than what lies at the distance.
     */
    static List<List<RoofPoint>> inside(Outline outline, double distanceM) {
        Geometry left = atDistance(polygon(outline.corners()), -1, distanceM);
        List<List<RoofPoint>> rings = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            if (left.getGeometryN(i) instanceof Polygon part && !part.isEmpty()) {
                rings.add(ring(part));
            }
        }
        return rings;
    }

    /** An outline with a margin around it; its corners stay square. */
    static List<RoofPoint> around(Outline outline, double marginM) {
        return ring((Polygon) atDistance(polygon(outline.corners()), 1, marginM));
    }

    /** The corners of the smallest shape without hollows around places, in their order; two coordinates each. */
    static double[][] hull(List<double[]> places) {
        Coordinate[] all =
                places.stream().map(place -> new Coordinate(place[0], place[1])).toArray(Coordinate[]::new);
        Coordinate[] closed = new ConvexHull(all, FACTORY).getConvexHull().getCoordinates();
        return Arrays.stream(closed)
                .limit(closed.length - 1L)
                .map(corner -> new double[] {corner.x, corner.y})
                .toArray(double[][]::new);
    }

    /**
     * The library joins nearly straight edges short of their corner, by up to a thousandth of the distance: what comes out
     * too near is made again with what is missing.
     */
    private static Geometry atDistance(Polygon polygon, int outwards, double distanceM) {
        Geometry drawn = BufferOp.bufferOp(polygon, outwards * distanceM, SQUARE);
        if (drawn.isEmpty()) {
            return drawn;
        }
        double missing = distanceM - drawn.getBoundary().distance(polygon.getExteriorRing());
        return missing > EXACT_M ? BufferOp.bufferOp(polygon, outwards * (distanceM + missing), SQUARE) : drawn;
    }

    private static List<RoofPoint> ring(Polygon polygon) {
        Coordinate[] closed = polygon.getExteriorRing().getCoordinates();
        List<RoofPoint> corners = new ArrayList<>();
        for (int i = 0; i < closed.length - 1; i++) {
            corners.add(new RoofPoint(closed[i].x, closed[i].y));
        }
        return corners;
    }

    private static Polygon polygon(List<RoofPoint> corners) {
        Coordinate[] closed = new Coordinate[corners.size() + 1];
        for (int i = 0; i < closed.length; i++) {
            RoofPoint corner = corners.get(i % corners.size());
            closed[i] = new Coordinate(corner.xM(), corner.yM());
        }
        return FACTORY.createPolygon(closed);
    }
}
