package dev.warmlane.report;

import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.Finding;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.study.SeasonBands;
import dev.warmlane.units.UnitSystem;
import java.util.List;

/**
 * What a report is about: an installation as it is described, with its season and what is known of the description.
 *
 * @param forecast its season hour by hour
 * @param summary the season summed up
 * @param settings title and units
 * @param assumed what was assumed where nothing was given
 * @param warnings what the scenario holds that is allowed but hardly meant
 * @param bands how far this season and others in its weather are to be trusted; shared by all reports of it
 */
public record Subject(
        SeasonForecast forecast,
        SeasonSummary summary,
        ReportSettings settings,
        List<Assumption> assumed,
        List<Finding> warnings,
        SeasonBands bands) {

    /** Keeps its own copies of the lists. */
    public Subject {
        assumed = List.copyOf(assumed);
        warnings = List.copyOf(warnings);
    }

    /** The subject of a scenario. */
    public static Subject of(SeasonForecast forecast, Scenario scenario) {
        return of(forecast, scenario, SeasonBands.of(forecast));
    }

    /**
     * The same where more is asked of its weather.
     *
     * @param forecast its season
     * @param scenario where it comes from
     * @param bands of the same weather
     */
    public static Subject of(SeasonForecast forecast, Scenario scenario, SeasonBands bands) {
        return new Subject(
                forecast, forecast.summary(), scenario.report(), scenario.assumed(), scenario.warnings(), bands);
    }

    /** An installation that comes from no scenario file, so that nothing was assumed and there are no warnings. */
    public static Subject of(SeasonForecast forecast, ReportSettings settings) {
        return new Subject(forecast, forecast.summary(), settings, List.of(), List.of(), SeasonBands.of(forecast));
    }

    /** The same with other assumptions. */
    public Subject assuming(List<Assumption> others) {
        return new Subject(forecast, summary, settings, others, warnings, bands);
    }

    /** The same for another reader. */
    public Subject in(ReportSettings others) {
        return new Subject(forecast, summary, others, assumed, warnings, bands);
    }

    /** The units of its numbers. */
    public UnitSystem units() {
        return settings.units(installation());
    }

    /** What is built. */
    public Installation installation() {
        return forecast.installation();
    }

    /** The season with the collectors as described. */
    PeriodSummary season() {
        return summary.season();
    }

    /** How its numbers are shown. */
    public Numbers numbers() {
        return new Numbers(units(), settings.notation());
    }
}
