package dev.warmlane.season;

/**
 * What a log of one season is good for in another. Wind, sun and sky at a pool that were found in a log are those of its days:
 * leaves, the sun's height over walls and trees, where the wind comes from and what the sky's estimate misjudges change
 * through the year, and no log of a month can tell by how much. So each is taken for a steady part and one that fades with the
 * season, normal and as wide together as what was taken to be known before the log: covariance s²·((1-q) + q·exp(-Δt/τ)).
 * Within the log it is what was found; before and after, the farther the more, it returns towards what was described, and its
 * width to what it was before. An error of a model beside its parameters, as of Kennedy and O'Hagan 2001 (Journal of the
 * Royal Statistical Society B 63:425, from memory), put where it acts and not on the temperature.
 */
public final class OtherSeasons {

    /** Share q of what varied before that changes with the season: half, own choice. */
    public static final double SEASONAL = 0.5;

    /** Time τ in which it fades to 1/e: a quarter of a year, own choice, days. */
    public static final double FADE_DAYS = 91;

    private OtherSeasons() {}

    /**
     * How much of the season of a log is left, exp(-Δt/τ): 1 within it.
     *
     * @param hoursAway hours from the nearest of the log, 0 or more
     */
    public static double left(double hoursAway) {
        return Math.exp(-hoursAway / (24 * FADE_DAYS));
    }

    /**
     * What is most likely.
     *
     * @param found in the log
     * @param before what was taken for most likely before it
     * @param left how much of the log's season is left
     */
    public static double likely(double found, double before, double left) {
        return found + (before - found) * SEASONAL * (1 - left);
    }

    /**
     * Standard deviation of what it may be beside that, for one value found: of the steady part, which the log does not part
     * from the other, and of what has come since.
     *
     * @param width standard deviation before the log
     * @param left how much of the log's season is left
     */
    public static double width(double width, double left) {
        return width * Math.sqrt(SEASONAL * (1 - SEASONAL) * (1 - left) * (1 - left) + SEASONAL * (1 - left * left));
    }
}
