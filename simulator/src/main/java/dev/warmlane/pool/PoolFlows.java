package dev.warmlane.pool;

/**
 * The heat flows of a pool at one water temperature in one hour, W per m² of water, positive into the water, and how each
 * changes with that temperature. Net and slope are the sums of what was put in, so that no kind can be left out of them. A
 * mutable holder that the hourly loop fills again and again, so that it allocates nothing; not for sharing between threads.
 */
public final class PoolFlows {

    private final double[] wm2 = new double[Flow.COUNT];
    private double net;
    private double slope;
    private double evaporatedKgSM2;

    /** Makes an empty holder. */
    public PoolFlows() {}

    /** Empties the sums; the kinds keep their last values until they are put again. */
    void begin() {
        net = 0;
        slope = 0;
    }

    /**
     * Puts in a kind, once after each evaluation.
     *
     * @param flow the kind
     * @param heatWm2 its heat, W/m²
     * @param slopeWm2K how that changes with the water's temperature, W/m²K
     */
    public void put(Flow flow, double heatWm2, double slopeWm2K) {
        wm2[flow.ordinal()] = heatWm2;
        net += heatWm2;
        slope += slopeWm2K;
    }

    /** Adds to a kind that was put in before, W/m² and W/m²K. */
    public void add(Flow flow, double heatWm2, double slopeWm2K) {
        wm2[flow.ordinal()] += heatWm2;
        net += heatWm2;
        slope += slopeWm2K;
    }

    void evaporated(double kgSM2) {
        evaporatedKgSM2 = kgSM2;
    }

    /** Heat of a kind, W/m². */
    public double wm2(Flow flow) {
        return wm2[flow.ordinal()];
    }

    /** Sum of all flows, W/m². */
    public double net() {
        return net;
    }

    /** How the sum changes with water temperature, W/m²K; below 0. */
    public double slope() {
        return slope;
    }

    /** Water evaporated, kg/m²s; never below 0. */
    public double evaporatedKgSM2() {
        return evaporatedKgSM2;
    }

    /**
     * Adds the heat of some seconds to an account with a cell for each kind, J/m².
     *
     * @param account where to
     * @param at the cell of the first kind
     * @param seconds how long the flows last, s
     */
    public void addTo(double[] account, int at, double seconds) {
        for (int flow = 0; flow < wm2.length; flow++) {
            account[at + flow] += wm2[flow] * seconds;
        }
    }
}
