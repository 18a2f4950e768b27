package dev.warmlane.site;

import dev.warmlane.units.Checks;

/**
 * Where the installation and its weather are.
 *
 * @param name what the place is called
 * @param latitudeDeg latitude, degrees, north positive, -90 to 90
 * @param longitudeDeg longitude, degrees, east positive, -180 to 180
 * @param elevationM height above sea level, m, -500 to 6000
 * @param utcOffsetHours local standard time minus UTC, hours, -12 to 14; never daylight saving time
 */
public record Site(String name, double latitudeDeg, double longitudeDeg, double elevationM, double utcOffsetHours) {

    /** Checks every range. */
    public Site {
        Checks.within("latitude", latitudeDeg, -90, 90, "degrees");
        Checks.within("longitude", longitudeDeg, -180, 180, "degrees");
        Checks.within("elevation", elevationM, -500, 6000, "m");
        Checks.within("UTC offset", utcOffsetHours, -12, 14, "hours");
    }

    /** Whether the site lies south of the equator, where the season crosses New Year. */
    public boolean southern() {
        return latitudeDeg < 0;
    }
}
