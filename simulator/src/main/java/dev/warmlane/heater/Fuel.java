package dev.warmlane.heater;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Units;

/**
 * A gas that a heater burns.
 *
 * @param name what it is called
 * @param unit the unit it is sold in, m3 or L
 * @param heatMjPerUnit higher heating value, MJ per unit, in the range of {@link #heatPer}
 * @param co2KgPerGj carbon dioxide per GJ of higher heating value, kg
 */
public record Fuel(String name, String unit, double heatMjPerUnit, double co2KgPerGj) {

    /** Range of {@link #co2KgPerGj}. */
    public static final Range CO2 = Range.of("CO2 of the fuel", Dimension.MASS_PER_ENERGY, "kg/GJ", 0, 150);

    /**
     * Natural gas: 1,036 Btu/ft³ higher heating value, United States 2025 (Energy Information Administration) = 38.60
     * MJ/m³; 53.06 kg CO2/MMBtu (US Environmental Protection Agency) = 50.29 kg/GJ.
     */
    public static final Fuel NATURAL_GAS = new Fuel("natural gas", "m3", 38.60, 50.29);

    /** Propane: 25.48 MJ/L and 1.518 kg CO2/L (40 CFR 98, table NN-1), that is 59.58 kg/GJ. */
    public static final Fuel PROPANE = new Fuel("propane", "L", 25.48, 59.58);

    /** Checks every range. */
    public Fuel {
        heatPer(unit).check(heatMjPerUnit);
        CO2.check(co2KgPerGj);
    }

    /**
     * Range of {@link #heatMjPerUnit}, the same whatever the fuel is sold by.
     *
     * @param unit m3 or L
     */
    public static Range heatPer(String unit) {
        return Range.of("heating value", Dimension.HEATING_VALUE, "MJ/" + unit, 1, 200);
    }

    /** Units of fuel that hold an amount of heat, given in kWh of higher heating value. */
    public double unitsForKwh(double kwh) {
        return Units.megajoules(kwh) / heatMjPerUnit;
    }

    /** Carbon dioxide of burning an amount of heat, kg, given in kWh of higher heating value. */
    public double co2KgForKwh(double kwh) {
        return Units.gigajoules(kwh * Units.KWH) * co2KgPerGj;
    }
}
