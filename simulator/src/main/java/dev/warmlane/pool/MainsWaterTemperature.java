package dev.warmlane.pool;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;
import dev.warmlane.weather.WeatherYear;

/** The mains temperature in every hour of the year, from a {@link MainsWater}. */
final class MainsWaterTemperature {

    private MainsWaterTemperature() {}

    static double[] hourly(MainsWater mains, WeatherYear weather) {
        return mains.match(fromAir -> fromAir(weather), MainsWaterTemperature::byMonth);
    }

    private static double[] byMonth(MainsWater.Monthly monthly) {
        double[] temperature = new double[HourOfYear.HOURS];
        for (int hour = 0; hour < temperature.length; hour++) {
            temperature[hour] = monthly.temperaturesC().get(HourOfYear.monthOf(hour) - 1);
        }
        return temperature;
    }

    /** The rule of {@link MainsWater.FromAir}, which is written in degrees Fahrenheit. */
    private static double[] fromAir(WeatherYear weather) {
        double mean = 0;
        double coldest = Double.MAX_VALUE;
        double warmest = -Double.MAX_VALUE;
        for (int month = 1; month <= 12; month++) {
            double sum = 0;
            for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
                sum += weather.airTemperatureC(hour);
            }
            mean += sum / HourOfYear.HOURS;
            double monthly = sum / (24 * HourOfYear.daysIn(month));
            coldest = Math.min(coldest, monthly);
            warmest = Math.max(warmest, monthly);
        }
        double meanF = Units.fahrenheit(mean);
        double spanF = Units.fahrenheitDifference(warmest - coldest);
        double ratio = 0.4 + 0.01 * (meanF - 44);
        double lagDays = 35 - (meanF - 44);
        double halfYearDays = weather.site().southern() ? HourOfYear.DAYS / 2.0 : 0;
        double[] temperature = new double[HourOfYear.HOURS];
        for (int hour = 0; hour < temperature.length; hour++) {
            double day = HourOfYear.dayOf(hour) + 1 + halfYearDays;
            double angle = Math.toRadians(0.986 * (day - 15 - lagDays) - 90);
            double fahrenheit = meanF + 6 + ratio * spanF / 2 * Math.sin(angle);
            // water in the mains does not freeze
            temperature[hour] = Math.max(0.5, Units.celsius(fahrenheit));
        }
        return temperature;
    }
}
