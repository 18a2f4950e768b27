package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * Water that is replaced: all that evaporates, and what backwash, splashing and carried-out water take.
 *
 * @param litresPerDay water replaced beyond evaporation, L/day in the open season
 * @param mains the temperature at which it arrives
 */
public record MakeUp(double litresPerDay, MainsWater mains) {

    /** Range of {@link #litresPerDay}. */
    public static final Range WATER = Range.of("make-up water", Dimension.VOLUME_FLOW, "L/day", 0, 2_000_000);

    /** Checks the range. */
    public MakeUp {
        WATER.check(litresPerDay);
    }
}
