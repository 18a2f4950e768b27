package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;

/** What a day is told by when months are compared. */
public enum DailyIndex {
    /** Highest air temperature of the day's hours, °C. */
    AIR_HIGHEST,
    /** Lowest air temperature, °C. */
    AIR_LOWEST,
    /** Mean air temperature, °C. */
    AIR_MEAN,
    /** Highest dew point, °C. */
    DEW_HIGHEST,
    /** Lowest dew point, °C. */
    DEW_LOWEST,
    /** Mean dew point, °C. */
    DEW_MEAN,
    /** Highest wind speed, m/s. */
    WIND_HIGHEST,
    /** Mean wind speed, m/s. */
    WIND_MEAN,
    /** Global irradiation of the horizontal, mean of the day, W/m². */
    GLOBAL,
    /** Direct normal irradiation, mean of the day, W/m². */
    DIRECT;

    /** That of a day of a year, 0 to 364. */
    double of(WeatherYear weather, int day) {
        double highest = Double.NEGATIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        double sum = 0;
        for (int hour = day * 24; hour < day * 24 + 24; hour++) {
            double value = value(weather, hour);
            highest = Math.max(highest, value);
            lowest = Math.min(lowest, value);
            sum += value;
        }
        return switch (this) {
            case AIR_HIGHEST, DEW_HIGHEST, WIND_HIGHEST -> highest;
            case AIR_LOWEST, DEW_LOWEST -> lowest;
            case AIR_MEAN, DEW_MEAN, WIND_MEAN, GLOBAL, DIRECT -> sum / 24;
        };
    }

    private double value(WeatherYear weather, int hour) {
        return switch (this) {
            case AIR_HIGHEST, AIR_LOWEST, AIR_MEAN -> weather.airTemperatureC(hour);
            case DEW_HIGHEST, DEW_LOWEST, DEW_MEAN -> weather.dewPointC(hour);
            case WIND_HIGHEST, WIND_MEAN -> weather.windSpeedMs(hour);
            case GLOBAL -> weather.globalHorizontalWm2(hour);
            case DIRECT -> weather.directNormalWm2(hour);
        };
    }

    /** That of every day of a month, 1 to 12. */
    double[] ofMonth(WeatherYear weather, int month) {
        double[] days = new double[HourOfYear.daysIn(month)];
        int first = HourOfYear.dayOf(HourOfYear.firstHourOf(month));
        for (int day = 0; day < days.length; day++) {
            days[day] = of(weather, first + day);
        }
        return days;
    }
}
