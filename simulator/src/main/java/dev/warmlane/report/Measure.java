package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.units.Units;
import java.util.function.DoubleUnaryOperator;

/**
 * What a number in a report measures: how its unit is written in words and in the name of a csv column, and how many
 * decimals a person wants, in metric and in US units. Numbers come in as results have them: °C, kWh, m².
 */
@SuppressWarnings("ImmutableEnumChecker") // records of text and method references without state
public enum Measure {
    /** A temperature, °C. */
    TEMPERATURE(as("°C", "degc", 1), as("°F", "degf", 1), Units::fahrenheit),
    /** A difference of temperatures, K. */
    TEMPERATURE_DIFFERENCE(as("K", "k", 1), as("°F", "degf_difference", 1), Units::fahrenheitDifference),
    /** Heat or gas, kWh. */
    HEAT(as("kWh", "kwh", 0), as("therms", "therms", 0), kwh -> Units.therms(kwh * Units.KWH)),
    /** Heat on each unit of area, kWh/m². */
    HEAT_PER_AREA(
            as("kWh/m²", "kwh_per_m2", 0),
            as("kBtu/ft²", "kbtu_per_ft2", 0),
            kwhM2 -> Units.btuPerSquareFoot(kwhM2 * Units.KWH) / 1000),
    /** Heat on each unit of area where small differences count, kWh/m². */
    LIGHT(
            as("kWh/m²", "kwh_per_m2", 1),
            as("kBtu/ft²", "kbtu_per_ft2", 1),
            kwhM2 -> Units.btuPerSquareFoot(kwhM2 * Units.KWH) / 1000),
    /** A film coefficient, W/m²K. */
    FILM(
            as("W/m²K", "w_per_m2k", 1),
            as("Btu/h ft² °F", "btu_per_h_ft2_degf", 2),
            wm2K -> Units.btuPerHour(wm2K) / Units.squareFeet(1) / Units.fahrenheitDifference(1)),
    /** Electricity, kWh everywhere. */
    ELECTRICITY(as("kWh", "kwh", 0), as("kWh", "kwh", 0), DoubleUnaryOperator.identity()),
    /** Power of heat, kW. */
    POWER(as("kW", "kw", 0), as("kBtu/h", "kbtu_per_h", 0), Units::btuPerHour),
    /** Irradiance, W/m². */
    IRRADIANCE(
            as("W/m²", "w_per_m2", 0),
            as("Btu/h ft²", "btu_per_h_ft2", 0),
            wm2 -> Units.btuPerHour(wm2) / Units.squareFeet(1)),
    /** An angle, degrees everywhere. */
    ANGLE(as("°", "deg", 0), as("°", "deg", 0), DoubleUnaryOperator.identity()),
    /** Length, m. */
    LENGTH(as("m", "m", 1), as("ft", "ft", 1), Units::feet),
    /** Area, m². */
    AREA(as("m²", "m2", 0), as("ft²", "ft2", 0), Units::squareFeet),
    /** Volume of water, m³. */
    VOLUME(as("m³", "m3", 0), as("gal", "gal", 0), Units::usGallons),
    /** Volume of a vessel, L. */
    CONTENT(as("L", "l", 0), as("gal", "gal", 0), litres -> Units.usGallons(litres / 1000)),
    /** Mass on each unit of area, kg/m². */
    WEIGHT(as("kg/m²", "kg_per_m2", 1), as("lb/ft²", "lb_per_ft2", 2), kg -> kg / Units.POUND / Units.squareFeet(1)),
    /** Water flow, m³/h. */
    FLOW(as("m³/h", "m3_per_h", 1), as("gal/min", "gal_per_min", 0), m3h -> Units.usGallonsPerMinute(m3h / Units.HOUR)),
    /** Mass, kg. */
    MASS(as("kg", "kg", 0), as("lb", "lb", 0), kg -> kg / Units.POUND),
    /** Wind speed, m/s. */
    SPEED(as("m/s", "m_per_s", 1), as("mph", "mph", 1), Units::milesPerHour),
    /** Time, h. */
    HOURS(as("h", "h", 0), as("h", "h", 0), DoubleUnaryOperator.identity()),
    /** A number of days. */
    DAYS(as("days", "days", 0), as("days", "days", 0), DoubleUnaryOperator.identity()),
    /** Time, in seasons. */
    SEASONS(as("seasons", "seasons", 1), as("seasons", "seasons", 1), DoubleUnaryOperator.identity()),
    /** Money, in the currency of the prices. */
    MONEY(as("", "money", 0), as("", "money", 0), DoubleUnaryOperator.identity()),
    /** A plain factor. */
    FACTOR(as("", "", 2), as("", "", 2), DoubleUnaryOperator.identity()),
    /** A share, from 0 to 1 as it comes in, shown in per cent. */
    SHARE(as("%", "percent", 0), as("%", "percent", 0), DoubleUnaryOperator.identity());

    private final Shown metric;
    private final Shown us;

    private final DoubleUnaryOperator toUs;

    Measure(Shown metric, Shown us, DoubleUnaryOperator toUs) {
        this.metric = metric;
        this.us = us;
        this.toUs = toUs;
    }

    /** A value as it is shown, still a number. */
    public double in(ReportSettings.Units units, double value) {
        double scaled = this == SHARE ? 100 * value : value;
        return units == ReportSettings.Units.US ? toUs.applyAsDouble(scaled) : scaled;
    }

    /** How the unit is written. */
    public String unit(ReportSettings.Units units) {
        return shown(units).unit;
    }

    /** How the unit is written at the end of the name of a csv column. */
    public String suffix(ReportSettings.Units units) {
        return shown(units).suffix;
    }

    /** How many decimals a person wants. */
    public int decimals(ReportSettings.Units units) {
        return shown(units).decimals;
    }

    private Shown shown(ReportSettings.Units units) {
        return units == ReportSettings.Units.US ? us : metric;
    }

    private static Shown as(String unit, String suffix, int decimals) {
        return new Shown(unit, suffix, decimals);
    }

    private record Shown(String unit, String suffix, int decimals) {}
}
