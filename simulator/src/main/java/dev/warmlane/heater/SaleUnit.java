package dev.warmlane.heater;

import dev.warmlane.units.Units;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
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

    private static final Map<String, String> WORDS = Map.of(
            "litre", "L",
            "liter", "L",
            "gallon", "gal",
            "cubic metre", "m3",
            "cubic meter", "m3",
            "m^3", "m3",
            "cbm", "m3",
            "thm", "therm",
            "dth", "MMBtu");

    private final String symbol;
    private final double base;
    private final boolean volume;

    SaleUnit(String symbol, double base, boolean volume) {
        this.symbol = symbol;
        this.base = base;
        this.volume = volume;
    }

    /** Whether it is what liquids are sold in, of which an owner knows the tank. */
    public boolean isLiquid() {
        return this == LITRE || this == GALLON;
    }

    /** The unit of a symbol, in letters of any size and in words; nothing for any other text. */
    public static Optional<SaleUnit> of(String symbol) {
        String single =
                symbol.strip().toLowerCase(Locale.ROOT).replace('\u00b3', '3').replaceFirst("s$", "");
        String known = WORDS.getOrDefault(single, single);
        return Arrays.stream(values())
                .filter(u -> u.symbol.equalsIgnoreCase(known))
                .findFirst();
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
