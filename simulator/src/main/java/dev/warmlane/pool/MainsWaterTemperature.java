package dev.warmlane.pool;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;
import dev.warmlane.weather.HourlyWeather;
import dev.warmlane.weather.YearlyAir;

/** The mains temperature in every hour of the year, from a {@link MainsWater}. */
final class MainsWaterTemperature {

    private MainsWaterTemperature() {}

    static double[] hourly(MainsWater mains, HourlyWeather weather) {
        return mains.match(fromAir -> fromAir(weather), monthly -> byMonth(monthly, weather));
    }

    private static double[] byMonth(MainsWater.Monthly monthly, HourlyWeather weather) {
        double[] temperature = new double[weather.hours()];
        for (int hour = 0; hour < temperature.length; hour++) {
            temperature[hour] = monthly.temperaturesC().get(HourOfYear.monthOf(weather.hourOfYear(hour)) - 1);
        }
        return temperature;
    }

    /** The rule of {@link MainsWater.FromAir}, which is written in degrees Fahrenheit. */
    private static double[] fromAir(HourlyWeather weather) {
        YearlyAir air = weather.yearlyAir();
        double meanF = Units.fahrenheit(air.meanC());
        double spanF = Units.fahrenheitDifference(air.monthlySpanK());
        double ratio = 0.4 + 0.01 * (meanF - 44);
        double lagDays = 35 - (meanF - 44);
        double halfYearDays = weather.site().southern() ? HourOfYear.DAYS / 2.0 : 0;
        double[] temperature = new double[weather.hours()];
        for (int hour = 0; hour < temperature.length; hour++) {
            double day = HourOfYear.dayOf(weather.hourOfYear(hour)) + 1 + halfYearDays;
            double angle = Math.toRadians(0.986 * (day - 15 - lagDays) - 90);
            double fahrenheit = meanF + 6 + ratio * spanF / 2 * Math.sin(angle);
            // water in the mains does not freeze
            temperature[hour] = Math.max(0.5, Units.celsius(fahrenheit));
        }
        return temperature;
    }
}
