package dev.warmlane.weather;

import dev.warmlane.site.Site;

/** How far apart two places are. */
final class Distance {

    /** Mean radius of the earth, km (IUGG 1980, from memory). */
    private static final double EARTH_RADIUS_KM = 6371.009;

    private Distance() {}

    /** Along the great circle, km, by the haversine formula, which is good for small distances too. */
    static double km(Site a, Site b) {
        double north = Math.toRadians(a.latitudeDeg() - b.latitudeDeg());
        double east = Math.toRadians(a.longitudeDeg() - b.longitudeDeg());
        double h = square(Math.sin(north / 2))
                + Math.cos(Math.toRadians(a.latitudeDeg()))
                        * Math.cos(Math.toRadians(b.latitudeDeg()))
                        * square(Math.sin(east / 2));
        return 2 * EARTH_RADIUS_KM * Math.asin(Math.sqrt(Math.min(1, h)));
    }

    private static double square(double x) {
        return x * x;
    }
}
