package dev.warmlane.circuit;

import java.util.Optional;

/**
 * What a controller of one's own decides in place of {@link Control} and the heater. Each part left as it is decides as
 * they say. Must be immutable and give the same answer whenever it is asked.
 */
public interface Controller {

    /** Decides nothing of its own. */
    Controller USUAL = new Controller() {};

    /** What it is, in a few words for a report. */
    default String source() {
        return "not described";
    }

    /** When the circuits run to warm the pool; nothing for the start and stop differences. */
    default Optional<PumpRule> pumps() {
        return Optional.empty();
    }

    /**
     * The pool temperature at which the collectors stop giving heat, °C, 10 to 40. Asked once for each hour of the year
     * before a season.
     *
     * @param hour hour of the year
     * @param usualC that of the control
     */
    default double limitC(int hour, double usualC) {
        return usualC;
    }

    /**
     * The pool temperature that the heater keeps, °C, 10 to 40. Asked once for each hour of the year before a season.
     *
     * @param hour hour of the year
     * @param usualC that of the heater
     */
    default double setPointC(int hour, double usualC) {
        return usualC;
    }

    /**
     * How much of an hour a circuit runs to warm the pool, decided at its start. It is the hourly loop that asks: allocate
     * nothing. Pumping hours and limit still hold, and so does night cooling.
     */
    @FunctionalInterface
    interface PumpRule {

        /**
         * The share of the hour, 0 to 1.
         *
         * @param hour hour of the year
         * @param poolC temperature of the pool, °C
         * @param dryPlateC temperature of a collector that stands dry, as a sensor on it would show, °C
         * @param riseK what the water would be warmer by when it is back at the pool, K; negative where it would be colder
         */
        double share(int hour, double poolC, double dryPlateC, double riseK);
    }
}
