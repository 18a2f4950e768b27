package dev.warmlane.heater;

import dev.warmlane.units.Checks;
import java.util.OptionalDouble;

/**
 * What the owner paid for last: energy that the heater was fed with over one season, before there were collectors.
 *
 * @param amount how much, in {@code unit}, above 0
 * @param unit the unit of the bill
 * @param cost what it cost, in the currency of the prices, above 0; nothing where it is not told
 */
public record Bill(double amount, SaleUnit unit, OptionalDouble cost) {

    /** More than any pool is billed for, in any unit; own choice. */
    public static final double MOST = 1e9;

    /** A simulated season is told to differ when it is beyond this share of the bill, either way. */
    public static final double FAR = 1.0 / 3;

    /** Checks every range. */
    public Bill {
        Checks.within("amount of the bill", amount, Double.MIN_NORMAL, MOST, unit.symbol());
        cost.ifPresent(c -> Checks.within("cost of the bill", c, Double.MIN_NORMAL, MOST, ""));
    }

    /**
     * Energy of the bill, kWh.
     *
     * @param fuel what was bought
     * @throws IllegalArgumentException if that is not sold in the unit of the bill
     */
    public double kwh(Fuel fuel) {
        return fuel.soldIn(unit).kwhOfUnits(amount);
    }
}
