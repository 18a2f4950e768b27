package dev.warmlane.irradiance;

/**
 * Something upright that hides sky from places beside it: a wall, a parapet, one side of a building, without thickness. It
 * stands on a straight line, reaches down as far as anybody looks, and its top runs straight from end to end. Lengths in m,
 * east, north and up from any origin.
 *
 * @param fromEastM where it begins
 * @param fromNorthM where it begins
 * @param fromTopM height of its top there
 * @param toEastM where it ends
 * @param toNorthM where it ends
 * @param toTopM height of its top there
 */
public record Wall(
        double fromEastM, double fromNorthM, double fromTopM, double toEastM, double toNorthM, double toTopM) {

    /** Nearer than this a place stands in the wall and sees over neither side, m. */
    private static final double TOUCHING_M = 1e-6;

    /**
     * How steeply one looks up to its top, m of height for each m of distance; 0 where the line of sight passes it by or its top is
     * lower.
     *
     * @param from where one looks from
     * @param sinAzimuth sine of the direction one looks in, clockwise from north
     * @param cosAzimuth cosine of it
     */
    double slope(Eye from, double sinAzimuth, double cosAzimuth) {
        double alongEast = toEastM - fromEastM;
        double alongNorth = toNorthM - fromNorthM;
        double east = fromEastM - from.eastM();
        double north = fromNorthM - from.northM();
        // from + t·sight = begin + u·along
        double crossed = sinAzimuth * alongNorth - cosAzimuth * alongEast;
        if (crossed == 0) {
            return 0;
        }
        double t = (east * alongNorth - north * alongEast) / crossed;
        double u = (east * cosAzimuth - north * sinAzimuth) / crossed;
        if (t < TOUCHING_M || u < 0 || u > 1) {
            return 0;
        }
        double above = fromTopM + u * (toTopM - fromTopM) - from.upM();
        return above > 0 ? above / t : 0;
    }

    /** A place that looks at the sky, m east, north and up. */
    public record Eye(double eastM, double northM, double upM) {}
}
