package dev.warmlane.season;

import java.util.Locale;

/**
 * A season in which something that was put in cannot be meant. Its water becomes too hot: more bathers than swim, a cover
 * that keeps everything in, a basin much shallower than it is. Or it freezes to the ground. The model would go on, and its
 * numbers would mean nothing.
 */
public final class ImpossibleSeasonException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * Water above this is refused, °C. The hottest that sound input was made to give is 60 °C: 0.2 m of water under a foam
     * cover by day and night in a desert summer (derived; the ten kelvin on top are our own choice).
     */
    public static final double HOTTEST_C = 70;

    private ImpossibleSeasonException(String message, Object... values) {
        super(String.format(Locale.ROOT, message, values));
    }

    static ImpossibleSeasonException tooHot(String hour) {
        return new ImpossibleSeasonException(
                "the water becomes hotter than %.0f degC at %s, which no pool does: something put in"
                        + " cannot be meant; check bathers and their heat, the cover and its hours, the depth, the"
                        + " circulation pump and the weather",
                HOTTEST_C, hour);
    }

    static ImpossibleSeasonException frozen(String hour, double depthM) {
        return new ImpossibleSeasonException(
                "all the water is ice by %s, %.2f m of it: no such pool stands filled then; let the"
                        + " season begin later or end earlier, shorten the days before opening, or check the depth"
                        + " and the weather",
                hour, depthM);
    }
}
