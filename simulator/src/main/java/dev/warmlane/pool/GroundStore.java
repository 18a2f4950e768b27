package dev.warmlane.pool;

import java.util.stream.IntStream;

/**
 * Ground that touches a basin, takes up heat and gives it back late: a half-space of effusivity b = √(λρc), over hours to
 * months. The steady heat to the ground and its yearly swing are {@link GroundLoss}'s.
 *
 * <p>A half-space takes b·√(iω) for each kelvin that its face swings with the frequency ω (Carslaw and Jaeger, Conduction of
 * Heat in Solids, from memory). With √(iω) = (1/π)·∫ s^(−1/2)·iω/(iω + s) ds that is a row of stores side by side, each
 * behind a resistance of its own: store k of rate s = s₀·4^k has the conductance b·ln 4·√s/π and the capacity that over
 * s (derived; over a day and more it is within 2 % of the half-space). The slowest turns over in a year, since what is slower
 * is the steady heat; stores too fast for an hour are in step with the water and added to it.
 */
public enum GroundStore {
    /** Clay or silt; ISO 13370, from memory. */
    CLAY(1.5, 3.0e6),
    /** Sand or gravel; ISO 13370, from memory. */
    SAND(2.0, 2.0e6),
    /** Homogeneous rock; ISO 13370, from memory. */
    ROCK(3.5, 2.0e6);

    /** Each store is so many times faster than the one before; own choice, for the accuracy that is stated. */
    private static final double RATIO = 4;

    /** Rate of the slowest, a year's swing, 1/s. */
    private static final double SLOWEST = 2 * Math.PI / (365 * 86_400.0);

    /** The last has a rate of 1/4900 s; the next would pass in a third of an hour. */
    private static final int STORES = 6;

    private final double effusivity;

    GroundStore(double conductivityWmK, double heatJm3K) {
        this.effusivity = Math.sqrt(conductivityWmK * heatJm3K);
    }

    /** Rates of the stores, 1/s, slowest first. */
    public double[] rates() {
        return IntStream.range(0, STORES).mapToDouble(GroundStore::rate).toArray();
    }

    /** Conductance between the face and each store, W per m² of face and K, slowest first. */
    public double[] conductancesWm2K() {
        return IntStream.range(0, STORES)
                .mapToDouble(k -> effusivity * Math.log(RATIO) * Math.sqrt(rate(k)) / Math.PI)
                .toArray();
    }

    /** Capacity of all that is too fast for a store of its own, J per m² of face and K: it is as warm as the water. */
    public double inStepJm2K() {
        // Σ of 1/√s over the faster ones, each half of the one before
        return effusivity * Math.log(RATIO) / Math.PI / Math.sqrt(rate(STORES)) / (1 - 1 / Math.sqrt(RATIO));
    }

    private static double rate(int store) {
        return SLOWEST * Math.pow(RATIO, store);
    }

    /** Face between a pool and the ground for each m² of its water: the floor, and walls that do not stand in the air. */
    static double faceShare(Pool pool) {
        double walls = pool.walls().isPresent() ? 0 : GroundLoss.perimeterM(pool.areaM2()) * pool.depthM();
        return 1 + walls / pool.areaM2();
    }
}
