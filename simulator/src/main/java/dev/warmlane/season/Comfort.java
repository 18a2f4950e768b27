package dev.warmlane.season;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * Between which temperatures people like the water.
 *
 * @param warmEnoughC the comfort temperature: from here on people find the pool warm enough, °C
 * @param tooWarmC the highest comfortable temperature: above it they find it too warm, °C; at least the other
 */
public record Comfort(double warmEnoughC, double tooWarmC) {

    /** Range of {@link #warmEnoughC}. */
    public static final Range WARM_ENOUGH = Range.of("comfort temperature", Dimension.TEMPERATURE, 10, 40);

    /** Range of {@link #tooWarmC}. */
    public static final Range TOO_WARM = Range.of("highest comfortable temperature", Dimension.TEMPERATURE, 10, 40);

    /** 26 °C lie within the 25 to 28 °C of competition pools; the 30 °C are common practice, no source. */
    public static final Comfort USUAL = new Comfort(26, 30);

    /** Checks both ranges. */
    public Comfort {
        WARM_ENOUGH.check(warmEnoughC);
        TOO_WARM.from(warmEnoughC).check(tooWarmC);
    }
}
