package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherYear.LongWaveOrigin;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** A year whose hours come from several years of one place. */
final class WeatherSplice {

    /** What a year keeps. */
    private static final List<WeatherColumn> KEPT = List.of(
            WeatherColumn.GLOBAL,
            WeatherColumn.DIRECT,
            WeatherColumn.DIFFUSE,
            WeatherColumn.LONG_WAVE,
            WeatherColumn.AIR,
            WeatherColumn.DEW,
            WeatherColumn.PRESSURE,
            WeatherColumn.WIND);

    /** What is smoothed where two years meet: at midnight irradiance is none, and pressure hardly matters. */
    private static final List<WeatherColumn> SMOOTHED =
            List.of(WeatherColumn.LONG_WAVE, WeatherColumn.AIR, WeatherColumn.DEW, WeatherColumn.WIND);

    /** Hours on either side that a step is spread over, as in the typical years of TMY2 (from memory). */
    static final int SMOOTHED_HOURS = 6;

    private final List<WeatherYear> years;
    private final int[] yearOfHour;
    private final String source;
    private final List<WeatherFinding> findings;
    private final Map<WeatherColumn, double[]> columns = new EnumMap<>(WeatherColumn.class);

    /**
     * Takes each hour from one of the years.
     *
     * @param yearOfHour for each of the 8760 hours, which of the years
     */
    WeatherSplice(List<WeatherYear> years, int[] yearOfHour, String source, List<WeatherFinding> findings) {
        this.years = years;
        this.yearOfHour = yearOfHour;
        this.source = source;
        this.findings = findings;
        for (WeatherColumn column : KEPT) {
            double[] values = new double[HourOfYear.HOURS];
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                values[hour] = years.get(yearOfHour[hour]).column(column)[hour];
            }
            columns.put(column, values);
        }
    }

    /**
     * Takes the step away where two years meet. Half of it is taken from either side, less and less over six hours, so that
     * the day keeps its rhythm (how it is spread is our own choice).
     */
    WeatherSplice smoothed() {
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            int before = Math.floorMod(hour - 1, HourOfYear.HOURS);
            if (yearOfHour[before] != yearOfHour[hour]) {
                for (WeatherColumn column : SMOOTHED) {
                    smooth(column(column), hour);
                }
            }
        }
        double[] air = column(WeatherColumn.AIR);
        double[] dew = column(WeatherColumn.DEW);
        double[] wind = column(WeatherColumn.WIND);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            dew[hour] = Math.min(dew[hour], air[hour]);
            wind[hour] = Math.max(0, wind[hour]);
        }
        return this;
    }

    private static void smooth(double[] values, int hour) {
        double half = (values[hour] - values[Math.floorMod(hour - 1, HourOfYear.HOURS)]) / 2;
        for (int away = 0; away < SMOOTHED_HOURS; away++) {
            double share = 1 - (double) away / SMOOTHED_HOURS;
            values[Math.floorMod(hour - 1 - away, HourOfYear.HOURS)] += half * share;
            values[Math.floorMod(hour + away, HourOfYear.HOURS)] -= half * share;
        }
    }

    /** The year. */
    WeatherYear year() {
        return new WeatherYear(this);
    }

    WeatherYear first() {
        return years.get(0);
    }

    String source() {
        return source;
    }

    List<WeatherFinding> findings() {
        return findings;
    }

    boolean all(Predicate<WeatherYear> what) {
        return years.stream().allMatch(what);
    }

    SunPath sun() {
        return SunPath.composed(years.stream().map(WeatherYear::sun).toList(), yearOfHour);
    }

    /** That of the year which most hours come from. */
    LongWaveOrigin longWaveOrigin() {
        int[] hours = new int[years.size()];
        Arrays.stream(yearOfHour).forEach(year -> hours[year]++);
        int most = 0;
        for (int year = 1; year < hours.length; year++) {
            most = hours[year] > hours[most] ? year : most;
        }
        return years.get(most).longWaveOrigin();
    }

    /** As many of each year's as it has a share in the hours: which they are is not kept. */
    int longWaveEstimatedHours() {
        double hours = 0;
        for (int year : yearOfHour) {
            hours += (double) years.get(year).longWaveEstimatedHours() / HourOfYear.HOURS;
        }
        return (int) Math.round(hours);
    }

    double[] column(WeatherColumn column) {
        return columns.getOrDefault(column, new double[0]);
    }
}
