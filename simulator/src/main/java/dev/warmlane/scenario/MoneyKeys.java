package dev.warmlane.scenario;

import dev.warmlane.money.Terms;
import dev.warmlane.scenario.PoolKeys.CoverKind;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.Offer;
import dev.warmlane.units.Range;

/** Keys of the section money. */
final class MoneyKeys {

    private static final Range TOTAL = Range.number("cost of the installed collectors", 0, 1e8);

    static final Key<Double> COLLECTORS_TOTAL = Key.optional(
            "collectors_total",
            Kinds.of(TOTAL),
            "cost of all the collectors installed, as one sum that grows and shrinks with their area",
            "from prices.collectors; not with it");
    static final Key<Double> FIXED_COST = Key.convention(
            "fixed_cost",
            Offer.FIXED_COST,
            "what is paid for the collectors whatever their area: scaffold, control",
            0.0);
    static final Key<Double> GRANT =
            Key.convention("grant", Offer.GRANT, "what somebody else pays of the collectors", 0.0);
    static final Key<Double> UPKEEP =
            Key.assumed("upkeep", Offer.UPKEEP, "upkeep of the collectors, a year", 0.0, "none counted");
    static final Key<Double> INTEREST = Key.assumed("interest", Terms.USUAL_INTEREST, "real interest a year");
    static final Key<Double> PRICE_GROWTH =
            Key.assumed("price_growth", Terms.USUAL_GROWTH, "growth of energy prices a year beyond that of all prices");
    static final Key<Integer> YEARS = Key.assumed(
            "years",
            Kinds.count(Terms.YEARS),
            "years that money is looked at over",
            (int) Terms.USUAL_YEARS.value(),
            Terms.USUAL_YEARS.source());
    static final Key<CoverKind> COVER_KIND = Key.assumed(
            "cover_kind",
            WordKinds.choice(CoverKind.class, PoolReader::name),
            "kind of the cover that the collectors are compared with, drawn from 20 to 8; not where there is a [cover],"
                    + " which is taken then",
            CoverKind.BUBBLE,
            "the usual kind");
    static final Key<Double> COVER_PRICE = Key.optional(
            "cover_price",
            CoverOffer.PRICE,
            "price of the cover for each area of water",
            "no money is told of the cover");
    static final Key<Integer> COVER_YEARS = Key.assumed(
            "cover_years",
            Kinds.count(CoverOffer.LASTS),
            "years after which the cover is bought again",
            (int) CoverOffer.USUAL_LASTS.value(),
            CoverOffer.USUAL_LASTS.source());

    static final SectionSchema MONEY = SectionSchema.optional(
            "money",
            "what is paid beside the prices, and how later years are counted; needs [prices]. All sums in the currency of"
                    + " the prices, interest and growth beyond the growth of all prices",
            COLLECTORS_TOTAL,
            FIXED_COST,
            GRANT,
            UPKEEP,
            INTEREST,
            PRICE_GROWTH,
            YEARS,
            COVER_KIND,
            COVER_PRICE,
            COVER_YEARS);

    private MoneyKeys() {}
}
