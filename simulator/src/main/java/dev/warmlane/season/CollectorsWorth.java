package dev.warmlane.season;

import dev.warmlane.money.Investment;
import dev.warmlane.money.Worth;
import java.util.Optional;
import java.util.OptionalDouble;

/** What an installation's collectors are worth over the years, from one typical season that comes again and again. */
public final class CollectorsWorth {

    /** Longer than anybody looks: the collectors are not bought again. */
    private static final int ONCE = 100;

    private CollectorsWorth() {}

    /** What is paid for the collectors; nothing where there are none or their price is not known. */
    public static Optional<Investment> investment(Installation built) {
        Offer offer = built.offer();
        return built.prices()
                .filter(prices -> prices.collectorPerM2() > 0 && !built.arrays().isEmpty())
                .map(prices -> new Investment(
                        prices.collectorPerM2() * built.collectorAreaM2() + offer.fixedCost(),
                        offer.grant(),
                        offer.upkeepPerYear(),
                        ONCE));
    }

    /** Their worth; nothing where their price is not known, or no heater is there to save for. */
    public static Optional<Worth> of(Installation built, PeriodSummary season) {
        return built.heater().isEmpty()
                ? Optional.empty()
                : investment(built).flatMap(paid -> MoneySummary.of(built, season)
                        .map(money ->
                                new Worth(paid, money.saved(), built.offer().terms())));
    }

    /** Cost of a kWh of the heat that they deliver, their pump counted; nothing where no price or no heat is known. */
    public static OptionalDouble costPerKwh(Installation built, PeriodSummary season) {
        return investment(built)
                .flatMap(paid -> MoneySummary.of(built, season)
                        .map(money -> new Worth(paid, 0, built.offer().terms())
                                .costPerKwh(season.balance().deliveredKwh(), money.pumpCost())))
                .orElse(OptionalDouble.empty());
    }

    /** The same of something that is paid once and needs no power. */
    static OptionalDouble costPerKwh(Installation built, double paid, double heatKwh) {
        return new Worth(new Investment(paid, 0, 0, ONCE), 0, built.offer().terms()).costPerKwh(heatKwh, 0);
    }
}
