package dev.warmlane.pool;

import dev.warmlane.site.Schedule;
import dev.warmlane.units.Checks;

/**
 * The people in the water.
 *
 * @param whenFull swimmers in the water at once when the pool is full, 0 to 10000
 * @param heatEachW heat that each gives to the water, W, 0 to 1500
 * @param evaporationFactorWhenFull factor on the evaporation correlation when the pool is full, 0.5 to 3; between
 *     empty and full it is interpolated from {@link Evaporation#quietFactor}
 * @param presence how full the pool is, 0 to 1, by hour
 */
public record Bathers(double whenFull, double heatEachW, double evaporationFactorWhenFull, Schedule presence) {

    /** Heat of one swimmer, W: derived from metabolic tables, low certainty. */
    public static final double USUAL_HEAT_W = 600;

    /** Nobody. */
    public static final Bathers NONE = new Bathers(0, 0, 1, Schedule.NEVER);

    /** Checks every range. */
    public Bathers {
        Checks.within("swimmers when full", whenFull, 0, 10_000, "");
        Checks.within("heat of a swimmer", heatEachW, 0, 1500, "W");
        Checks.within("evaporation factor when full", evaporationFactorWhenFull, 0.5, 3, "");
    }

    /** The evaporation factor in an hour for a correlation. */
    double evaporationFactor(Evaporation evaporation, int hour) {
        double share = presence.at(hour);
        return evaporation.quietFactor() + share * (evaporationFactorWhenFull - evaporation.quietFactor());
    }

    /** The same people with another factor on evaporation when the pool is full. */
    public Bathers withEvaporationFactorWhenFull(double value) {
        return new Bathers(whenFull, heatEachW, value, presence);
    }
}
