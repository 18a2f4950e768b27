package dev.warmlane.weather;

import dev.warmlane.physics.SkyLongWave;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What a year of weather holds: sums of irradiance and means of the rest, by month and for the year.
 *
 * @param months January to December
 * @param year the whole year
 */
public record WeatherSummary(List<Period> months, Period year) {

    /**
     * A month or the year.
     *
     * @param globalKwhM2 sum of global horizontal irradiance, kWh/m²
     * @param directKwhM2 sum of direct normal irradiance, kWh/m²
     * @param diffuseKwhM2 sum of diffuse horizontal irradiance, kWh/m²
     * @param airC mean air temperature, °C
     * @param lowestAirC lowest air temperature, °C
     * @param highestAirC highest air temperature, °C
     * @param dewPointC mean dew point, °C
     * @param relativeHumidity mean relative humidity, 0 to 1
     * @param windMs mean wind speed at 10 m, m/s
     * @param skyTemperatureC temperature of the black body that radiates as much as the sky did on the mean, °C
     */
    public record Period(
            double globalKwhM2,
            double directKwhM2,
            double diffuseKwhM2,
            double airC,
            double lowestAirC,
            double highestAirC,
            double dewPointC,
            double relativeHumidity,
            double windMs,
            double skyTemperatureC) {}

    /** Copies the list. */
    public WeatherSummary {
        months = List.copyOf(months);
    }

    /** Sums up a year. */
    public static WeatherSummary of(WeatherYear weather) {
        List<Period> months = IntStream.rangeClosed(1, 12)
                .mapToObj(m -> period(weather, HourOfYear.firstHourOf(m), HourOfYear.firstHourOf(m + 1)))
                .toList();
        return new WeatherSummary(months, period(weather, 0, HourOfYear.HOURS));
    }

    private static Period period(WeatherYear weather, int start, int end) {
        double longWave = mean(start, end, weather::skyLongWaveWm2);
        return new Period(
                sumKwh(start, end, weather::globalHorizontalWm2),
                sumKwh(start, end, weather::directNormalWm2),
                sumKwh(start, end, weather::diffuseHorizontalWm2),
                mean(start, end, weather::airTemperatureC),
                IntStream.range(start, end)
                        .mapToDouble(weather::airTemperatureC)
                        .min()
                        .orElse(Double.NaN),
                IntStream.range(start, end)
                        .mapToDouble(weather::airTemperatureC)
                        .max()
                        .orElse(Double.NaN),
                mean(start, end, weather::dewPointC),
                mean(start, end, weather::relativeHumidity),
                mean(start, end, weather::windSpeedMs),
                SkyLongWave.skyTemperatureC(longWave));
    }

    private static double sumKwh(int start, int end, IntToDoubleFunction irradiance) {
        return Units.kwhOfWattHours(
                IntStream.range(start, end).mapToDouble(irradiance).sum());
    }

    private static double mean(int start, int end, IntToDoubleFunction values) {
        return IntStream.range(start, end).mapToDouble(values).average().orElse(Double.NaN);
    }
}
