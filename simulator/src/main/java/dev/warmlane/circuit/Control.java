package dev.warmlane.circuit;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * Differential control of the collector circuit.
 *
 * @param onDifferenceK the pump starts when the dry plate would be this much warmer than the pool, K
 * @param offDifferenceK the pump stops when the water warms by less than this on its way through the collectors, or is
 *     less than this warmer than the pool when it comes back through the pipes, K. Running
 *     without hunting needs at most onDifferenceK·F_R·U_L/(m'c) (Duffie and Beckman §10.4, from memory), about a tenth
 *     of onDifferenceK
 * @param limitC the pool temperature at which the collectors stop giving heat, °C
 * @param shedAboveC the pool temperature above which the circuit also runs to cool the water, when that would lose heat
 *     as surely as it gains heat by day; at least {@code limitC}, infinite for never
 * @param pumping hours in which the circuit may run: 1 it may, 0 it may not
 * @param controller what a controller of one's own decides otherwise; {@link Controller#USUAL} for nothing
 */
public record Control(
        double onDifferenceK,
        double offDifferenceK,
        double limitC,
        double shedAboveC,
        Schedule pumping,
        Controller controller) {

    /** Range of {@link #onDifferenceK}. */
    public static final Range ON_DIFFERENCE = Range.of("start difference", Dimension.TEMPERATURE_DIFFERENCE, 0.5, 20);

    /** Range of {@link #offDifferenceK}. */
    public static final Range OFF_DIFFERENCE = Range.of("stop difference", Dimension.TEMPERATURE_DIFFERENCE, 0.02, 5);

    /** Range of {@link #limitC}; the upper end is that for bathing water, 40 °C (US CPSC; WHO 2006). */
    public static final Range LIMIT = Range.of("solar limit temperature", Dimension.TEMPERATURE, 10, 40);

    /** Range of {@link #shedAboveC} where the circuit ever cools; at least {@link #limitC}. */
    public static final Range COOL_ABOVE =
            Range.of("temperature above which the circuit cools", Dimension.TEMPERATURE, 10, 45);

    /** Usual {@link #onDifferenceK}. */
    public static final Usual USUAL_ON =
            ON_DIFFERENCE.usually(4, "with the usual stop it hunts in calm hours only; common practice, no source");

    /** Usual {@link #offDifferenceK}; hunting in calm hours costs under 1 % of a season's heat. */
    public static final Usual USUAL_OFF =
            OFF_DIFFERENCE.usually(0.3, "with the usual start it hunts in calm hours only; a larger one costs heat");

    /** Usual {@link #limitC}. */
    public static final Usual USUAL_LIMIT =
            LIMIT.usually(30, "the usual upper end of comfort, common practice, no source");

    /** {@link #USUAL_ON}, K. */
    public static final double USUAL_ON_K = USUAL_ON.value();

    /** {@link #USUAL_OFF}, K. */
    public static final double USUAL_OFF_K = USUAL_OFF.value();

    /** {@link #USUAL_LIMIT}, °C. */
    public static final double USUAL_LIMIT_C = USUAL_LIMIT.value();

    /** Checks every range. */
    public Control {
        ON_DIFFERENCE.check(onDifferenceK);
        OFF_DIFFERENCE.check(offDifferenceK);
        LIMIT.check(limitC);
        if (shedAboveC != Double.POSITIVE_INFINITY) {
            COOL_ABOVE.from(limitC).check(shedAboveC);
        }
    }

    /** A control without a controller of one's own. */
    public Control(double onDifferenceK, double offDifferenceK, double limitC, double shedAboveC, Schedule pumping) {
        this(onDifferenceK, offDifferenceK, limitC, shedAboveC, pumping, Controller.USUAL);
    }

    /** A control that never runs the circuit to cool. */
    public Control(double onDifferenceK, double offDifferenceK, double limitC, Schedule pumping) {
        this(onDifferenceK, offDifferenceK, limitC, Double.POSITIVE_INFINITY, pumping);
    }

    /** The same control, cooling the pool above a temperature, °C. */
    public Control sheddingAboveC(double value) {
        return new Control(onDifferenceK, offDifferenceK, limitC, value, pumping, controller);
    }

    /** Default differences, pumping at any hour. */
    public static Control withLimit(double limitC) {
        return new Control(USUAL_ON_K, USUAL_OFF_K, limitC, Schedule.ALWAYS);
    }

    /** The same control with another start difference, K. */
    public Control withOnDifferenceK(double value) {
        return new Control(value, offDifferenceK, limitC, shedAboveC, pumping, controller);
    }

    /** The same control in other pumping hours. */
    public Control withPumping(Schedule value) {
        return new Control(onDifferenceK, offDifferenceK, limitC, shedAboveC, value, controller);
    }

    /** The same control with another stop difference, K. */
    public Control withOffDifferenceK(double value) {
        return new Control(onDifferenceK, value, limitC, shedAboveC, pumping, controller);
    }

    /** The same control, of which a controller of one's own decides some things otherwise. */
    public Control decidedBy(Controller value) {
        return new Control(onDifferenceK, offDifferenceK, limitC, shedAboveC, pumping, value);
    }
}
