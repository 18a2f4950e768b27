package dev.warmlane.plant;

import dev.warmlane.units.Checks;

/**
 * A gas heater that keeps the pool at a set point in the open season as far as its capacity reaches.
 *
 * @param fuel what it burns
 * @param efficiency heat to the water over higher heating value burned, 0.3 to 1. United States minimum: 0.78 (1990),
 *     0.82 (2013)
 * @param capacityKw heat to the water at full load, kW, 1 to 20000
 * @param setPointC the pool temperature it keeps, °C, 10 to 40
 */
public record GasHeater(Fuel fuel, double efficiency, double capacityKw, double setPointC) {

    /** Checks every range. The upper limit of the set point is that for bathing water, 40 °C. */
    public GasHeater {
        Checks.within("heater efficiency", efficiency, 0.3, 1, "");
        Checks.within("heater capacity", capacityKw, 1, 20_000, "kW");
        Checks.within("heater set point", setPointC, 10, 40, "degC");
    }
}
