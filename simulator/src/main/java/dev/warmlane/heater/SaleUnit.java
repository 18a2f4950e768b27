package dev.warmlane.heater;

import dev.warmlane.units.Units;
import java.util.Arrays;
import java.util.Optional;

/** A unit that energy is sold in: a volume of fuel, or the energy itself. */
public enum SaleUnit {
    /** Cubic metre. */
    M3("m3", 1, true),
    /** Hundred cubic feet, as gas meters of the United States count. */
    CCF("ccf", 100 * Units.FOOT3, true),
    /** Litre. */
    LITRE("L", Units.LITRE, true),
    /** US gallon. */
    GALLON("gal", Units.US_GALLON, true),
    /** Kilowatt-hour. */
    KWH("kWh", Units.KWH, false),
    /** Megawatt-hour. */
    MWH("MWh", 1000 * Units.KWH, false),
    /** Therm of a hundred thousand Btu. */
    THERM("therm", Units.THERM, false),
    /** Million Btu. */
    MMBTU("MMBtu", Units.MMBTU, false),
    /** Megajoule. */
    MJ("MJ", 1e6, false),
    /** Gigajoule. */
    GJ("GJ", Units.GIGAJOULE, false);

    private final String symbol;
    private final double base;
    private final boolean volume;

    SaleUnit(String symbol, double base, boolean volume) {
        this.symbol = symbol;
        this.base = base;
        this.volume = volume;
    }

    /** The unit of a symbol, in which its plural counts too; nothing for any other text. */
    public static Optional<SaleUnit> of(String symbol) {
        String single = symbol.equals("therms") ? "therm" : symbol;
        return Arrays.stream(values()).filter(u -> u.symbol.equals(single)).findFirst();
    }

    /** How it is written. */
    public String symbol() {
        return symbol;
    }

    /** Whether it is a volume; otherwise it is an energy. */
    public boolean isVolume() {
        return volume;
    }

    /** What it measures, m³ for a volume and J for an energy. */
    public double base() {
        return base;
    }

    /** Whether liquids are sold by it: what its heating value is told for a litre of. */
    boolean ofLiquids() {
        return this == LITRE || this == GALLON;
    }
}
