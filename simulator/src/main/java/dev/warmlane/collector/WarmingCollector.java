package dev.warmlane.collector;

import dev.warmlane.units.Checks;

/**
 * A collector whose plate and water hold heat, followed through minutes: C·dT/dt = q(T) − 2m′c(T − T_in), with T the mean
 * temperature of its water, q its steady heat at that mean, m′c(T_out − T_in) = 2m′c(T − T_in) the heat that the water carries
 * away, and C the effective capacity, the a5 of ISO 9806:2017 and c5 of EN 12975-2:2006. One store for plate and water: the
 * water in the pipes and the time it takes to pass are not in it.
 *
 * <p>Within a step conditions stand still and q is taken straight in T about the step's start, so that the step is an
 * exponential: exact for a certificate without squares, of second order otherwise. Energy closes in every step to that
 * straight line. Holds the temperature, so use one for a thread.
 */
public final class WarmingCollector {

    /** Half the span over which the slope of q is found, K. */
    private static final double SPAN_K = 0.05;

    private final HeatAtMoment steady;
    private final double capacityJM2K;
    private double meanC;

    /**
     * A collector at rest.
     *
     * @param steady its heat without capacity
     * @param capacityJM2K effective capacity C, J per m² of collector and kelvin, 100 to 1,000,000
     * @param meanC mean temperature of its water to begin with, °C, -50 to 150
     */
    public WarmingCollector(HeatAtMoment steady, double capacityJM2K, double meanC) {
        this.steady = steady;
        this.capacityJM2K = Checks.within("effective capacity", capacityJM2K, 100, 1_000_000, "J/m2K");
        this.meanC = Checks.within("mean temperature to begin with", meanC, -50, 150, "degC");
    }

    /** Mean temperature of its water now, °C. */
    public double meanC() {
        return meanC;
    }

    /**
     * Goes on by a step.
     *
     * @param at what it meets through the step
     * @param inletC temperature of the water that enters, °C
     * @param flowKgSM2 flow, kg/s per m² of collector, above 0
     * @param seconds length of the step, s, above 0
     * @return heat that the water carried away, mean of the step, W/m²
     */
    public double step(CollectorMoment at, double inletC, double flowKgSM2, double seconds) {
        Checks.within("length of a step", seconds, 1e-3, 86_400, "s");
        double carried = 2 * HeatAtMoment.capacityFlowWm2K(flowKgSM2);
        double slope =
                (steady.heatAtMeanWm2(at, meanC - SPAN_K) - steady.heatAtMeanWm2(at, meanC + SPAN_K)) / (2 * SPAN_K);
        double surplus = steady.heatAtMeanWm2(at, meanC) - carried * (meanC - inletC);
        double perSecond = (carried + slope) / capacityJM2K;
        double ends = surplus / (carried + slope);
        double passed = -Math.expm1(-perSecond * seconds);
        double meanOfStepC = meanC + ends * (1 - passed / (perSecond * seconds));
        meanC += ends * passed;
        return carried * (meanOfStepC - inletC);
    }
}
