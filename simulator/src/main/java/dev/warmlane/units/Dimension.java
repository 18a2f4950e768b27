package dev.warmlane.units;

import static dev.warmlane.units.Unit.unit;
import static dev.warmlane.units.Units.ACRE;
import static dev.warmlane.units.Units.BTU;
import static dev.warmlane.units.Units.DAY;
import static dev.warmlane.units.Units.FAHRENHEIT_DEGREE;
import static dev.warmlane.units.Units.FOOT;
import static dev.warmlane.units.Units.FOOT2;
import static dev.warmlane.units.Units.FOOT3;
import static dev.warmlane.units.Units.HECTARE;
import static dev.warmlane.units.Units.HORSEPOWER;
import static dev.warmlane.units.Units.HOUR;
import static dev.warmlane.units.Units.INCH;
import static dev.warmlane.units.Units.KWH;
import static dev.warmlane.units.Units.LITRE;
import static dev.warmlane.units.Units.MEGAJOULE;
import static dev.warmlane.units.Units.MILE;
import static dev.warmlane.units.Units.MINUTE;
import static dev.warmlane.units.Units.MMBTU;
import static dev.warmlane.units.Units.POUND;
import static dev.warmlane.units.Units.PSI;
import static dev.warmlane.units.Units.THERM;
import static dev.warmlane.units.Units.US_GALLON;
import static dev.warmlane.units.Units.YARD;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of quantity that an installation is described by, each with the units it may be written in. The first unit
 * of each is the base unit, the one that {@link Quantity#parse} returns: SI, save that temperatures are in °C, angles
 * in degrees and pressures in kPa, as everywhere in this library. Gallons are US gallons.
 */
public enum Dimension {
    /** Length, m. */
    LENGTH(
            "a length",
            unit("m", 1),
            unit("cm", 0.01),
            unit("mm", 1e-3),
            unit("ft", FOOT),
            unit("in", INCH),
            unit("yd", YARD)),

    /** Area, m². */
    AREA(
            "an area",
            unit("m2", 1),
            unit("ft2", FOOT2),
            unit("yd2", YARD * YARD),
            unit("acre", ACRE),
            unit("ha", HECTARE)),

    /** Volume, m³. */
    VOLUME("a volume", unit("m3", 1), unit("L", LITRE), unit("ft3", FOOT3), unit("gal", US_GALLON)),

    /** Volume on each unit of area, m³/m², such as the water content of a collector. */
    VOLUME_PER_AREA("a volume per area", unit("m3/m2", 1), unit("L/m2", LITRE), unit("gal/ft2", US_GALLON / FOOT2)),

    /** Mass on each unit of area, kg/m², such as the weight of a collector. */
    MASS_PER_AREA("a weight per area", unit("kg/m2", 1), unit("lb/ft2", POUND / FOOT2)),

    /** Volume flow, m³/s. */
    VOLUME_FLOW(
            "a volume flow",
            unit("m3/s", 1),
            unit("m3/h", 1 / HOUR),
            unit("m3/day", 1 / DAY),
            unit("L/s", LITRE),
            unit("L/min", LITRE / MINUTE),
            unit("L/h", LITRE / HOUR),
            unit("L/day", LITRE / DAY),
            unit("gal/min", US_GALLON / MINUTE),
            unit("gal/h", US_GALLON / HOUR),
            unit("gal/day", US_GALLON / DAY)),

    /**
     * Mass flow on each unit of area, kg/s·m². A flow given by volume counts 1 kg to the litre, the custom of collector
     * data sheets; pool water weighs 0.2 to 0.5 % less.
     */
    MASS_FLOW_PER_AREA(
            "a flow per area",
            unit("kg/s/m2", 1),
            unit("kg/h/m2", 1 / HOUR),
            unit("L/s/m2", 1),
            unit("L/min/m2", 1 / MINUTE),
            unit("L/h/m2", 1 / HOUR),
            unit("gal/min/ft2", US_GALLON / LITRE / MINUTE / FOOT2)),

    /** Mass, kg. */
    MASS("a mass", unit("kg", 1), unit("g", 1e-3), unit("lb", POUND)),

    /** Temperature, °C. */
    TEMPERATURE("a temperature", unit("degC", 1), new Unit("degF", FAHRENHEIT_DEGREE, -32), new Unit("K", 1, -273.15)),

    /** Difference of two temperatures, K. Here "degC" and "degF" mean the size of the degree: "9 degF" is 5 K. */
    TEMPERATURE_DIFFERENCE("a temperature difference", unit("K", 1), unit("degC", 1), unit("degF", FAHRENHEIT_DEGREE)),

    /** Angle, degrees. */
    ANGLE("an angle", unit("deg", 1), unit("rad", 180 / Math.PI)),

    /** Tilt from the horizontal, degrees; also a rise over its run, as a roof's "4:12". */
    TILT("a tilt", unit("deg", 1), unit("rad", 180 / Math.PI)),

    /** Direction, degrees clockwise from north; also a point of the compass in words, "south-west". */
    DIRECTION("a direction", unit("deg", 1), unit("rad", 180 / Math.PI)),

    /** Time span, s. */
    DURATION("a duration", unit("s", 1), unit("min", MINUTE), unit("h", HOUR), unit("day", DAY), unit("days", DAY)),

    /** Speed, m/s. */
    SPEED("a speed", unit("m/s", 1), unit("km/h", 1000 / HOUR), unit("ft/s", FOOT), unit("mph", MILE / HOUR)),

    /** Share of a whole, dimensionless; a plain number or a percentage. */
    FRACTION("a fraction", unit("", 1), unit("%", 0.01)),

    /** Number without a unit: a factor, a count. */
    NUMBER("a number", unit("", 1)),

    /** Pressure, kPa. */
    PRESSURE(
            "a pressure",
            unit("kPa", 1),
            unit("Pa", 1e-3),
            unit("hPa", 0.1),
            unit("mbar", 0.1),
            unit("bar", 100),
            unit("psi", PSI / 1000)),

    /** Energy, J. */
    ENERGY(
            "an energy",
            unit("J", 1),
            unit("kJ", 1e3),
            unit("MJ", 1e6),
            unit("GJ", 1e9),
            unit("kWh", KWH),
            unit("MWh", 1e3 * KWH),
            unit("Btu", BTU),
            unit("kBtu", 1e3 * BTU),
            unit("therm", THERM),
            unit("therms", THERM),
            unit("MMBtu", MMBTU)),

    /** Energy on each unit of area, J/m². */
    ENERGY_PER_AREA(
            "an energy per area",
            unit("J/m2", 1),
            unit("kWh/m2", KWH),
            unit("kBtu/ft2", 1e3 * BTU / FOOT2),
            unit("kWh/ft2", KWH / FOOT2)),

    /** Power, W. */
    POWER("a power", powers(unit("hp", HORSEPOWER))),

    /** Power of heat, W. Horsepower is none: a boiler's is thirteen times that of a motor. */
    HEAT_POWER("a power of heat", powers(unit("MJ/h", MEGAJOULE / HOUR))),

    /** Power on each unit of area, W/m². */
    IRRADIANCE("an irradiance", unit("W/m2", 1), unit("kW/m2", 1e3), unit("Btu/h ft2", BTU / HOUR / FOOT2)),

    /** Conductance, W/K, such as the heat loss of a run of pipe. */
    CONDUCTANCE("a conductance", unit("W/K", 1), unit("kW/K", 1e3), unit("Btu/h F", BTU / HOUR / FAHRENHEIT_DEGREE)),

    /** Thermal conductivity, W/mK. */
    CONDUCTIVITY("a conductivity", unit("W/mK", 1), unit("Btu/h ft F", BTU / HOUR / FOOT / FAHRENHEIT_DEGREE)),

    /** Heat transfer coefficient, W/m²K. */
    HEAT_TRANSFER_COEFFICIENT(
            "a heat transfer coefficient",
            unit("W/m2K", 1),
            unit("Btu/h ft2 F", BTU / HOUR / FOOT2 / FAHRENHEIT_DEGREE)),

    /** Rise of a heat transfer coefficient with temperature difference, W/m²K². */
    HEAT_TRANSFER_PER_KELVIN("a heat transfer coefficient per kelvin", unit("W/m2K2", 1)),

    /** Radiative loss coefficient of a certificate, W/m²K⁴. */
    RADIATIVE_LOSS_COEFFICIENT("a radiative loss coefficient", unit("W/m2K4", 1)),

    /** Rise of a heat transfer coefficient with wind speed, J/m³K. */
    WIND_LOSS_COEFFICIENT("a wind loss coefficient", unit("J/m3K", 1), unit("Ws/m3K", 1)),

    /** Fall of an efficiency with wind speed, s/m. */
    PER_SPEED("a wind dependence", unit("s/m", 1)),

    /** Thermal resistance of a unit of area, m²K/W. */
    THERMAL_RESISTANCE(
            "a thermal resistance", unit("m2K/W", 1), unit("h ft2 F/Btu", HOUR * FOOT2 * FAHRENHEIT_DEGREE / BTU)),

    /** Heat in a unit of volume of fuel, J/m³. */
    HEATING_VALUE(
            "a heating value",
            unit("J/m3", 1),
            unit("MJ/m3", 1e6),
            unit("kWh/m3", KWH),
            unit("MJ/L", 1e6 / LITRE),
            unit("kWh/L", KWH / LITRE),
            unit("Btu/ft3", BTU / FOOT3),
            unit("Btu/gal", BTU / US_GALLON)),

    /** Mass set free with a unit of heat, kg/J, such as the carbon dioxide of a fuel. */
    MASS_PER_ENERGY(
            "a mass per energy",
            unit("kg/J", 1),
            unit("kg/GJ", 1e-9),
            unit("kg/kWh", 1 / KWH),
            unit("g/kWh", 1e-3 / KWH),
            unit("kg/MMBtu", 1 / MMBTU),
            unit("lb/kWh", POUND / KWH),
            unit("lb/MMBtu", POUND / MMBTU)),

    /** Price of energy, currency per J. */
    PRICE_PER_ENERGY(
            "a price of energy",
            unit("per J", 1),
            unit("per kWh", 1 / KWH),
            unit("per MWh", 1e-3 / KWH),
            unit("per MJ", 1e-6),
            unit("per GJ", 1e-9),
            unit("per therm", 1 / THERM),
            unit("per MMBtu", 1 / MMBTU)),

    /** Price of a unit of area, currency per m². */
    PRICE_PER_AREA("a price of an area", unit("per m2", 1), unit("per ft2", 1 / FOOT2));

    private final String phrase;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable copy of immutable records
    private final List<Unit> units;

    Dimension(String phrase, Unit... units) {
        this.phrase = phrase;
        this.units = List.of(units);
    }

    /** Those of every power, and another. */
    private static Unit[] powers(Unit another) {
        return new Unit[] {
            unit("W", 1),
            unit("kW", 1e3),
            unit("MW", 1e6),
            unit("Btu/h", BTU / HOUR),
            unit("kBtu/h", 1e3 * BTU / HOUR),
            unit("MBH", 1e3 * BTU / HOUR),
            unit("MMBtu/h", MMBTU / HOUR),
            another
        };
    }

    /** The dimension with its article, for messages: "an area". */
    public String phrase() {
        return phrase;
    }

    /** Symbol of the base unit, in which {@link Quantity#parse} returns; empty for a fraction and for a number. */
    public String baseUnit() {
        return units.get(0).symbol();
    }

    /** Symbols of all units that this dimension may be written in, the base unit first. */
    public List<String> allowedUnits() {
        return units.stream().map(Unit::symbol).toList();
    }

    /**
     * How else a quantity of this kind may be written, to follow the word "or"; empty where a number with a unit is all.
     */
    public String otherwise() {
        return switch (this) {
            case TILT -> "as a rise over its run, such as \"4:12\"";
            case DIRECTION -> "in words, such as \"south-west\"";
            case FRACTION -> "in %";
            default -> "";
        };
    }

    /**
     * The value in the base unit of a text that is more or less than one number with one unit, such as "5 ft 6 in",
     * "25 m x 12.5 m", "4:12" or "south"; empty if it is nothing of the kind.
     */
    OptionalDouble special(String usual) {
        return switch (this) {
            case LENGTH -> Lengths.ofTwo(usual);
            case AREA -> Lengths.area(usual);
            case TILT -> Bearings.slope(usual);
            case DIRECTION -> Bearings.direction(usual);
            default -> OptionalDouble.empty();
        };
    }

    /**
     * The unit that somebody wrote, as a symbol, in words or with letters of the wrong size; null if this dimension has
     * none such, or two.
     */
    @Nullable
    Unit find(String written) {
        Unit exact = byKey(UnitText.key(written), false);
        if (exact != null) {
            return exact;
        }
        String key = UnitText.key(UnitWords.symbols(written));
        Unit meant = byKey(key, false);
        return meant == null ? byKey(key, true) : meant;
    }

    private @Nullable Unit byKey(String key, boolean anyCase) {
        Unit found = null;
        for (Unit unit : units) {
            String known = UnitText.key(unit.symbol());
            if (anyCase ? known.equalsIgnoreCase(key) : known.equals(key)) {
                if (found != null) {
                    return null;
                }
                found = unit;
            }
        }
        return found;
    }
}
