package dev.warmlane.season;

import dev.warmlane.pool.Cover;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * A cover that a pool could have: for one that has a cover already, its own counts instead of this one's numbers.
 *
 * @param cover the cover and its hours
 * @param pricePerM2 what it costs for each m² of water; 0 where it is not known
 * @param lastsYears after how many years it is bought again
 */
public record CoverOffer(Cover cover, double pricePerM2, int lastsYears) {

    /** Range of {@link #pricePerM2}. */
    public static final Range PRICE = Range.of("cover price", Dimension.PRICE_PER_AREA, 0, 2_000);

    /** Range of {@link #lastsYears}. */
    public static final Range LASTS = Range.number("years that a cover lasts", 1, 40);

    /** What a floating sheet lasts in sun and pool water. */
    public static final Usual USUAL_LASTS =
            new Usual(LASTS, 5, "a floating sheet in the sun, common practice, no source");

    /** A bubble sheet by night, at no known price. */
    public static final CoverOffer USUAL =
            new CoverOffer(Cover.bubble(Schedule.daily(20, 8)), 0, (int) USUAL_LASTS.value());

    /** Checks every range. */
    public CoverOffer {
        PRICE.check(pricePerM2);
        LASTS.check(lastsYears);
    }
}
