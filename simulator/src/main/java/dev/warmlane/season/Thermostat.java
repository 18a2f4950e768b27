package dev.warmlane.season;

import dev.warmlane.units.Units;

/**
 * A heater that keeps its set point as far as its capacity reaches. A pure function of the moment.
 *
 * @param setPointC the set point, °C; minus infinite where there is no heater
 * @param capacityWm2 the most it gives, W per m² of water
 */
record Thermostat(double setPointC, double capacityWm2) {

    /** No heater, or one that rests. */
    static final Thermostat OFF = new Thermostat(Double.NEGATIVE_INFINITY, 0);

    /** A heater that keeps a set point, °C, with heat of so many kW; it rests where it has none. */
    static Thermostat of(double setPointC, double capacityKw, double poolAreaM2) {
        return capacityKw > 0 ? new Thermostat(setPointC, Units.watts(capacityKw) / poolAreaM2) : OFF;
    }

    /** What it gives whatever else flows, W/m²: everything below the set point, nothing at or above it. */
    double regardlessWm2(double waterC) {
        return waterC < setPointC ? capacityWm2 : 0;
    }

    /**
     * What it gives, W/m². At the set point just what is missing: strictly between nothing and all it has the water stays
     * as it is; if all it has is not enough it is exhausted, and the water cools.
     *
     * @param waterC water temperature, °C
     * @param othersWm2 what else flows into the water, W/m²
     */
    double heatWm2(double waterC, double othersWm2) {
        return waterC == setPointC ? Math.max(0, Math.min(capacityWm2, -othersWm2)) : regardlessWm2(waterC);
    }

    /** Whether it holds the water where it is with this much heat. */
    boolean holds(double waterC, double heatWm2) {
        return waterC == setPointC && heatWm2 > 0 && heatWm2 < capacityWm2;
    }
}
