package dev.warmlane.weather.generate;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.weather.WeatherYear;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** A generated year as a sample file of the project's plain csv, rounded so that a person can read it. */
final class SampleText {

    private SampleText() {}

    /** The whole file. Irradiance in whole W/m², temperatures to 0.1 °C, wind to 0.1 m/s, lines end with LF. */
    static String of(WeatherYear year, String normalsFile, long seed) {
        Site site = year.site();
        StringBuilder text = new StringBuilder(400_000);
        text.append("# Warmlane plain weather csv\n")
                .append("# note: INVENTED site, generated weather, no measured values\n")
                .append("# made from: ")
                .append(normalsFile)
                .append(", seed ")
                .append(seed)
                .append('\n')
                .append("# name: ")
                .append(site.name())
                .append('\n')
                .append("# latitude, degrees north: ")
                .append(plain(site.latitudeDeg()))
                .append('\n')
                .append("# longitude, degrees east: ")
                .append(plain(site.longitudeDeg()))
                .append('\n')
                .append("# elevation, m: ")
                .append(plain(site.elevationM()))
                .append('\n')
                .append("# utc offset, h: ")
                .append(plain(site.utcOffsetHours()))
                .append('\n')
                .append("# irradiance: mean over the hour\n")
                .append("month,day,hour,global W/m2,direct W/m2,diffuse W/m2,air degC,dew point degC,wind m/s\n");
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            text.append(HourOfYear.monthOf(hour))
                    .append(',')
                    .append(HourOfYear.dayOfMonth(hour))
                    .append(',')
                    .append(HourOfYear.hourOfDay(hour))
                    .append(',')
                    .append(Math.round(year.globalHorizontalWm2(hour)))
                    .append(',')
                    .append(Math.round(year.directNormalWm2(hour)))
                    .append(',')
                    .append(Math.round(year.diffuseHorizontalWm2(hour)))
                    .append(',')
                    .append(tenths(year.airTemperatureC(hour)))
                    .append(',')
                    .append(tenths(year.dewPointC(hour)))
                    .append(',')
                    .append(tenths(year.windSpeedMs(hour)))
                    .append('\n');
        }
        return text.toString();
    }

    private static String tenths(double value) {
        return BigDecimal.valueOf(Math.round(value * 10), 1).toPlainString();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
