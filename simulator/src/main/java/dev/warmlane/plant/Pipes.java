package dev.warmlane.plant;

import dev.warmlane.units.Checks;

/**
 * Supply and return pipe of one collector circuit, and its pump.
 *
 * @param heatLossWK heat loss conductance of both pipes to the air, W/K, 0 to 5000; lost only while running
 * @param pumpPowerW electrical power of the pump that the collectors need on top of what the pool's filter needs, W, 0
 *     to 100000
 */
public record Pipes(double heatLossWK, double pumpPowerW) {

    /** No loss and no extra pump. */
    public static final Pipes NONE = new Pipes(0, 0);

    /** Checks every range. */
    public Pipes {
        Checks.within("pipe heat loss", heatLossWK, 0, 5000, "W/K");
        Checks.within("pump power", pumpPowerW, 0, 100_000, "W");
    }

    /** The same pipes with another heat loss, W/K. */
    public Pipes withHeatLossWK(double value) {
        return new Pipes(value, pumpPowerW);
    }
}
