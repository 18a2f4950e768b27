package dev.warmlane.units;

/**
 * Conversion factors and the conversions that output needs. Factors are exact by definition unless said otherwise (NIST
 * Special Publication 811, 2008, appendix B).
 */
public final class Units {

    /** What kilo stands for. */
    private static final double KILO = 1000;

    /** Pascal, kPa. */
    public static final double PASCAL = 1 / KILO;

    /** Inch, m. */
    public static final double INCH = 0.0254;

    /** International foot, m. */
    public static final double FOOT = 0.3048;

    /** Yard, three feet, m. */
    public static final double YARD = 0.9144;

    /** International mile, m. */
    public static final double MILE = 1609.344;

    /** Square foot, m². */
    public static final double FOOT2 = FOOT * FOOT;

    /** Acre of 4840 square yards, m²; the survey foot's is 4 in a million larger. */
    public static final double ACRE = 4840 * YARD * YARD;

    /** Hectare, m². */
    public static final double HECTARE = 1e4;

    /** Cubic foot, m³. */
    public static final double FOOT3 = FOOT * FOOT * FOOT;

    /** Litre, m³. */
    public static final double LITRE = 1e-3;

    /** US liquid gallon, 231 cubic inches, m³. */
    public static final double US_GALLON = 231 * INCH * INCH * INCH;

    /** Avoirdupois pound, kg. */
    public static final double POUND = 0.45359237;

    /** Standard acceleration of gravity, m/s². */
    private static final double GRAVITY = 9.80665;

    /** Pound-force per square inch, Pa. */
    public static final double PSI = POUND * GRAVITY / (INCH * INCH);

    /** Mechanical horsepower, 550 foot-pounds of force a second, W; the electrical one, 746 W, is 0.04 % larger. */
    public static final double HORSEPOWER = 550 * FOOT * POUND * GRAVITY;

    /** Degree Fahrenheit as a difference, K. */
    public static final double FAHRENHEIT_DEGREE = 5.0 / 9;

    /** Minute, s. */
    public static final double MINUTE = 60;

    /** Hour, s. */
    public static final double HOUR = 3600;

    /** Day of 24 hours, s. */
    public static final double DAY = 24 * HOUR;

    /** Kilowatt-hour, J. */
    public static final double KWH = 3.6e6;

    /** Gigajoule, J. */
    public static final double GIGAJOULE = 1e9;

    /** British thermal unit of the International Table, J. */
    public static final double BTU = 1055.05585262;

    /**
     * Therm, J: 100,000 Btu of the International Table, so that ten therms are one MMBtu. The therm of US law, built on
     * the Btu of 59 °F, is 0.024 % smaller (1.054804e8 J).
     */
    public static final double THERM = 1e5 * BTU;

    /** Megajoule, J. */
    public static final double MEGAJOULE = 1e6;

    /** Million Btu, J. */
    public static final double MMBTU = 1e6 * BTU;

    /** Ton of refrigeration, 12,000 Btu of the International Table an hour, W. */
    public static final double REFRIGERATION_TON = 12_000 * BTU / HOUR;

    /**
     * Kilocalorie of the International Table, which ISO 31-4 defines as 4186.8 J (from memory), so that 1 kcal/h is
     * 1.163 W exactly; the thermochemical one, 4184 J, is 0.07 % smaller.
     */
    public static final double KILOCALORIE = 4186.8;

    /** Metric horsepower (PS, cv), 75 metre-kilograms of force a second, W. */
    public static final double METRIC_HORSEPOWER = 75 * GRAVITY;

    /**
     * Heat that evaporates a kilogram of water at 212 °F, 100 °C, J: 2256.5 kJ/kg by the steam tables of IAPWS (from
     * memory).
     */
    private static final double EVAPORATION = 2.2565e6;

    /**
     * Boiler horsepower, W: 34.5 lb of water evaporated in an hour from and at 212 °F, the definition of the American
     * Society of Mechanical Engineers (from memory). It comes to 9808.8 W; NIST SP 811 has 9809.50 W, rounded of steam
     * tables before these.
     */
    public static final double BOILER_HORSEPOWER = 34.5 * POUND * EVAPORATION / HOUR;

    private Units() {}

    /** Joules as kWh. */
    public static double kwh(double joules) {
        return joules / KWH;
    }

    /** Watt-hours as kWh; also W/m² summed over hours as kWh/m². */
    public static double kwhOfWattHours(double wattHours) {
        return wattHours / KILO;
    }

    /** kWh as MJ. */
    public static double megajoules(double kwh) {
        return kwh * (KWH / MEGAJOULE);
    }

    /** Kilowatts as watts. */
    public static double watts(double kilowatts) {
        return kilowatts * KILO;
    }

    /** Metres as millimetres. */
    public static double millimetres(double metres) {
        return metres * KILO;
    }

    /** Litres as m³; also kilograms of water, one to the litre. */
    public static double cubicMetres(double litres) {
        return litres / KILO;
    }

    /** Joules as GJ. */
    public static double gigajoules(double joules) {
        return joules / GIGAJOULE;
    }

    /** Joules as therms. */
    public static double therms(double joules) {
        return joules / THERM;
    }

    /** °C as °F. */
    public static double fahrenheit(double celsius) {
        return celsius * 1.8 + 32;
    }

    /** °F as °C. */
    public static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /** A difference in K as a difference in °F. */
    public static double fahrenheitDifference(double kelvin) {
        return kelvin * 1.8;
    }

    /** Metres as feet. */
    public static double feet(double metres) {
        return metres / FOOT;
    }

    /** Square metres as square feet. */
    public static double squareFeet(double squareMetres) {
        return squareMetres / FOOT2;
    }

    /** Cubic metres as US gallons. */
    public static double usGallons(double cubicMetres) {
        return cubicMetres / US_GALLON;
    }

    /** m³/s as US gallons per minute. */
    public static double usGallonsPerMinute(double cubicMetresPerSecond) {
        return cubicMetresPerSecond * MINUTE / US_GALLON;
    }

    /** m/s as miles per hour. */
    public static double milesPerHour(double metresPerSecond) {
        return metresPerSecond * HOUR / MILE;
    }

    /** Watts as Btu/h. */
    public static double btuPerHour(double watts) {
        return watts * HOUR / BTU;
    }

    /** J/m² as Btu/ft². */
    public static double btuPerSquareFoot(double joulesPerSquareMetre) {
        return joulesPerSquareMetre * FOOT2 / BTU;
    }
}
