package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A year that was: all of its hours are of one calendar year, 29 February left out.
 *
 * @param calendarYear the year
 * @param weather its weather
 */
public record RealYear(int calendarYear, WeatherYear weather) {

    /** Hours that may be of a neighbouring year: a file in UTC is rolled to standard time by up to 14 hours. */
    private static final int ROLLED_AT_MOST = 24;

    /** The calendar year that a weather year is of; nothing for a typical year, whose months are of several. */
    static Optional<Integer> calendarYearOf(WeatherYear weather) {
        TreeMap<Integer, Integer> hoursOfYear = new TreeMap<>();
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            hoursOfYear.merge(weather.sun().calendarYear(hour), 1, Integer::sum);
        }
        return hoursOfYear.entrySet().stream()
                .filter(entry -> entry.getValue() >= HourOfYear.HOURS - ROLLED_AT_MOST)
                .map(entry -> entry.getKey())
                .findFirst();
    }
}
