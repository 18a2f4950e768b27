package dev.warmlane.irradiance;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;

/** The sun seen from the side of rows of racks, in each hour of a year. Immutable. */
public final class RowShading {

    private final double[] profileDeg = new double[HourOfYear.HOURS];
    private final double[] shadedShare = new double[HourOfYear.HOURS];

    private RowShading(SunPath sun, RackRows rows) {
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (sun.isUp(hour)) {
                profileDeg[hour] = rows.profileDeg(sun.zenithDeg(hour), sun.azimuthDeg(hour));
                shadedShare[hour] = rows.shadedShare(profileDeg[hour]);
            }
        }
    }

    /** The year of a sun path over rows of racks. */
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
