package dev.warmlane.study;

import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.wind.PoolShelter;
import java.util.Optional;

/**
 * The same season with the pool sheltered, as described, and exposed to the wind: the dominant uncertainty of an outdoor
 * pool.
 *
 * @param sheltered well sheltered from the wind
 * @param likely as the installation has it
 * @param exposed on open ground
 */
public record PoolWindBand(Case sheltered, Case likely, Case exposed) {

    /**
     * One of the three.
     *
     * @param windFactor wind at the water over wind of the station at 10 m
     * @param forecast the season with and without collectors, hour by hour
     */
    public record Case(double windFactor, SeasonForecast forecast) {

        /** The season summed up. */
        public PeriodSummary season() {
            return PeriodSummary.of(forecast, Periods.season(forecast.with()));
        }
    }

    /** Simulates the other two seasons; nothing for a pool in a hall, which has no wind. */
    public static Optional<PoolWindBand> of(SeasonForecast forecast) {
        if (!(forecast.installation().pool().setting() instanceof PoolSetting.Outdoor outdoor)) {
            return Optional.empty();
        }
        return Optional.of(new PoolWindBand(
                at(forecast, outdoor, PoolShelter.SHELTERED.factor()),
                new Case(outdoor.windFactor(), forecast),
                at(forecast, outdoor, PoolShelter.OPEN.factor())));
    }

    private static Case at(SeasonForecast forecast, PoolSetting.Outdoor outdoor, double windFactor) {
        Installation installation = forecast.installation();
        Pool pool = installation.pool();
        Pool moved = new Pool(
                pool.areaM2(),
                pool.depthM(),
                new PoolSetting.Outdoor(windFactor, outdoor.shadedShare(), outdoor.skyShare()),
                pool.solarAbsorptance(),
                pool.waterEmittance(),
                pool.evaporation(),
                pool.groundConductanceWK());
        PoolForcing forcing = PoolForcing.of(
                moved, installation.cover(), installation.bathers(), installation.makeUp(), forecast.weather());
        return new Case(
                windFactor,
                SeasonForecast.of(
                        installation.toBuilder().pool(moved).build(),
                        new SeasonForcing(forcing, forecast.forcing().collectors()),
                        forecast.weather()));
    }
}
