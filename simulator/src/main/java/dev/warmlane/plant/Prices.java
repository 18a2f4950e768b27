package dev.warmlane.plant;

import dev.warmlane.units.Checks;

/**
 * What energy and collectors cost, in one currency.
 *
 * @param currency how money is written after a number, such as EUR
 * @param gasPerKwh price of gas per kWh of higher heating value, 0 to 10
 * @param electricityPerKwh price of electricity per kWh, 0 to 10
 * @param collectorPerM2 cost of the installed collectors per m², 0 to 10000; 0 where it is not known
 */
public record Prices(String currency, double gasPerKwh, double electricityPerKwh, double collectorPerM2) {

    /** Checks every range. */
    public Prices {
        Checks.within("gas price", gasPerKwh, 0, 10, "per kWh");
        Checks.within("electricity price", electricityPerKwh, 0, 10, "per kWh");
        Checks.within("collector price", collectorPerM2, 0, 10_000, "per m2");
    }
}
