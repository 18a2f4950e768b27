package dev.warmlane.wind;

import dev.warmlane.units.Checks;

/**
 * How much of the station's wind arrives at the water: wind at 0.3 m above the surface over wind at 10 m in the open.
 * The factor already holds the terrain, so it is never combined with {@link WindProfile}. It is the largest uncertainty
 * of an outdoor pool: vary it.
 *
 * @param factor surface wind over station wind, dimensionless, 0 to 1
 */
public record PoolShelter(double factor) {

    /** Height above the water that the factor refers to, m. */
    public static final double HEIGHT_M = 0.3;

    /** Well sheltered by buildings, walls, hedges: 0.15 (ISO/TR 12596:1995, from memory). */
    public static final PoolShelter SHELTERED = new PoolShelter(0.15);

    /** Normal suburban surroundings: 0.30 (ISO/TR 12596:1995, from memory). */
    public static final PoolShelter SUBURBAN = new PoolShelter(0.30);

    /**
     * Open ground without obstacles: 0.40, from the logarithmic profile ln(0.3/z0) / ln(10/z0) with a roughness length
     * z0 of 0.03 m, short grass.
     */
    public static final PoolShelter OPEN = new PoolShelter(0.40);

    /** Checks the range. */
    public PoolShelter {
        Checks.within("pool shelter factor", factor, 0, 1, "");
    }

    /**
     * Wind at the water surface, m/s.
     *
     * @param stationWindMs wind of the weather station at 10 m, m/s
     */
    public double surfaceWindMs(double stationWindMs) {
        return factor * stationWindMs;
    }
}
