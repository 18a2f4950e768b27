package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;
import java.util.Locale;

/**
 * A season whose water becomes so hot that something of what was put in cannot be meant: more bathers than swim, a cover
 * that keeps everything in, a basin much shallower than it is. The model would go on, and its numbers would mean nothing.
 */
public final class ImpossibleSeasonException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * Water above this is refused, °C. The hottest that sound input was made to give is 60 °C: 0.2 m of water under a foam
     * cover by day and night in a desert summer (derived; the ten kelvin on top are our own choice).
     */
    public static final double HOTTEST_C = 70;

    ImpossibleSeasonException(int hourOfYear) {
        super(String.format(
                Locale.ROOT,
                "the water becomes hotter than %.0f degC at %s (month-day hour), which no pool does: something put in"
                        + " cannot be meant; check bathers and their heat, the cover and its hours, the depth, the"
                        + " circulation pump and the weather",
                HOTTEST_C,
                HourOfYear.label(hourOfYear)));
    }
}
