package dev.warmlane.units;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * What a number that is shown measures: its unit in words, at the end of the name of a csv column and as a scenario file
 * would have it, and how many decimals a person wants, in each system of units. The one table of units that are shown;
 * what may be written is in {@link Dimension}. Numbers come in as results have them: °C, kWh, m².
 */
@SuppressWarnings("ImmutableEnumChecker") // records of texts and numbers
public enum Measure {
    /** A temperature, °C. */
    TEMPERATURE(Dimension.TEMPERATURE, as("degC", 1), as("degF", 1)),
    /** A difference of temperatures, K. */
    TEMPERATURE_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, as("K", 1), as("degF", 1, "degf_difference")),
    /** Heat or gas, kWh. */
    HEAT(Dimension.ENERGY, as("kWh", 0), as("therms", 0), as("kWh", 0)),
    /** Heat on each unit of area, kWh/m². */
    HEAT_PER_AREA(Dimension.ENERGY_PER_AREA, as("kWh/m2", 0), as("kBtu/ft2", 0), as("kWh/ft2", 1)),
    /** Heat on each unit of area where small differences count, kWh/m². */
    LIGHT(Dimension.ENERGY_PER_AREA, as("kWh/m2", 1), as("kBtu/ft2", 1), as("kWh/ft2", 2)),
    /** A film coefficient, W/m²K. */
    FILM(Dimension.HEAT_TRANSFER_COEFFICIENT, as("W/m2K", 1), as("Btu/h ft2 F", 2)),
    /** Conductance, W/K. */
    CONDUCTANCE(Dimension.CONDUCTANCE, as("W/K", 0), as("Btu/h F", 0)),
    /** Thermal conductivity, W/mK. */
    CONDUCTIVITY(Dimension.CONDUCTIVITY, as("W/mK", 2), as("Btu/h ft F", 2)),
    /** Thermal resistance, m²K/W. */
    RESISTANCE(Dimension.THERMAL_RESISTANCE, as("m2K/W", 2), as("h ft2 F/Btu", 1)),
    /** Electricity, kWh everywhere. */
    ELECTRICITY(Dimension.ENERGY, as("kWh", 0), as("kWh", 0)),
    /** Power of a pump, W everywhere. */
    PUMP_POWER(Dimension.POWER, as("W", 0), as("W", 0)),
    /** Heat of a person, W. */
    BODY_HEAT(Dimension.POWER, as("W", 0), as("Btu/h", 0)),
    /** Power of heat, kW. */
    POWER(Dimension.HEAT_POWER, as("kW", 0), as("kBtu/h", 0)),
    /** Irradiance, W/m². */
    IRRADIANCE(Dimension.IRRADIANCE, as("W/m2", 0), as("Btu/h ft2", 0)),
    /** An angle, degrees everywhere. */
    ANGLE(Dimension.ANGLE, as("deg", 0), as("deg", 0)),
    /** Length, m. */
    LENGTH(Dimension.LENGTH, as("m", 1), as("ft", 1)),
    /** Length to be set out on a roof, m. */
    LAID_LENGTH(Dimension.LENGTH, as("m", 2), as("ft", 2)),
    /** Length of something small, mm. */
    SMALL_LENGTH(Dimension.LENGTH, as("mm", 0), as("in", 2)),
    /** Area, m². */
    AREA(Dimension.AREA, as("m2", 0), as("ft2", 0)),
    /** Volume of water, m³. */
    VOLUME(Dimension.VOLUME, as("m3", 0), as("gal", 0)),
    /** Volume of a vessel, L. */
    CONTENT(Dimension.VOLUME, as("L", 0), as("gal", 0)),
    /** Content on each unit of area, L/m². */
    CONTENT_PER_AREA(Dimension.VOLUME_PER_AREA, as("L/m2", 1), as("gal/ft2", 2)),
    /** Mass on each unit of area, kg/m². */
    WEIGHT(Dimension.MASS_PER_AREA, as("kg/m2", 1), as("lb/ft2", 2)),
    /** Water flow, m³/h. */
    FLOW(Dimension.VOLUME_FLOW, as("m3/h", 1), as("gal/min", 0)),
    /** Water a day, L/day. */
    WATER_A_DAY(Dimension.VOLUME_FLOW, as("L/day", 0), as("gal/day", 0)),
    /** Flow on each unit of area, kg/s·m². */
    FLOW_PER_AREA(Dimension.MASS_FLOW_PER_AREA, as("kg/s/m2", 3), as("gal/min/ft2", 2)),
    /** Mass, kg. */
    MASS(Dimension.MASS, as("kg", 0), as("lb", 0)),
    /** Pressure, kPa. */
    PRESSURE(Dimension.PRESSURE, as("kPa", 1), as("psi", 1)),
    /** Wind speed, m/s. */
    SPEED(Dimension.SPEED, as("m/s", 1), as("mph", 1)),
    /** Speed of water, m/s. */
    WATER_SPEED(Dimension.SPEED, as("m/s", 1), as("ft/s", 1)),
    /** Time, h. */
    HOURS(Dimension.DURATION, as("h", 0), as("h", 0)),
    /** A number of days. */
    DAYS(Dimension.DURATION, as("days", 0), as("days", 0)),
    /** A plain factor. */
    FACTOR(Dimension.FRACTION, as("", 2), as("", 2)),
    /** Time, in years. */
    YEARS(Dimension.FRACTION, as("years", 1), as("years", 1)),
    /** Money, in the currency of the prices. */
    MONEY(Dimension.FRACTION, as("", 0, "money"), as("", 0, "money")),
    /** A share, from 0 to 1 as it comes in, shown in per cent. */
    SHARE(Dimension.FRACTION, as("%", 0, "percent"), as("%", 0, "percent"));

    private final Dimension dimension;
    private final Shown metric;
    private final Shown us;
    private final Shown electric;
    private final DoubleUnaryOperator toUs;
    private final DoubleUnaryOperator toElectric;

    Measure(Dimension dimension, Shown metric, Shown us) {
        this(dimension, metric, us, us);
    }

    Measure(Dimension dimension, Shown metric, Shown us, Shown electric) {
        this.dimension = dimension;
        this.metric = metric;
        this.us = us;
        this.electric = electric;
        this.toUs = converter(dimension, metric, us);
        this.toElectric = converter(dimension, metric, electric);
    }

    /** The first that shows a dimension; nothing where its numbers are shown as a scenario file has them. */
    public static Optional<Measure> of(Dimension dimension) {
        return Arrays.stream(values()).filter(m -> m.dimension == dimension).findFirst();
    }

    /** The one that shows what a scenario has in a metric unit; nothing where it is shown in that unit everywhere. */
    public static Optional<Measure> of(Dimension dimension, String symbol) {
        return Arrays.stream(values())
                .filter(m -> m.dimension == dimension && m.metric.symbol.equals(symbol))
                .findFirst();
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** A value as it is shown, still a number. */
    public double in(UnitSystem units, double value) {
        double scaled = this == SHARE ? 100 * value : value;
        return switch (units) {
            case METRIC -> scaled;
            case US -> toUs.applyAsDouble(scaled);
            case US_ELECTRIC -> toElectric.applyAsDouble(scaled);
        };
    }

    /** How the unit is written. */
    public String unit(UnitSystem units) {
        return written(symbol(units));
    }

    /** The unit as {@link Dimension#allowedUnits} has it. */
    public String symbol(UnitSystem units) {
        return shown(units).symbol;
    }

    /** How the unit is written at the end of the name of a csv column. */
    public String suffix(UnitSystem units) {
        return shown(units).suffix;
    }

    /** How many decimals a person wants. */
    public int decimals(UnitSystem units) {
        return shown(units).decimals;
    }

    /**
     * A unit's symbol as a person wants to read it: {@code W/m²K} for {@code W/m2K}, {@code °F} for {@code degF}. A kelvin by
     * itself is a difference, which an owner reads in degrees.
     */
    public static String written(String symbol) {
        if (symbol.equals("K")) {
            return "°C";
        }
        return symbol.replaceAll("(?<=[A-Za-z])2", "²")
                .replaceAll("(?<=[A-Za-z])3", "³")
                .replaceAll("(?<=[A-Za-z])4", "⁴")
                .replaceAll("\\bF\\b", "°F")
                .replace("deg", "°");
    }

    private Shown shown(UnitSystem units) {
        return switch (units) {
            case METRIC -> metric;
            case US -> us;
            case US_ELECTRIC -> electric;
        };
    }

    private static DoubleUnaryOperator converter(Dimension dimension, Shown metric, Shown other) {
        return metric.symbol.equals(other.symbol)
                ? DoubleUnaryOperator.identity()
                : Quantity.converter(metric.symbol, other.symbol, dimension);
    }

    private static Shown as(String symbol, int decimals) {
        return new Shown(
                symbol,
                decimals,
                symbol.toLowerCase(Locale.ROOT)
                        .replaceAll("\\bf\\b", "degf")
                        .replace("/", "_per_")
                        .replace(' ', '_'));
    }

    private static Shown as(String symbol, int decimals, String suffix) {
        return new Shown(symbol, decimals, suffix);
    }

    private record Shown(String symbol, int decimals, String suffix) {}
}
