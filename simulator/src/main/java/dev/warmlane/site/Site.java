package dev.warmlane.site;

import dev.warmlane.units.Checks;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * Where the installation and its weather are.
 *
 * @param name what the place is called; empty where nobody says
 * @param latitudeDeg latitude, degrees, north positive, -90 to 90
 * @param longitudeDeg longitude, degrees, east positive, -180 to 180
 * @param elevationM height above sea level, m, -500 to 6000
 * @param utcOffsetHours local standard time minus UTC, hours; never daylight saving time
 */
public record Site(String name, double latitudeDeg, double longitudeDeg, double elevationM, double utcOffsetHours) {

    /** Range of {@link #utcOffsetHours}. */
    public static final Range UTC_OFFSET = Range.of("UTC offset", Dimension.DURATION, "h", -12, 14);

    /** Checks every range. */
    public Site {
        Checks.within("latitude", latitudeDeg, -90, 90, "degrees");
        Checks.within("longitude", longitudeDeg, -180, 180, "degrees");
        Checks.within("elevation", elevationM, -500, 6000, "m");
        UTC_OFFSET.check(utcOffsetHours);
    }

    /** Whether the site lies south of the equator, where the season crosses New Year. */
    public boolean southern() {
        return latitudeDeg < 0;
    }
}
