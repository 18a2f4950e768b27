package dev.warmlane.report;

import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.study.PoolWindBand;
import java.util.List;
import java.util.Optional;

/**
 * All that charts and page are made from, so that both show the same numbers.
 *
 * @param forecast the season hour by hour
 * @param summary the season summed up
 * @param wind the same season with the pool sheltered and exposed; nothing for a pool in a hall
 * @param settings title and units
 * @param assumed what was assumed where nothing was given
 */
public record ForecastReport(
        SeasonForecast forecast,
        SeasonSummary summary,
        Optional<PoolWindBand> wind,
        ReportSettings settings,
        List<Assumption> assumed) {

    /** Keeps its own copy of the list. */
    public ForecastReport {
        assumed = List.copyOf(assumed);
    }

    /** Sums a forecast up; simulates the season for a sheltered and an exposed pool on the way. */
    public static ForecastReport of(SeasonForecast forecast, ReportSettings settings, List<Assumption> assumed) {
        return new ForecastReport(forecast, forecast.summary(), PoolWindBand.of(forecast), settings, assumed);
    }

    /** The units of its numbers. */
    public ReportSettings.Units units() {
        return settings.units();
    }
}
