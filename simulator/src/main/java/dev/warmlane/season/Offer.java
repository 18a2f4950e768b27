package dev.warmlane.season;

import dev.warmlane.money.Terms;
import dev.warmlane.units.Range;

/**
 * What is paid beside the price of the collectors per area, and how the years after are counted. Sums are in the currency
 * of the {@link Prices}.
 *
 * @param fixedCost what is paid whatever the area: scaffold, crane, control, connection to the filter circuit
 * @param grant what somebody else pays of the collectors
 * @param upkeepPerYear upkeep of the collectors, a year
 * @param terms how later years are counted
 * @param cover a cover to compare the collectors with
 */
public record Offer(double fixedCost, double grant, double upkeepPerYear, Terms terms, CoverOffer cover) {

    /** Range of {@link #fixedCost}. */
    public static final Range FIXED_COST = Range.number("fixed cost", 0, 1e8);

    /** Range of {@link #grant}. */
    public static final Range GRANT = Range.number("grant", 0, 1e8);

    /** Range of {@link #upkeepPerYear}. */
    public static final Range UPKEEP = Range.number("upkeep a year", 0, 1e7);

    /** Nothing beside the price per area, usual terms, a usual cover at no known price. */
    public static final Offer USUAL = new Offer(0, 0, 0, Terms.USUAL, CoverOffer.USUAL);

    /** Checks every range. */
    public Offer {
        FIXED_COST.check(fixedCost);
        GRANT.check(grant);
        UPKEEP.check(upkeepPerYear);
    }
}
