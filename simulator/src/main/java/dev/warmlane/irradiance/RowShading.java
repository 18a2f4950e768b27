package dev.warmlane.irradiance;

import dev.warmlane.sun.SunPath;

/** The sun seen from the side of rows of racks, in each hour. Immutable. */
public final class RowShading {

    private final double[] profileDeg;
    private final double[] shadedShare;

    private RowShading(SunPath sun, RackRows rows) {
        int hours = sun.hours();
        this.profileDeg = new double[hours];
        this.shadedShare = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            if (sun.isUp(hour)) {
                profileDeg[hour] = rows.profileDeg(sun.zenithDeg(hour), sun.azimuthDeg(hour));
                shadedShare[hour] = rows.shadedShare(profileDeg[hour]);
            }
        }
    }

    /** The hours of a sun path over rows of racks. */
    public static RowShading of(SunPath sun, RackRows rows) {
        return new RowShading(sun, rows);
    }

    /** The profile angle, degrees, 0 to 180; 0 while the sun is down. */
    public double profileDeg(int hour) {
        return profileDeg[hour];
    }

    /**
     * Share of an interior plate's height that its neighbour shades, of the face the sun stands on, 0 to 1; 0 while the
     * sun is down.
     */
    public double shadedShare(int hour) {
        return shadedShare[hour];
    }
}
