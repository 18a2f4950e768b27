package dev.warmlane.plant;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Checks;

/**
 * Differential control of the collector circuit.
 *
 * @param onDifferenceK the pump starts when the dry plate would be this much warmer than the pool, K, 0.5 to 20
 * @param offDifferenceK the pump stops when the water warms by less than this on its way through the collectors, or is
 *     less than this warmer than the pool when it comes back through the pipes, K, 0.02 to 5. Running
 *     without hunting needs at most onDifferenceK·F_R·U_L/(m'c) (Duffie and Beckman §10.4, from memory), about a tenth
 *     of onDifferenceK
 * @param limitC the pool temperature at which the collectors stop giving heat, °C, 10 to 40
 * @param shedAboveC the pool temperature above which the circuit also runs to cool the water, when that would lose heat
 *     as surely as it gains heat by day; at least {@code limitC}, infinite for never
 * @param pumping hours in which the circuit may run: 1 it may, 0 it may not
 */
public record Control(double onDifferenceK, double offDifferenceK, double limitC, double shedAboveC, Schedule pumping) {

    /** Default start difference, K; common practice, no source. */
    public static final double USUAL_ON_K = 4;

    /**
     * Default stop difference, K: small enough that the pair hunts in calm hours only, which costs under 1 % of a season's
     * heat.
     */
    public static final double USUAL_OFF_K = 0.3;

    /** Checks every range. The upper limit is that for bathing water, 40 °C (US CPSC; WHO 2006). */
    public Control {
        Checks.within("start difference", onDifferenceK, 0.5, 20, "K");
        Checks.within("stop difference", offDifferenceK, 0.02, 5, "K");
        Checks.within("solar limit temperature", limitC, 10, 40, "degC");
        if (!(shedAboveC >= limitC)) {
            throw new IllegalArgumentException(
                    "the temperature above which the circuit cools must be at least the solar" + " limit, " + limitC
                            + " degC, was " + shedAboveC);
        }
    }

    /** A control that never runs the circuit to cool. */
    public Control(double onDifferenceK, double offDifferenceK, double limitC, Schedule pumping) {
        this(onDifferenceK, offDifferenceK, limitC, Double.POSITIVE_INFINITY, pumping);
    }

    /** The same control, cooling the pool above a temperature, °C. */
    public Control sheddingAboveC(double value) {
        return new Control(onDifferenceK, offDifferenceK, limitC, value, pumping);
    }

    /** Default differences, pumping at any hour. */
    public static Control withLimit(double limitC) {
        return new Control(USUAL_ON_K, USUAL_OFF_K, limitC, Schedule.ALWAYS);
    }

    /** The same control with another stop difference, K. */
    public Control withOffDifferenceK(double value) {
        return new Control(onDifferenceK, value, limitC, shedAboveC, pumping);
    }
}
