package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.plant.GasHeater;
import dev.warmlane.plant.Prices;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one more square metre of collector would add: every array was simulated again a hundredth larger.
 *
 * @param deliveredKwhPerM2 heat that it would add to what is delivered, kWh/m² a season
 * @param displacedKwhPerM2 gas that it would displace, kWh/m² a season; nothing where there is no heater
 * @param costPerKwh cost of the installed collectors for each kWh of heat a season that it would add, in the currency
 *     of the prices; nothing where the cost is not known or it would add no heat
 */
public record NextSquareMetre(double deliveredKwhPerM2, OptionalDouble displacedKwhPerM2, OptionalDouble costPerKwh) {

    /** The growth simulated: large enough to stand out from rounding, small enough to be a slope. */
    private static final double GROWTH = 0.01;

    /** Simulates a forecast's installation with a little more area; nothing where it has no collectors. */
    public static Optional<NextSquareMetre> of(SeasonForecast forecast) {
        Installation installation = forecast.with().installation();
        if (installation.arrays().isEmpty()) {
            return Optional.empty();
        }
        // the largest arrays that can be described shrink instead: the slope is the same. One beside them that is too
        // small
        // to shrink stays: it has a two-hundred-thousandth of the area
        boolean mayGrow = installation.arrays().stream()
                .allMatch(array -> array.areaM2() * (1 + GROWTH) <= CollectorArray.LARGEST_M2);
        double factor = mayGrow ? 1 + GROWTH : 1 - GROWTH;
        Installation larger = installation.toBuilder()
                .arrays(installation.arrays().stream()
                        .map(array -> array.withAreaM2(Math.max(CollectorArray.SMALLEST_M2, array.areaM2() * factor)))
                        .toList())
                .build();
        SeasonLedger grown = SeasonSimulator.simulate(larger, forecast.forcing());
        Period season = Periods.season(grown);
        double addedM2 = larger.collectorAreaM2() - installation.collectorAreaM2();
        double perM2 = (HeatBalance.of(grown, season).deliveredKwh()
                        - HeatBalance.of(forecast.with(), season).deliveredKwh())
                / addedM2;
        OptionalDouble displaced = OptionalDouble.empty();
        if (installation.heater().isPresent()) {
            GasHeater heater = installation.heater().get();
            List<SeasonLedger> both = List.of(forecast.with(), grown);
            double[] burned = both.stream()
                    .mapToDouble(l -> l.heatKwh(Flow.HEATER, 0, l.hours()) / heater.efficiency())
                    .toArray();
            displaced = OptionalDouble.of((burned[0] - burned[1]) / addedM2);
        }
        return Optional.of(priced(perM2, displaced, installation.prices()));
    }

    /**
     * What each square metre between two sizes of one installation adds, on the mean: the difference of the two over the
     * area between them.
     *
     * @param smaller a season with less collector area
     * @param larger the same season with more of it
     * @param prices what collectors cost, where it is known
     */
    public static NextSquareMetre between(PeriodSummary smaller, PeriodSummary larger, Optional<Prices> prices) {
        double addedM2 = larger.collectors().areaM2() - smaller.collectors().areaM2();
        if (!(addedM2 > 0)) {
            throw new IllegalArgumentException("the larger installation must have more collector area, had "
                    + larger.collectors().areaM2() + " m2 after "
                    + smaller.collectors().areaM2() + " m2");
        }
        double perM2 = (larger.balance().deliveredKwh() - smaller.balance().deliveredKwh()) / addedM2;
        OptionalDouble displaced = larger.gas() instanceof GasSummary.Displaced
                ? OptionalDouble.of((larger.gas().replacedKwh() - smaller.gas().replacedKwh()) / addedM2)
                : OptionalDouble.empty();
        return priced(perM2, displaced, prices);
    }

    private static NextSquareMetre priced(double perM2, OptionalDouble displaced, Optional<Prices> prices) {
        double price = prices.map(Prices::collectorPerM2).orElse(0.0);
        return new NextSquareMetre(
                perM2, displaced, price > 0 && perM2 > 0 ? OptionalDouble.of(price / perM2) : OptionalDouble.empty());
    }
}
