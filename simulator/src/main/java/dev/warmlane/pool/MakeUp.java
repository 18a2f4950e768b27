package dev.warmlane.pool;

import dev.warmlane.units.Checks;

/**
 * Water that is replaced: all that evaporates, and what backwash, splashing and carried-out water take.
 *
 * @param litresPerDay water replaced beyond evaporation, L/day in the open season, 0 to 2000000
 * @param mains the temperature at which it arrives
 */
public record MakeUp(double litresPerDay, MainsWater mains) {

    /** Checks the range. */
    public MakeUp {
        Checks.within("make-up water", litresPerDay, 0, 2_000_000, "L/day");
    }
}
