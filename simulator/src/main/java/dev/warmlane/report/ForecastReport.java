package dev.warmlane.report;

import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.Finding;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.Scenario;
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
 * @param warnings what the scenario holds that is allowed but hardly meant
 */
public record ForecastReport(
        SeasonForecast forecast,
        SeasonSummary summary,
        Optional<PoolWindBand> wind,
        ReportSettings settings,
        List<Assumption> assumed,
        List<Finding> warnings) {

    /** Keeps its own copies of the lists. */
    public ForecastReport {
        assumed = List.copyOf(assumed);
        warnings = List.copyOf(warnings);
    }

    /** A report on an installation that comes from no scenario file, so that there are no warnings about one. */
    public ForecastReport(
            SeasonForecast forecast,
            SeasonSummary summary,
            Optional<PoolWindBand> wind,
            ReportSettings settings,
            List<Assumption> assumed) {
        this(forecast, summary, wind, settings, assumed, List.of());
    }

    /** Sums a forecast up; simulates the season for a sheltered and an exposed pool on the way. */
    public static ForecastReport of(SeasonForecast forecast, ReportSettings settings, List<Assumption> assumed) {
        return new ForecastReport(forecast, forecast.summary(), PoolWindBand.of(forecast), settings, assumed);
    }

    /** Sums up the forecast of a scenario, with what it assumes and warns of. */
    public static ForecastReport of(SeasonForecast forecast, Scenario scenario) {
        return new ForecastReport(
                forecast,
                forecast.summary(),
                PoolWindBand.of(forecast),
                scenario.report(),
                scenario.assumed(),
                scenario.warnings());
    }

    /** The units of its numbers. */
    public ReportSettings.Units units() {
        return settings.units();
    }
}
