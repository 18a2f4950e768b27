package dev.warmlane.weather;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Guesses what a column really holds when its values cannot be what it should. The limits are our own judgement. */
final class UnitGuess {

    /** No air is this warm in °C, and none this cold in kelvin. */
    private static final double KELVIN_ABOVE = 150;

    private static final double FAHRENHEIT_FROM = -90;
    private static final double FAHRENHEIT_TO = 140;
    /** W/m² over an hour are 3.6 times as many kJ/m². */
    private static final double KILOJOULES_PER_WATT_HOUR = 3.6;
    /** In km/h, mph or knots no wind of the column's limit exceeds this. */
    private static final double OTHER_SPEED_AT_MOST = 200;

    /** 1 W/m² over an hour is 0.32 Btu/ft², 0.0036 MJ/m² and 0.001 kWh/m². */
    static final double KILOWATTS_BELOW = 0.01;

    private static final String ANOTHER = "Is another column in its place, or a code for missing values?";

    private UnitGuess() {}

    /** A question for the user. */
    static String of(WeatherColumn column, double[] values) {
        double lowest = known(values).min().orElse(Double.NaN);
        double highest = known(values).max().orElse(Double.NaN);
        return switch (column) {
            case AIR, DEW -> temperature(lowest, highest);
            case GLOBAL, DIRECT, DIRECT_HORIZONTAL, DIFFUSE, LONG_WAVE ->
                lowest >= 0 && highest <= column.highest() * KILOJOULES_PER_WATT_HOUR
                        ? "Is the column in kJ/m²?"
                        : ANOTHER;
            case RELATIVE_HUMIDITY -> isFraction(values) ? "Is the column a fraction of 1 and not in %?" : ANOTHER;
            case WIND ->
                lowest >= 0 && highest <= OTHER_SPEED_AT_MOST ? "Is the column in km/h, mph or knots?" : ANOTHER;
            case PRESSURE -> lowest > 0 ? "Is the column in another unit?" : ANOTHER;
            case SUNSHINE -> lowest >= 0 && highest <= 60 ? "Is the column in minutes?" : ANOTHER;
            case CLOUD -> lowest >= 0 && highest <= 100 ? "Is the column in percent?" : ANOTHER;
        };
    }

    /** The same of all irradiance, from the share of the light outside the atmosphere on the brightest day of a year. */
    static String ofClearness(double brightest) {
        if (brightest > 1) {
            return "Is irradiance in kJ/m² or scaled?";
        }
        return brightest < KILOWATTS_BELOW ? "Is irradiance in kW/m² or MJ/m²?" : "Is irradiance in Btu/ft² or scaled?";
    }

    private static String temperature(double lowest, double highest) {
        if (lowest > KELVIN_ABOVE) {
            return "Is the column in kelvin?";
        }
        return lowest >= FAHRENHEIT_FROM && highest <= FAHRENHEIT_TO ? "Is the column in degrees Fahrenheit?" : ANOTHER;
    }

    /** Whether humidity that should be in percent never comes beyond what a fraction can be. */
    static boolean isFraction(double[] humidity) {
        return known(humidity).max().orElse(Double.NaN) <= WeatherColumn.RELATIVE_HUMIDITY.highest() / 100;
    }

    private static DoubleStream known(double[] values) {
        return Arrays.stream(values).filter(value -> !Double.isNaN(value));
    }
}
