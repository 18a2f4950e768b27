package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Invented years that count as real ones, for tests: a sample year of another calendar year, warmer or brighter. */
public final class RealYears {

    private RealYears() {}

    /** A year like another. */
    public static WeatherYear like(WeatherYear weather, int calendarYear, double warmerK, double light) {
        return like(weather, weather.site(), calendarYear, warmerK, light);
    }

    /** The same at another site. */
    public static WeatherYear like(WeatherYear weather, Site site, int calendarYear, double warmerK, double light) {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, calendarYear);
        return with(
                weather, SunPath.ofHourlyMeans(site, years, weather.sun().usualOffsetHours()), site, warmerK, light);
    }

    /** The same with another sun: of instants, or of another time of the hour. */
    static WeatherYear with(WeatherYear weather, SunPath sun, Site site, double warmerK, double light) {
        int calendarYear = sun.calendarYear(0);
        return WeatherYear.builder(site, "invented " + calendarYear, sun)
                .irradianceWm2(
                        column(h -> light * weather.globalHorizontalWm2(h)),
                        column(h -> light * weather.directNormalWm2(h)),
                        column(h -> light * weather.diffuseHorizontalWm2(h)))
                .skyLongWaveWm2(column(weather::skyLongWaveWm2), weather.longWaveOrigin())
                .airC(column(h -> weather.airTemperatureC(h) + warmerK), column(weather::dewPointC))
                .pressureKpa(column(weather::pressureKpa))
                .windSpeedMs(column(weather::windSpeedMs))
                .unchecked();
    }

    private static double[] column(IntToDoubleFunction values) {
        return IntStream.range(0, HourOfYear.HOURS).mapToDouble(values).toArray();
    }
}
