package dev.warmlane.circuit;

import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.physics.Constants;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.Optional;

/**
 * The pump that drives the collectors' circuit, or whose share of driving it is counted.
 *
 * @param efficiency hydraulic power over electric power, motor and pump together
 * @param curve its head over its flow; nothing for a pump that is chosen to give just what the circuit takes
 */
public record PumpChoice(double efficiency, Optional<PumpCurve> curve) {

    /** Range of {@link #efficiency}. */
    public static final Range EFFICIENCY = Range.share("efficiency of pump and motor", 0.02, 0.9);

    /** Usual {@link #efficiency}. */
    public static final Usual USUAL_EFFICIENCY =
            EFFICIENCY.usually(0.4, "pool pumps of a few hundred watts and more, common practice, no source");

    /** Checks every range. */
    public PumpChoice {
        EFFICIENCY.check(efficiency);
    }

    /**
     * The head that the pump gives while a flow runs, m: that of its curve, of which a valve throttles what the circuit does
     * not take; where it has none, or cannot give so much, that of a pump chosen for the circuit.
     *
     * @param flowM3S flow of volume, m³/s
     * @param circuitM head that the circuit takes, m
     */
    public double headM(double flowM3S, double circuitM) {
        return curve.map(known -> Math.max(circuitM, known.headM(flowM3S).orElse(circuitM)))
                .orElse(circuitM);
    }

    /** Electric power for a flow, m³/s, of a density, kg/m³, against a head, m; in W. */
    public double powerW(double flowM3S, double densityKgM3, double headM) {
        return flowM3S * densityKgM3 * Constants.GRAVITY * headM / efficiency;
    }
}
