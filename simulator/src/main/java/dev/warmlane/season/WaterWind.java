package dev.warmlane.season;

import dev.warmlane.pool.Departure;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.pool.Pool;

/**
 * The wind at the water against what the pool's correlation for evaporation was measured in.
 *
 * @param strongestMeasuredMs the strongest wind that it was measured in, m/s; infinite where none is known
 * @param hours hours of the season
 * @param hoursBeyond those with more wind at the water
 * @param highestMs the strongest wind at the water in the season, m/s
 */
public record WaterWind(double strongestMeasuredMs, int hours, int hoursBeyond, double highestMs) {

    /** Counts over a season, day and night. */
    public static WaterWind of(SeasonForecast forecast) {
        Pool pool = forecast.installation().pool();
        EvaporationCorrelation evaporation = pool.evaporation();
        Departure departure = forecast.installation().departure(forecast.weather());
        SeasonLedger ledger = forecast.with();
        int beyond = 0;
        double highest = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            int hour = ledger.hourOfYear(index);
            double wind =
                    pool.setting().windAtWaterMs(forecast.weather().windSpeedMs(hour)) * departure.windRatio(hour);
            highest = Math.max(highest, wind);
            beyond += wind > evaporation.strongestWindMs() ? 1 : 0;
        }
        return new WaterWind(evaporation.strongestWindMs(), ledger.hours(), beyond, highest);
    }
}
