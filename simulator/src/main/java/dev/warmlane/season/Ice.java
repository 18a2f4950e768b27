package dev.warmlane.season;

import dev.warmlane.physics.Water;

/**
 * The ice on a pool that has come down to its freezing point. Water and ice stay at 0 °C together: what flows out freezes
 * water, what flows in melts ice, and only when none is left does the water warm. The ice covers the whole pool and takes sun as
 * the water would. While it grows its surface is colder than the water, and less flows out; while it melts its surface is
 * as warm. Mutable, for one thread.
 */
final class Ice {

    /** Where water freezes and ice melts, °C. */
    static final double FREEZING_C = 0;

    /** Thermal conductivity of ice at its melting point, W/mK; from memory of handbooks, which give 2.1 to 2.3. */
    static final double CONDUCTIVITY_WMK = 2.2;

    /** Density of ice at its melting point, kg/m³; from memory of handbooks. */
    static final double DENSITY_KG_M3 = 917;

    private double heatJm2;

    /** Heat that the ice has given off in freezing and takes to melt, J per m² of water. */
    double heatJm2() {
        return heatJm2;
    }

    /** Begins with some ice. */
    void set(double valueJm2) {
        heatJm2 = valueJm2;
    }

    /** How thick it is, m. */
    double thicknessM() {
        return heatJm2 / (DENSITY_KG_M3 * Water.FUSION_J_KG);
    }

    /**
     * What the ice leaves of a heat that would flow out of open water at the freezing point, 0 to 1. The surface cools until
     * as much flows to it through the ice, k/d·(0 − Ts), as leaves it, −(q + s·Ts): 1/(1 + |s|·d/k) of q (derived).
     *
     * @param slopeWm2K how the pool's flows change with its temperature, s, W/m²K; below 0
     */
    double lets(double slopeWm2K) {
        return 1 / (1 - slopeWm2K * thicknessM() / CONDUCTIVITY_WMK);
    }

    /**
     * Freezes or melts while a heat flows into water at its freezing point.
     *
     * @param waterC water temperature, °C; above freezing nothing happens
     * @param netWm2 what flows into the water, W/m²
     * @param seconds how long at most, s
     * @return how long the water stays at its freezing point, s: all the time while it freezes, until the ice is gone
     *     while it melts, and no time if there is none
     */
    double hold(double waterC, double netWm2, double seconds) {
        if (waterC > FREEZING_C) {
            return 0;
        }
        double held = netWm2 > 0 ? Math.min(seconds, heatJm2 / netWm2) : seconds;
        heatJm2 = held < seconds ? 0 : Math.max(0, heatJm2 - netWm2 * seconds);
        return held;
    }

    /** The heat of freezing all of some water, J/m². */
    static double allOfJm2(double depthM) {
        return depthM * Water.densityKgM3(FREEZING_C) * Water.FUSION_J_KG;
    }

    /** Refuses ice where there can be none. */
    static void checkHeat(double iceJm2, double waterC) {
        if (!(iceJm2 >= 0) || (iceJm2 > 0 && waterC > FREEZING_C)) {
            throw new IllegalArgumentException("heat of the ice must be 0 or above, and 0 in water above " + FREEZING_C
                    + " degC, was " + iceJm2 + " J/m2 in water of " + waterC + " degC");
        }
    }
}
