package dev.warmlane.weather;

/**
 * From easting and northing of a Lambert conic conformal projection with two standard parallels to latitude and longitude:
 * IOGP guidance note 7-2, method EPSG 9802. Angles in radians; lengths in one unit, that of the semi-major axis.
 */
final class LambertConic {

    /** Latitude turns in a handful of steps to the last digit. */
    private static final int STEPS = 12;

    private final double e;
    private final double n;
    private final double radiusPerT;
    private final double falseRadius;
    private final double longitude;
    private final double easting;
    private final double northing;

    private LambertConic(
            double semiMajor,
            double inverseFlattening,
            double[] parallels,
            double latitude,
            double longitude,
            double easting,
            double northing) {
        double f = 1 / inverseFlattening;
        this.e = Math.sqrt(2 * f - f * f);
        double m1 = m(parallels[0]);
        double m2 = m(parallels[1]);
        double t1 = t(parallels[0]);
        this.n = (Math.log(m1) - Math.log(m2)) / (Math.log(t1) - Math.log(t(parallels[1])));
        this.radiusPerT = semiMajor * m1 / (n * Math.pow(t1, n));
        this.falseRadius = radiusPerT * Math.pow(t(latitude), n);
        this.longitude = longitude;
        this.easting = easting;
        this.northing = northing;
    }

    /**
     * A projection by its parameters, angles in degrees.
     *
     * @param parallelsDeg the two standard parallels
     * @param latitudeDeg latitude of the false origin
     * @param longitudeDeg longitude of the false origin
     * @param easting at the false origin
     * @param northing at the false origin
     */
    static LambertConic of(
            double semiMajor,
            double inverseFlattening,
            double[] parallelsDeg,
            double latitudeDeg,
            double longitudeDeg,
            double easting,
            double northing) {
        double[] parallels = {Math.toRadians(parallelsDeg[0]), Math.toRadians(parallelsDeg[1])};
        return new LambertConic(
                semiMajor,
                inverseFlattening,
                parallels,
                Math.toRadians(latitudeDeg),
                Math.toRadians(longitudeDeg),
                easting,
                northing);
    }

    /** ETRS89-extended / LCC Europe, EPSG 3034, in metres: parallels 35 and 65, origin 52 north 10 east (from memory). */
    static LambertConic europe() {
        return of(6_378_137, 298.257222101, new double[] {35, 65}, 52, 10, 4_000_000, 2_800_000);
    }

    /** Latitude and longitude, degrees. */
    double[] degrees(double east, double north) {
        double x = east - easting;
        double y = falseRadius - (north - northing);
        double radius = Math.copySign(Math.hypot(x, y), n);
        double t = Math.pow(radius / radiusPerT, 1 / n);
        double latitude = Math.PI / 2 - 2 * Math.atan(t);
        for (int i = 0; i < STEPS; i++) {
            double sine = e * Math.sin(latitude);
            latitude = Math.PI / 2 - 2 * Math.atan(t * Math.pow((1 - sine) / (1 + sine), e / 2));
        }
        return new double[] {Math.toDegrees(latitude), Math.toDegrees(Math.atan2(x, y) / n + longitude)};
    }

    private double m(double latitude) {
        double sine = e * Math.sin(latitude);
        return Math.cos(latitude) / Math.sqrt(1 - sine * sine);
    }

    private double t(double latitude) {
        double sine = e * Math.sin(latitude);
        return Math.tan(Math.PI / 4 - latitude / 2) / Math.pow((1 - sine) / (1 + sine), e / 2);
    }
}
