package dev.warmlane.study;

import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonForecast;
import java.util.Optional;

/**
 * The same season with the pool sheltered, as described, and exposed to the wind: the dominant uncertainty of an outdoor
 * pool. {@link ExposureStudy} moves the roof's wind as well.
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

    /** Whether sheltered is another case than described. */
    public boolean hasSheltered() {
        return sheltered.windFactor < likely.windFactor;
    }

    /** Whether exposed is another case than described. */
    public boolean hasExposed() {
        return exposed.windFactor > likely.windFactor;
    }

    /** Simulates the other two seasons; nothing for a pool in a hall, which has no wind. */
    public static Optional<PoolWindBand> of(SeasonForecast forecast) {
        return forecast.installation()
                .pool()
                .setting()
                .outdoor()
                .map(outdoor -> new PoolWindBand(
                        at(forecast, WindExposure.SHELTERED.poolWindFactor(outdoor.windFactor())),
                        new Case(outdoor.windFactor(), forecast),
                        at(forecast, WindExposure.EXPOSED.poolWindFactor(outdoor.windFactor()))));
    }

    /** An outdoor installation with another wind factor at the pool; one with a pool in a hall as it is. */
    static Installation withPoolWind(Installation installation, double windFactor) {
        return installation
                .pool()
                .setting()
                .match(
                        outdoor -> installation.toBuilder()
                                .pool(installation.pool().withSetting(outdoor.withWindFactor(windFactor)))
                                .build(),
                        indoor -> installation);
    }

    private static Case at(SeasonForecast forecast, double windFactor) {
        Installation moved = withPoolWind(forecast.installation(), windFactor);
        PoolForcing forcing =
                PoolForcing.of(moved.pool(), moved.cover(), moved.bathers(), moved.makeUp(), forecast.weather());
        return new Case(
                windFactor,
                SeasonForecast.of(
                        moved, new SeasonForcing(forcing, forecast.forcing().collectors()), forecast.weather()));
    }
}
