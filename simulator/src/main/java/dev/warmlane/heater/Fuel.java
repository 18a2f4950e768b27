package dev.warmlane.heater;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Units;

/**
 * What a heater is fed with and somebody pays for: a gas, oil, another fuel, electricity, heat from a network. A fuel that
 * burns is counted by its higher heating value.
 *
 * @param name what it is called
 * @param carrier what kind of energy it is
 * @param unit the unit it is sold in
 * @param heatMjPerUnit energy in a unit, MJ: of a fuel its higher heating value, in the range of {@link #heatPer}; of
 *     electricity and heat, and of a fuel that is sold as energy, just the unit
 * @param co2KgPerGj carbon dioxide per GJ of that energy, kg
 */
public record Fuel(String name, Carrier carrier, SaleUnit unit, double heatMjPerUnit, double co2KgPerGj) {

    /** Range of {@link #co2KgPerGj} of what is burned. */
    public static final Range CO2 = Range.of("CO2 of the fuel", Dimension.MASS_PER_ENERGY, "kg/GJ", 0, 150);

    /**
     * Range of {@link #co2KgPerGj} of electricity and heat. The upper end is 1.44 kg/kWh, a poor power station that burns
     * lignite (own choice).
     */
    public static final Range CO2_BOUGHT = CO2.upTo(400).named("CO2 of what is bought");

    /**
     * Natural gas: 1,036 Btu/ft³ higher heating value, United States 2025 (Energy Information Administration) = 38.60
     * MJ/m³; 53.06 kg CO2/MMBtu (US Environmental Protection Agency) = 50.29 kg/GJ.
     */
    public static final Fuel NATURAL_GAS = new Fuel("natural gas", Carrier.GAS, SaleUnit.M3, 38.60, 50.29);

    /** Propane: 25.48 MJ/L and 1.518 kg CO2/L (40 CFR 98, table NN-1), that is 59.58 kg/GJ. */
    public static final Fuel PROPANE = new Fuel("propane", Carrier.GAS, SaleUnit.LITRE, 25.48, 59.58);

    /**
     * Heating oil, distillate No. 2: 0.138 MMBtu/gal higher heating value = 38.46 MJ/L; 73.96 kg CO2/MMBtu = 70.10 kg/GJ
     * (40 CFR 98, table C-1). The 74.1 kg/GJ of the lower heating value of IPCC 2006 (from memory) are as many, over 0.94
     * from lower to higher.
     */
    public static final Fuel HEATING_OIL = new Fuel("heating oil", Carrier.OIL, SaleUnit.LITRE, 38.46, 70.10);

    private static final double MJ = 1e6;

    /** Checks every range. */
    public Fuel {
        if (unit.isVolume()) {
            SaleUnit told = unit.ofLiquids() ? SaleUnit.LITRE : SaleUnit.M3;
            heatPer(told.symbol()).check(unit == told ? heatMjPerUnit : heatMjPerUnit * (told.base() / unit.base()));
        } else if (heatMjPerUnit != unit.base() / MJ) {
            throw new IllegalArgumentException(
                    "a " + unit.symbol() + " is " + unit.base() / MJ + " MJ, was " + heatMjPerUnit + " MJ");
        }
        (carrier.burned() ? CO2 : CO2_BOUGHT).check(co2KgPerGj);
        if (!carrier.burned() && unit.isVolume()) {
            throw new IllegalArgumentException(
                    carrier.word() + " is sold by energy, such as kWh or GJ, was " + unit.symbol());
        }
    }

    /**
     * A fuel of one's own.
     *
     * @param name what it is called
     * @param unit m3 or L
     * @param heatMjPerUnit higher heating value, MJ per unit
     * @param co2KgPerGj carbon dioxide per GJ of higher heating value, kg
     */
    public Fuel(String name, String unit, double heatMjPerUnit, double co2KgPerGj) {
        this(name, Carrier.OTHER, unit.equals("L") ? SaleUnit.LITRE : SaleUnit.M3, heatMjPerUnit, co2KgPerGj);
    }

    /**
     * Electricity, sold by the kWh. There is no carbon of all electricity: it is that of the network or the contract.
     *
     * @param co2KgPerGj carbon dioxide, kg/GJ: that of a kWh over 0.0036
     */
    public static Fuel electricity(double co2KgPerGj) {
        return bought("electricity", Carrier.ELECTRICITY, co2KgPerGj);
    }

    /**
     * Heat from a network, sold by the kWh. Its carbon is that of the network.
     *
     * @param co2KgPerGj carbon dioxide, kg/GJ
     */
    public static Fuel districtHeat(double co2KgPerGj) {
        return bought("district heat", Carrier.HEAT, co2KgPerGj);
    }

    private static Fuel bought(String name, Carrier carrier, double co2KgPerGj) {
        return new Fuel(name, carrier, SaleUnit.KWH, SaleUnit.KWH.base() / MJ, co2KgPerGj);
    }

    /**
     * Range of {@link #heatMjPerUnit}, the same whatever the fuel is sold by.
     *
     * @param unit m3 or L
     */
    public static Range heatPer(String unit) {
        return Range.of("heating value", Dimension.HEATING_VALUE, "MJ/" + unit, 1, 200);
    }

    /**
     * The same, sold in another unit.
     *
     * @throws IllegalArgumentException if that is a volume and this has none, so that no heating value is known of it, or
     *     a measure of liquids and this is a gas
     */
    public Fuel soldIn(SaleUnit other) {
        if (other == unit) {
            return this;
        }
        if (other.ofLiquids() && unit.isVolume() && !unit.ofLiquids()) {
            throw new IllegalArgumentException(
                    name + " is sold by the m3 or the ccf, as a gas; by the " + other.symbol() + " are liquids");
        }
        double mj = other.isVolume() ? heatMjPerUnit * (other.base() / unit.base()) : other.base() / MJ;
        if (other.isVolume() && !unit.isVolume()) {
            throw new IllegalArgumentException(
                    name + " is sold by the " + unit.symbol() + ", of which no " + other.symbol() + " is known");
        }
        return new Fuel(name, carrier, other, mj, co2KgPerGj);
    }

    /** What a bill calls it, in lower case: gas, oil, electricity, district heat; propane and others by their names. */
    public String word() {
        boolean named = carrier == Carrier.OTHER || (carrier == Carrier.GAS && !name.equals(NATURAL_GAS.name));
        return named ? name : carrier.word();
    }

    /** Units of fuel that hold an amount of energy, given in kWh. */
    public double unitsForKwh(double kwh) {
        return Units.megajoules(kwh) / heatMjPerUnit;
    }

    /** Energy of an amount in the unit it is sold in, kWh. */
    public double kwhOfUnits(double units) {
        return units * heatMjPerUnit / Units.megajoules(1);
    }

    /** Carbon dioxide of an amount of energy, kg, given in kWh. */
    public double co2KgForKwh(double kwh) {
        return Units.gigajoules(kwh * Units.KWH) * co2KgPerGj;
    }
}
