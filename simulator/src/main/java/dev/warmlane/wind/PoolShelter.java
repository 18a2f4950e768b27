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

    private static final double[] FACTORS = {0, SHELTERED.factor, SUBURBAN.factor, EXPOSED.factor};

    private final double factor;

    PoolShelter(double factor) {
        this.factor = factor;
    }

    /** Wind at the water over wind of the station. */
    public double factor() {
        return factor;
    }

    /**
     * The wind factor of surroundings one step more open than those of a factor. The steps are the three above; below the
     * most sheltered and beyond the most open one they go on in the same proportions, halved and by a third, which is our
     * own choice, and between them the way there is straight.
     *
     * @param of a wind factor, 0 or more
     */
    public static double moreOpen(double of) {
        for (int i = 1; i < FACTORS.length; i++) {
            if (of <= FACTORS[i]) {
                return straight(of, FACTORS[i - 1], FACTORS[i], step(i - 1), step(i));
            }
        }
        return of * step(FACTORS.length - 1) / EXPOSED.factor;
    }

    /** The wind factor from which {@link #moreOpen} leads to another: that of surroundings one step more sheltered. */
    public static double moreSheltered(double of) {
        for (int i = 1; i < FACTORS.length; i++) {
            if (of <= step(i)) {
                return straight(of, step(i - 1), step(i), FACTORS[i - 1], FACTORS[i]);
            }
        }
        return of * EXPOSED.factor / step(FACTORS.length - 1);
    }

    /** What one of the steps becomes when it is one more open. */
    private static double step(int i) {
        return i == 0 ? 0 : i + 1 < FACTORS.length ? FACTORS[i + 1] : EXPOSED.factor * EXPOSED.factor / SUBURBAN.factor;
    }

    private static double straight(double x, double x0, double x1, double y0, double y1) {
        return y0 + (x - x0) / (x1 - x0) * (y1 - y0);
    }
}
