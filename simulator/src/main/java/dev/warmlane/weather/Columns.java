package dev.warmlane.weather;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** A column of values for each quantity, all missing (NaN) to begin with. */
final class Columns {

    private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);

    Columns(int rows) {
        for (WeatherColumn column : WeatherColumn.values()) {
            double[] missing = new double[rows];
            Arrays.fill(missing, Double.NaN);
            values.put(column, missing);
        }
    }

    /** The values themselves, not a copy. */
    double[] of(WeatherColumn column) {
        return Objects.requireNonNull(values.get(column));
    }
}
