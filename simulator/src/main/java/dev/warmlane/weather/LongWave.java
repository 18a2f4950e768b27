package dev.warmlane.weather;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.SkyLongWave;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherYear.LongWaveOrigin;
import java.util.Arrays;
import java.util.BitSet;

/** The long-wave irradiance of the sky: the file's where it is physical, else the sky model's. */
final class LongWave {

    /** A sky can be little warmer than the air at the station: 2 % allows for an inversion. */
    private static final double ABOVE_BLACK_BODY = 1.02;
    /**
     * The clearest and driest skies send 0.5 to 0.6 of a black body at air temperature and more; lower than 0.4 is no sky
     * (our own choice).
     */
    private static final double OF_BLACK_BODY_AT_LEAST = 0.4;

    private LongWave() {}

    /**
     * Where the column comes from.
     *
     * @param origin where most hours do
     * @param estimatedHours how many hours were estimated here
     */
    record Result(LongWaveOrigin origin, int estimatedHours) {}

    /** Completes the long-wave column and tells where it comes from. */
    static Result resolve(HourTable table, SunPath sun, Findings findings) {
        double[] longWave = table.column(WeatherColumn.LONG_WAVE);
        double[] air = table.column(WeatherColumn.AIR);
        boolean had = !table.isEmpty(WeatherColumn.LONG_WAVE);
        BitSet told = new BitSet();
        Occurrences hot = new Occurrences(table);
        Occurrences cold = new Occurrences(table);
        int missing = 0;
        for (int hour = 0; hour < longWave.length; hour++) {
            double blackBody = Constants.blackBody(air[hour]);
            if (longWave[hour] > blackBody * ABOVE_BLACK_BODY) {
                hot.add(hour, longWave[hour]);
                told.set(hour);
                longWave[hour] = Double.NaN;
            } else if (longWave[hour] > 0 && longWave[hour] < blackBody * OF_BLACK_BODY_AT_LEAST) {
                cold.add(hour, longWave[hour]);
                told.set(hour);
                longWave[hour] = Double.NaN;
            } else if (!(longWave[hour] > 0)) {
                missing++;
                told.set(hour, had && table.isTold(WeatherColumn.LONG_WAVE, hour));
                longWave[hour] = Double.NaN;
            }
        }
        // with more bad hours than this the whole column is not believed
        boolean distrusted = hot.count() + cold.count() > table.hours().missingAtMost();
        if (distrusted) {
            Arrays.fill(longWave, Double.NaN);
            told.set(0, longWave.length);
        }
        String word = table.hours().word();
        report(findings, hot, "above that of a black body at air temperature", distrusted, word);
        report(
                findings,
                cold,
                "below " + Occurrences.number(OF_BLACK_BODY_AT_LEAST) + " of a black body at air temperature",
                distrusted,
                word);
        if (hot.count() + cold.count() + missing == 0) {
            return new Result(table.header.longWave(), 0);
        }
        return model(table, sun, findings, had, told);
    }

    private static void report(Findings findings, Occurrences bad, String what, boolean distrusted, String word) {
        if (bad.count() == 0) {
            return;
        }
        String message = "infrared " + what + " " + bad.places() + " (" + bad.first()
                + " W/m² first): replaced by the sky model";
        if (distrusted) {
            findings.warning(bad, message + " in the whole " + word + ", because so much of the column cannot be");
        } else {
            findings.repair(bad, message);
        }
    }

    private static Result model(HourTable table, SunPath sun, Findings findings, boolean had, BitSet told) {
        double[] longWave = table.column(WeatherColumn.LONG_WAVE);
        double[] air = table.column(WeatherColumn.AIR);
        double[] dew = table.column(WeatherColumn.DEW);
        double[] pressure = table.column(WeatherColumn.PRESSURE);
        double[] tenths = table.column(WeatherColumn.CLOUD);
        double[] estimated = CloudEstimate.cover(
                table.column(WeatherColumn.GLOBAL), sun, table.hours().ofDay(0));
        int fromClearness = 0;
        int modelled = 0;
        int untold = 0;
        int untoldClearness = 0;
        for (int hour = 0; hour < longWave.length; hour++) {
            if (!Double.isNaN(longWave[hour])) {
                continue;
            }
            modelled++;
            boolean noCloud = Double.isNaN(tenths[hour]);
            fromClearness += noCloud ? 1 : 0;
            untold += told.get(hour) ? 0 : 1;
            untoldClearness += told.get(hour) || !noCloud ? 0 : 1;
            double emissivity =
                    SkyLongWave.clearSkyEmissivity(dew[hour], table.hours().ofDay(hour) + 0.5, pressure[hour]);
            longWave[hour] = SkyLongWave.allSkyIrradianceWm2(
                    air[hour], emissivity, noCloud ? estimated[hour] : tenths[hour] / 10);
        }
        if (untold > 0) {
            findings.note(
                    0,
                    untold,
                    table.sourceWord()
                            + (had ? "'s infrared is missing or not used in " + untold + " hours" : " has no infrared")
                            + ": long-wave irradiance of the sky from air temperature, dew point and "
                            + cloud(untold, untoldClearness)
                            + " (Berdahl and Martin 1984, Martin and Berdahl 1984)");
        }
        return new Result(origin(table, modelled, fromClearness), modelled);
    }

    private static String cloud(int hours, int fromClearness) {
        if (fromClearness == 0) {
            return "cloud cover";
        }
        return (fromClearness == hours ? "a" : "cloud cover, in " + fromClearness + " hours a")
                + " cloud cover estimated from the day's clearness (Kasten and Czeplak 1980)";
    }

    private static LongWaveOrigin origin(HourTable table, int modelled, int fromClearness) {
        int fromCloud = modelled - fromClearness;
        if (table.hours().count() - modelled >= Math.max(fromCloud, fromClearness)) {
            return table.header.longWave();
        }
        return fromClearness > fromCloud ? LongWaveOrigin.CLEARNESS : LongWaveOrigin.CLOUD_COVER;
    }
}
