package dev.warmlane.collector;

import dev.warmlane.physics.Constants;
import dev.warmlane.units.Checks;

/**
 * What a collector that stands alone meets at a moment, as a test stand measures it.
 *
 * @param light light on its front
 * @param longWaveWm2 long-wave that arrives at its front from sky and ground, W/m², 50 to 1,000
 * @param airC temperature of the air, °C, -60 to 60
 * @param windMs wind along its front, m/s, 0 to 50
 */
public record CollectorMoment(PlaneLight light, double longWaveWm2, double airC, double windMs) {

    /** Checks every range. */
    public CollectorMoment {
        Checks.within("long-wave on the front", longWaveWm2, 50, 1000, "W/m2");
        Checks.within("air temperature", airC, -60, 60, "degC");
        Checks.within("wind along the front", windMs, 0, 50, "m/s");
    }

    /** Long-wave that arrives more than a black surface as warm as the air would send, L − σTa⁴, W/m²; mostly negative. */
    public double netLongWaveWm2() {
        return longWaveWm2 - Constants.blackBody(airC);
    }
}
