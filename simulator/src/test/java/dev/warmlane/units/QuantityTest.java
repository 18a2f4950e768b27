package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Isolated("sets the language of the machine")
class QuantityTest {

    /** The expected values are published with seven digits. */
    private static final double SEVEN_DIGITS = 5e-7;

    /** A few roundings of a double. */
    private static final double ROUNDING = 1e-14;

    // Factors: NIST Special Publication 811 (2008), appendix B, seven digits; the rest by hand.
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    8000 ft2            | AREA | 743.2243
                    8000 sq ft          | AREA | 743.2243
                    30 m²               | AREA | 30
                    30 ft               | LENGTH | 9.144
                    25 m                | LENGTH | 25
                    12 in               | LENGTH | 0.3048
                    27 degC             | TEMPERATURE | 27
                    27 °C               | TEMPERATURE | 27
                    −5 °C               | TEMPERATURE | -5
                    80 degF             | TEMPERATURE | 26.6666667
                    300 K               | TEMPERATURE | 26.85
                    4 K                 | TEMPERATURE_DIFFERENCE | 4
                    9 degF              | TEMPERATURE_DIFFERENCE | 5
                    0.1 gal/min/ft2     | MASS_FLOW_PER_AREA | 0.06790972
                    0.1 gpm/ft2         | MASS_FLOW_PER_AREA | 0.06790972
                    180 kg/h/m2         | MASS_FLOW_PER_AREA | 0.05
                    180 L/(h·m²)        | MASS_FLOW_PER_AREA | 0.05
                    180 l/h m2          | MASS_FLOW_PER_AREA | 0.05
                    0.05 kg/s/m2        | MASS_FLOW_PER_AREA | 0.05
                    3.6 m3/h            | VOLUME_FLOW | 0.001
                    1 gal/min           | VOLUME_FLOW | 6.309020e-5
                    86400 L/day         | VOLUME_FLOW | 0.001
                    1 gal               | VOLUME | 3.785412e-3
                    1 ft3               | VOLUME | 2.831685e-2
                    12 L/m2             | VOLUME_PER_AREA | 0.012
                    2.5 W/m2K           | HEAT_TRANSFER_COEFFICIENT | 2.5
                    2.5 W/(m²·K)        | HEAT_TRANSFER_COEFFICIENT | 2.5
                    2.5 W/m2/K          | HEAT_TRANSFER_COEFFICIENT | 2.5
                    1 Btu/h ft2 F       | HEAT_TRANSFER_COEFFICIENT | 5.678263
                    1 Btu/(hr·ft²·°F)   | HEAT_TRANSFER_COEFFICIENT | 5.678263
                    0.03 m2K/W          | THERMAL_RESISTANCE | 0.03
                    1 h ft2 F/Btu       | THERMAL_RESISTANCE | 0.1761102
                    1 Btu/h ft F        | CONDUCTIVITY | 1.730735
                    1 Btu/h F           | CONDUCTANCE | 0.5275279
                    40 W/K              | CONDUCTANCE | 40
                    95 %                | FRACTION | 0.95
                    95%                 | FRACTION | 0.95
                    0.82                | FRACTION | 0.82
                    300 kW              | POWER | 300000
                    1 MMBtu/h           | POWER | 293071.07
                    5 km/h              | SPEED | 1.3888889
                    10 mph              | SPEED | 4.4704
                    90 deg              | ANGLE | 90
                    37°                 | ANGLE | 37
                    90 min              | DURATION | 5400
                    2 days              | DURATION | 172800
                    1013.25 hPa         | PRESSURE | 101.325
                    1 psi               | PRESSURE | 6.894757
                    1 kWh               | ENERGY | 3600000
                    1 therm             | ENERGY | 1.0550559e8
                    10 therms           | ENERGY | 1.0550559e9
                    1 MMBtu             | ENERGY | 1.0550559e9
                    1036 Btu/ft3        | HEATING_VALUE | 38600270
                    25.48 MJ/L          | HEATING_VALUE | 2.548e10
                    53.06 kg/MMBtu      | MASS_PER_ENERGY | 5.0291176e-8
                    0.86 lb/kWh         | MASS_PER_ENERGY | 1.0835818e-7
                    0.36 per kWh        | PRICE_PER_ENERGY | 1e-7
                    0.36/kWh            | PRICE_PER_ENERGY | 1e-7
                    1.05505585262 per therm | PRICE_PER_ENERGY | 1e-8
                    120 per m2          | PRICE_PER_AREA | 120
                    4 Ws/m3K            | WIND_LOSS_COEFFICIENT | 4
                    0.02 s/m            | PER_SPEED | 0.02
                    1 Btu/h ft2         | IRRADIANCE | 3.154591
                    1 lb                | MASS | 0.45359237
                    1e3 m               | LENGTH | 1000
                    .5 m                | LENGTH | 0.5
                    8,000 ft2           | AREA | 743.2243
                    8 000 m2            | AREA | 8000
                    8'000 m2            | AREA | 8000
                    1,234,567 m2        | AREA | 1234567
                    1,234.5 m2          | AREA | 1234.5
                    300 KW              | POWER | 300000
                    400 MBH             | POWER | 117228.4
                    1 hp                | POWER | 745.6999
                    4 m3/hour           | VOLUME_FLOW | 0.001111111
                    1 MMBtuh            | POWER | 293071.07
                    25 Feet             | LENGTH | 7.62
                    2 yards             | LENGTH | 1.8288
                    9 square feet       | AREA | 0.8361274
                    1 acre              | AREA | 4046.856
                    1 ha                | AREA | 10000
                    20 cubic metres/h   | VOLUME_FLOW | 0.005555556
                    9 gallons per minute | VOLUME_FLOW | 5.678118e-4
                    27 degrees Celsius  | TEMPERATURE | 27
                    82 ft 6 in          | LENGTH | 25.146
                    82' 6 1/2"          | LENGTH | 25.1587
                    6"                  | LENGTH | 0.1524
                    -1/2 in             | LENGTH | -0.0127
                    2-3/4 hp            | POWER | 2050.675
                    1 m 5 cm            | LENGTH | 1.05
                    10 m × 2 ft 6 in    | AREA | 7.62
                    3:12                | TILT | 14.03624
                    1 in 60             | TILT | 0.9548413
                    20 deg              | TILT | 20
                    NNW                 | DIRECTION | 337.5
                    facing south east   | DIRECTION | 135
                    10° east of north   | DIRECTION | 10
                    10° west of north   | DIRECTION | 350
                    S                   | DIRECTION | 180
                    """)
    void readsNumberAndUnit(String text, Dimension dimension, double expected) {
        assertThat(Quantity.parse(text, dimension)).isCloseTo(expected, within(SEVEN_DIGITS * Math.abs(expected)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    8000         | AREA     | "8000" has no unit; write an area as a number with one of: m2, ft2
                    30 kW        | AREA     | "30 kW" is a power; write an area
                    95 %         | LENGTH   | "95 %" is a fraction; write a length
                    2 furlongs   | LENGTH   | has an unknown unit, "furlongs"; write a length
                    big          | AREA     | "big" does not begin with a number
                    ''           | AREA     | "" does not begin with a number
                    NaN m2       | AREA     | does not begin with a number
                    0,82         | FRACTION | has a decimal comma; write a decimal point, "0.82"
                    1,250 m      | LENGTH   | its comma may part thousands or decimals; write "1250 m", or "1.25 m"
                    1.000,5 m    | LENGTH   | write a decimal point, "1000.5 m"
                    5 ft 13 in   | LENGTH   | has two numbers; write one number and one unit
                    18:4         | TILT     | is not clear; did you mean "4:18"?
                    1/0 in       | LENGTH   | has a number with a comma or a gap
                    9 uk gal     | VOLUME   | an imperial gallon is 1.20095 gal or 4.54609 L
                    9 MBTU       | ENERGY   | is a thousand Btu to some and a million to others
                    northish     | DIRECTION | does not begin with a number; write a direction
                    1e999 m      | LENGTH   | "1e999 m" is too large
                    27 degC      | FRACTION | write a fraction as a number with one of: a plain number, %
                    """)
    void saysWhatIsWrong(String text, Dimension dimension, String message) {
        assertThatThrownBy(() -> Quantity.parse(text, dimension))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(message);
    }

    @ParameterizedTest
    @EnumSource
    void everyUnitGoesThereAndBack(Dimension dimension) {
        for (String unit : dimension.allowedUnits()) {
            double value = Quantity.parse("12.75 " + unit, dimension);
            assertThat(Quantity.in(unit, value, dimension)).isCloseTo(12.75, within(1e-12));
        }
    }

    @ParameterizedTest
    @EnumSource
    void noTwoUnitsOfADimensionAreWrittenAlike(Dimension dimension) {
        Set<String> keys = new HashSet<>();
        for (String unit : dimension.allowedUnits()) {
            assertThat(keys.add(UnitText.key(unit))).as(unit).isTrue();
        }
        assertThat(dimension.phrase()).startsWith("a");
        assertThat(dimension.allowedUnits().get(0)).isEqualTo(dimension.baseUnit());
    }

    @Test
    void languageOfTheMachineMakesNoDifference() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Quantity.parse("0.82", Dimension.FRACTION)).isEqualTo(0.82);
            assertThat(Quantity.plain(0.5)).isEqualTo("0.5");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void convertsForOutput() {
        assertThat(Units.kwh(7.2e6)).isEqualTo(2);
        assertThat(Units.gigajoules(3e9)).isEqualTo(3);
        assertThat(Units.therms(Quantity.parse("1 MMBtu", Dimension.ENERGY))).isCloseTo(10, within(ROUNDING * 10));
        assertThat(Units.fahrenheit(26.85)).isCloseTo(80.33, within(1e-12));
        assertThat(Units.fahrenheitDifference(5)).isEqualTo(9);
        assertThat(Units.feet(9.144)).isCloseTo(30, within(1e-12));
        assertThat(Units.squareFeet(743.224320)).isCloseTo(8000, within(1e-8));
        assertThat(Units.usGallons(3.785411784)).isCloseTo(1000, within(1e-9));
        assertThat(Units.usGallonsPerMinute(Quantity.parse("7 gal/min", Dimension.VOLUME_FLOW)))
                .isCloseTo(7, within(1e-12));
        assertThat(Units.milesPerHour(4.4704)).isCloseTo(10, within(1e-12));
        assertThat(Units.btuPerHour(Quantity.parse("5 Btu/h", Dimension.POWER))).isCloseTo(5, within(1e-12));
        assertThat(Units.btuPerSquareFoot(11356.526682)).isCloseTo(1, within(1e-6));
    }
}
