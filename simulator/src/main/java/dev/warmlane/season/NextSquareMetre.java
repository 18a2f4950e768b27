package dev.warmlane.season;

import java.util.OptionalDouble;

/**
 * What one more square metre of collector would add.
 *
 * @param deliveredKwhPerM2 heat that it would add to what is delivered, kWh/m² a season
 * @param displacedKwhPerM2 gas that it would displace, kWh/m² a season; nothing where there is no heater
 * @param costPerKwh levelised cost of a kWh of the heat that it would add over the years looked at, in the currency of
 *     the prices, its price alone; nothing where that is not known or it would add no heat
 */
public record NextSquareMetre(double deliveredKwhPerM2, OptionalDouble displacedKwhPerM2, OptionalDouble costPerKwh) {

    /**
     * What each square metre between two sizes of one installation adds, on the mean: the difference of the two over the
     * area between them.
     *
     * @param one a season
     * @param other the same season with more or less collector area
     * @param built what collectors cost, where it is known, and how later years are counted
     */
    public static NextSquareMetre between(PeriodSummary one, PeriodSummary other, Installation built) {
        double addedM2 = other.collectors().areaM2() - one.collectors().areaM2();
        if (addedM2 == 0) {
            throw new IllegalArgumentException("two sizes must differ in collector area, both had "
                    + one.collectors().areaM2() + " m2");
        }
        double perM2 = (other.balance().deliveredKwh() - one.balance().deliveredKwh()) / addedM2;
        OptionalDouble displaced = other.gas()
                .match(
                        gas -> OptionalDouble.of((gas.replacedKwh() - one.gas().replacedKwh()) / addedM2),
                        none -> OptionalDouble.empty());
        double price = built.prices().map(Prices::collectorPerM2).orElse(0.0);
        return new NextSquareMetre(
                perM2, displaced, price > 0 ? CollectorsWorth.costPerKwh(built, price, perM2) : OptionalDouble.empty());
    }
}
