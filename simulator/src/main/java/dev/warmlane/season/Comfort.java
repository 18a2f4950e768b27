package dev.warmlane.season;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

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

    /** Usual {@link #warmEnoughC}. */
    public static final Usual USUAL_WARM_ENOUGH = WARM_ENOUGH.usually(26, "within 25 to 28 degC of competition pools");

    /** Usual {@link #tooWarmC}. */
    public static final Usual USUAL_TOO_WARM = TOO_WARM.usually(30, "common practice, no source");

    /** Both as usual. */
    public static final Comfort USUAL = new Comfort(USUAL_WARM_ENOUGH.value(), USUAL_TOO_WARM.value());

    /** Checks both ranges. */
    public Comfort {
        WARM_ENOUGH.check(warmEnoughC);
        TOO_WARM.from(warmEnoughC).check(tooWarmC);
    }
}
