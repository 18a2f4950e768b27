package dev.warmlane.season;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * What energy and collectors cost, in one currency.
 *
 * @param currency how money is written after a number, such as EUR
 * @param gasPerKwh price of what the heater is fed with per kWh, a fuel by its higher heating value; 0 where there is
 *     no heater and none is known
 * @param electricityPerKwh price of electricity per kWh
 * @param collectorPerM2 cost of the installed collectors per m²; 0 where it is not known
 */
public record Prices(String currency, double gasPerKwh, double electricityPerKwh, double collectorPerM2) {

    /** Range of {@link #gasPerKwh}. */
    public static final Range GAS = Range.of("gas price", Dimension.PRICE_PER_ENERGY, "per kWh", 0, 10);

    /** Range of {@link #electricityPerKwh}. */
    public static final Range ELECTRICITY = Range.of("electricity price", Dimension.PRICE_PER_ENERGY, "per kWh", 0, 10);

    /** Range of {@link #collectorPerM2}. */
    public static final Range COLLECTOR = Range.of("collector price", Dimension.PRICE_PER_AREA, 0, 10_000);

    /** Checks every range. */
    public Prices {
        GAS.check(gasPerKwh);
        ELECTRICITY.check(electricityPerKwh);
        COLLECTOR.check(collectorPerM2);
    }

    /** The same with collectors at another price per m². */
    public Prices withCollectorPerM2(double value) {
        return new Prices(currency, gasPerKwh, electricityPerKwh, value);
    }
}
