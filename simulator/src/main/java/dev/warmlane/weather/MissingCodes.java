package dev.warmlane.weather;

import java.util.EnumMap;
import java.util.Map;

/** The first cell of each column that was read as a format's code for a missing value: it may be no code at all. */
final class MissingCodes {

    private final Map<WeatherColumn, Double> first = new EnumMap<>(WeatherColumn.class);

    void add(WeatherColumn column, double asWritten) {
        first.putIfAbsent(column, asWritten);
    }

    void addAll(MissingCodes others) {
        others.first.forEach(first::putIfAbsent);
    }

    /** To follow the news that a column is empty; nothing where its cells are. */
    String told(WeatherColumn column) {
        Double code = first.get(column);
        return code == null ? "" : ", only what counts as a code for a missing value, " + Occurrences.number(code);
    }
}
