package dev.warmlane.weather;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.SkyLongWave;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherYear.LongWaveOrigin;
import java.util.Arrays;

/** The long-wave irradiance of the sky: the file's where it is physical, else the sky model's. */
final class LongWave {

    /** A sky can be little warmer than the air at the station: 2 % allows for an inversion. */
    private static final double ABOVE_BLACK_BODY = 1.02;
    /** With more bad hours than this the whole column is not believed. */
    private static final int BAD_HOURS_AT_MOST = HourOfYear.HOURS / 20;

    private LongWave() {}

    /** Completes the long-wave column and tells where it comes from. */
    static LongWaveOrigin resolve(HourTable table, SunPath sun, Findings findings) {
        double[] longWave = table.column(WeatherColumn.LONG_WAVE);
        double[] air = table.column(WeatherColumn.AIR);
        boolean had = !table.isEmpty(WeatherColumn.LONG_WAVE);
        Occurrences hot = new Occurrences();
        int missing = 0;
        for (int hour = 0; hour < longWave.length; hour++) {
            if (longWave[hour] > Constants.blackBody(air[hour]) * ABOVE_BLACK_BODY) {
                hot.add(table.line[hour], longWave[hour]);
                longWave[hour] = Double.NaN;
            } else if (!(longWave[hour] > 0)) {
                missing++;
                longWave[hour] = Double.NaN;
            }
        }
        boolean distrusted = hot.count() > BAD_HOURS_AT_MOST;
        if (distrusted) {
            Arrays.fill(longWave, Double.NaN);
        }
        if (hot.count() > 0) {
            String message = "infrared above that of a black body at air temperature on " + hot.lines() + " ("
                    + hot.first() + " W/m² first): replaced by the sky model"
                    + (distrusted ? " in the whole year, because so much of it cannot be" : "");
            if (distrusted) {
                findings.warning(hot.firstLine(), hot.count(), message);
            } else {
                findings.repair(hot.firstLine(), hot.count(), message);
            }
        }
        if (hot.count() == 0 && missing == 0) {
            return table.header.longWave();
        }
        return model(table, sun, findings, had);
    }

    private static LongWaveOrigin model(HourTable table, SunPath sun, Findings findings, boolean had) {
        double[] longWave = table.column(WeatherColumn.LONG_WAVE);
        double[] air = table.column(WeatherColumn.AIR);
        double[] dew = table.column(WeatherColumn.DEW);
        double[] pressure = table.column(WeatherColumn.PRESSURE);
        double[] tenths = table.column(WeatherColumn.CLOUD);
        double[] estimated = CloudEstimate.cover(table.column(WeatherColumn.GLOBAL), sun);
        int fromClearness = 0;
        int modelled = 0;
        for (int hour = 0; hour < longWave.length; hour++) {
            if (!Double.isNaN(longWave[hour])) {
                continue;
            }
            modelled++;
            boolean noCloud = Double.isNaN(tenths[hour]);
            fromClearness += noCloud ? 1 : 0;
            double emissivity =
                    SkyLongWave.clearSkyEmissivity(dew[hour], HourOfYear.hourOfDay(hour) + 0.5, pressure[hour]);
            longWave[hour] = SkyLongWave.allSkyIrradianceWm2(
                    air[hour], emissivity, noCloud ? estimated[hour] : tenths[hour] / 10);
        }
        if (fromClearness > 0) {
            findings.note(
                    0,
                    fromClearness,
                    "cloud cover estimated from the day's clearness in " + fromClearness
                            + " hours (Kasten and Czeplak 1980), for the long-wave irradiance of the sky");
        }
        findings.note(
                0,
                modelled,
                (had
                                ? "the file's infrared is missing or was replaced in " + modelled + " hours"
                                : "the file has no infrared")
                        + ": long-wave irradiance of the sky from air temperature, dew point and cloud (Berdahl and Martin"
                        + " 1984, Martin and Berdahl 1984)");
        return fromClearness > 0 ? LongWaveOrigin.CLEARNESS : LongWaveOrigin.CLOUD_COVER;
    }
}
