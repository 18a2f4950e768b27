package dev.warmlane.wind;

import dev.warmlane.site.Terrain;
import dev.warmlane.units.Checks;

/** The wind at a height above the ground of a site, from the wind that a weather station measures. */
public final class WindProfile {

    /** Height of the anemometer of a weather station, m. */
    public static final double STATION_HEIGHT_M = 10;

    private static final double STATION_FACTOR = power(Terrain.OPEN, STATION_HEIGHT_M);

    private WindProfile() {}

    /**
     * Wind at the height over that at the station (10 m above open ground), dimensionless: (δ_met/H_met)^a_met (H/δ)^a,
     * ASHRAE Handbook of Fundamentals, chapter "Airflow Around Buildings" (from memory). Above the boundary layer the
     * wind no longer grows, so the height enters no larger than its thickness. Not for the water surface of a pool:
     * that is {@link PoolShelter}.
     *
     * @param terrain the ground around the site
     * @param heightM height above the ground, m, 0.1 to 1000
     * @throws IllegalArgumentException if the height lies outside its range
     */
    public static double ratio(Terrain terrain, double heightM) {
        Checks.within("height above the ground", heightM, 0.1, 1000, "m");
        return power(terrain, heightM) / STATION_FACTOR;
    }

    private static double power(Terrain terrain, double heightM) {
        return Math.pow(Math.min(heightM, terrain.layerM()) / terrain.layerM(), terrain.exponent());
    }
}
