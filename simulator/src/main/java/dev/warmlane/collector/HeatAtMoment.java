package dev.warmlane.collector;

import dev.warmlane.physics.Water;
import dev.warmlane.units.Checks;

/**
 * The steady heat of a collector that stands alone, at one moment and outside any year: what measurements are held against.
 * A certificate answers as it was tested; an absorber answers on a {@link FreePlate}. How a collector answers that warms up or
 * cools down, {@link WarmingCollector} tells.
 */
public interface HeatAtMoment {

    /**
     * Heat per m² of collector, W/m²; negative where it cools the water.
     *
     * @param at what it meets
     * @param meanC mean temperature of the water in it, °C
     */
    double heatAtMeanWm2(CollectorMoment at, double meanC);

    /**
     * The same with water entering at a temperature. The mean lies half the rise above the inlet; heat must not rise with the
     * mean, which no collector's does, and the answer is then the only one.
     *
     * @param at what it meets
     * @param inletC temperature of the water that enters, °C
     * @param flowKgSM2 flow, kg/s per m² of collector, above 0
     */
    default double heatAtInletWm2(CollectorMoment at, double inletC, double flowKgSM2) {
        double halfRise = 2 * capacityFlowWm2K(flowKgSM2);
        double one = heatAtMeanWm2(at, inletC);
        double low = Math.min(0, one);
        double high = Math.max(0, one);
        // what is drawn from water as warm as it entered is the most, nothing the least: halved in between
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if (heatAtMeanWm2(at, inletC + middle / halfRise) > middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Heat that a flow of water carries per kelvin, W/m²K.
     *
     * @param flowKgSM2 kg/s per m² of collector, above 0 and up to 1
     */
    static double capacityFlowWm2K(double flowKgSM2) {
        return Checks.within("flow", flowKgSM2, 1e-6, 1, "kg/s per m2") * Water.specificHeatJKgK(25);
    }
}
