package dev.warmlane.wind;

/**
 * How much of the station's wind arrives at the water: wind at 0.3 m above the surface over wind at 10 m in the open.
 * The factor already holds the terrain, so it is never combined with {@link WindProfile}. It is the largest uncertainty
 * of an outdoor pool: vary it.
 */
public enum PoolShelter {
    /** Well sheltered by buildings, walls, hedges: 0.15 (ISO/TR 12596:1995, from memory). */
    SHELTERED(0.15),
    /** Normal suburban surroundings: 0.30 (ISO/TR 12596:1995, from memory). */
    SUBURBAN(0.30),
    /**
     * Open ground without obstacles: 0.40, from the logarithmic profile ln(0.3/z0) / ln(10/z0) with a roughness length
     * z0 of 0.03 m, short grass.
     */
    EXPOSED(0.40);

    private final double factor;

    PoolShelter(double factor) {
        this.factor = factor;
    }

    /** Wind at the water over wind of the station. */
    public double factor() {
        return factor;
    }
}
