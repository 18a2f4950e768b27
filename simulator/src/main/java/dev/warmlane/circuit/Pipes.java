package dev.warmlane.circuit;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * Supply and return pipe of one collector circuit, and its pump.
 *
 * @param heatLossWK heat loss conductance of both pipes to the air, W/K; lost only while running
 * @param pumpPowerW electrical power of the pump that the collectors need on top of what the pool's filter needs, W
 */
public record Pipes(double heatLossWK, double pumpPowerW) {

    /** Range of {@link #heatLossWK}. */
    public static final Range HEAT_LOSS = Range.of("pipe heat loss", Dimension.CONDUCTANCE, 0, 5000);

    /** Range of {@link #pumpPowerW}. */
    public static final Range PUMP_POWER = Range.of("pump power", Dimension.POWER, 0, 100_000);

    /** No loss and no extra pump. */
    public static final Pipes NONE = new Pipes(0, 0);

    /** Checks every range. */
    public Pipes {
        HEAT_LOSS.check(heatLossWK);
        PUMP_POWER.check(pumpPowerW);
    }

    /** The same pipes with a pump of another power, W. */
    public Pipes withPumpPowerW(double value) {
        return new Pipes(heatLossWK, value);
    }

    /** The same pipes with another heat loss, W/K. */
    public Pipes withHeatLossWK(double value) {
        return new Pipes(value, pumpPowerW);
    }
}
