package dev.warmlane.season;

import dev.warmlane.pool.Departure;
import dev.warmlane.weather.HourlyWeather;

/**
 * Wind, sun and sky at a pool that were fitted to a log of its water, hour by hour of a weather: what was found in the season of
 * the log, and the farther from it the more what was described before.
 *
 * @param found wind and sun of the pool as it is described now
 * @param doubt how far they are known
 * @param weather whose hours they are
 */
record FittedDeparture(WindAndSun found, FittedDoubt doubt, HourlyWeather weather) implements Departure {

    /** A factor below it has no ratio; own choice, far below any shelter's or shade's. */
    private static final double LEAST = 1e-3;

    @Override
    public double windRatio(int hour) {
        return ratio(doubt.windFactor(found.windFactor(), left(hour)), found.windFactor());
    }

    @Override
    public double sunRatio(int hour) {
        return ratio(doubt.sunShare(found.sunShare(), left(hour)), found.sunShare());
    }

    @Override
    public double longWaveWm2(int hour) {
        return doubt.skyWm2(left(hour));
    }

    private double left(int hour) {
        return doubt.seasonLeft(weather.hourOfYear(hour));
    }

    private static double ratio(double value, double found) {
        return found < LEAST ? 1 : value / found;
    }
}
