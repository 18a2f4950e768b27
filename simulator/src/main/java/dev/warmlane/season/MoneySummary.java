package dev.warmlane.season;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Money of one season, in the currency of the prices.
 *
 * @param currency how money is written after a number
 * @param gasCost gas burned with the collectors; 0 without a heater
 * @param gasCostWithout gas burned without collectors; 0 without a heater
 * @param pumpCost electricity of the collectors' pumps
 * @param replacedGasWorth the gas that the collectors' heat stands for: saved where there is a heater, only a comparison
 *     where there is none
 * @param collectorCost the installed collectors; nothing where it is not known
 */
public record MoneySummary(
        String currency,
        double gasCost,
        double gasCostWithout,
        double pumpCost,
        double replacedGasWorth,
        OptionalDouble collectorCost) {

    /** Sums up a season; nothing where no prices are given. */
    public static Optional<MoneySummary> of(Installation installation, PeriodSummary season) {
        return installation.prices().map(prices -> of(installation, prices, season));
    }

    private static MoneySummary of(Installation installation, Prices prices, PeriodSummary season) {
        double cost = prices.collectorPerM2() * installation.collectorAreaM2();
        double burned = season.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0);
        double without = season.gas().match(gas -> burned + gas.replacedKwh(), none -> 0.0);
        return new MoneySummary(
                prices.currency(),
                burned * prices.gasPerKwh(),
                without * prices.gasPerKwh(),
                season.pump().electricityKwh() * prices.electricityPerKwh(),
                season.gas().replacedKwh() * prices.gasPerKwh(),
                cost > 0 ? OptionalDouble.of(cost) : OptionalDouble.empty());
    }

    /** Gas saved less electricity for pumping. */
    public double saved() {
        return gasCostWithout - gasCost - pumpCost;
    }
}
