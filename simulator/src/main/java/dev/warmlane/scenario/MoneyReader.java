package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.money.Terms;
import dev.warmlane.pool.Cover;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.Offer;
import dev.warmlane.season.Prices;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the section money. What it assumes is told only where money is spoken of. */
final class MoneyReader {

    private MoneyReader() {}

    /** The prices with the collectors' from {@code collectors_total}, where that is given. */
    static @Nullable Prices prices(Section money, Section prices, @Nullable Prices read, List<CollectorArray> arrays) {
        if (!prices.present()) {
            money.refuse(
                    "needs a section [prices], which says in what currency",
                    MoneyKeys.COLLECTORS_TOTAL,
                    MoneyKeys.FIXED_COST,
                    MoneyKeys.GRANT,
                    MoneyKeys.UPKEEP,
                    MoneyKeys.COVER_PRICE);
        }
        if (!money.has(MoneyKeys.COLLECTORS_TOTAL)) {
            return read;
        }
        if (prices.has(PlantKeys.COLLECTOR_PRICE)) {
            money.error(MoneyKeys.COLLECTORS_TOTAL, "not allowed with prices.collectors; give one of them");
        }
        double areaM2 = arrays.stream().mapToDouble(CollectorArray::areaM2).sum();
        if (areaM2 == 0) {
            money.error(MoneyKeys.COLLECTORS_TOTAL, "there are no collectors");
        }
        double perM2 = money.get(MoneyKeys.COLLECTORS_TOTAL) / areaM2;
        return read == null ? null : money.build(() -> read.withCollectorPerM2(perM2));
    }

    /**
     * The offer.
     *
     * @param money the section
     * @param prices what was read of prices; null where there are none
     * @param cover the pool's own cover; null where it has none
     */
    static @Nullable Offer offer(Section money, @Nullable Prices prices, @Nullable Cover cover) {
        Cover compared = CoverOffer.USUAL.cover();
        if (cover == null) {
            compared = PoolReader.usual(money.get(MoneyKeys.COVER_KIND), compared.drawn());
        } else {
            money.refuse("not allowed beside a [cover], which is compared then", MoneyKeys.COVER_KIND);
        }
        boolean counted = prices != null && prices.collectorPerM2() > 0;
        Terms terms = counted || money.present() ? terms(money) : Terms.USUAL;
        double fixed = money.get(MoneyKeys.FIXED_COST);
        double grant = money.get(MoneyKeys.GRANT);
        double upkeep = counted || money.has(MoneyKeys.UPKEEP) ? money.get(MoneyKeys.UPKEEP) : 0;
        CoverOffer offered = cover(money, compared);
        return money.build(() -> new Offer(fixed, grant, upkeep, terms, offered));
    }

    private static Terms terms(Section money) {
        double interest = money.get(MoneyKeys.INTEREST);
        double growth = money.get(MoneyKeys.PRICE_GROWTH);
        int years = money.get(MoneyKeys.YEARS);
        return new Terms(interest, growth, years);
    }

    private static CoverOffer cover(Section money, Cover compared) {
        boolean priced = money.has(MoneyKeys.COVER_PRICE);
        double price = priced ? money.get(MoneyKeys.COVER_PRICE) : 0;
        int years = priced || money.has(MoneyKeys.COVER_YEARS)
                ? money.get(MoneyKeys.COVER_YEARS)
                : CoverOffer.USUAL.lastsYears();
        return new CoverOffer(compared, price, years);
    }
}
