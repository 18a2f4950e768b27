package dev.warmlane.season;

import dev.warmlane.weather.WeatherYear;
import java.util.List;

/**
 * The season of an installation, simulated twice: with its collectors and without them. Gas displaced and temperature
 * gained are differences of the two. Immutable.
 *
 * @param with every flow with the collectors
 * @param without every flow of the same pool without collectors
 * @param forcing what the weather does to pool and collectors
 * @param weather the typical year
 */
public record SeasonForecast(SeasonLedger with, SeasonLedger without, SeasonForcing forcing, WeatherYear weather) {

    /** Simulates an installation in its weather. */
    public static SeasonForecast of(Installation installation, WeatherYear weather) {
        return of(installation, SeasonForcing.of(installation, weather), weather);
    }

    /**
     * Simulates an installation with forcing that is already prepared.
     *
     * @param installation what is built
     * @param forcing prepared for the same pool, cover and collectors in the same weather
     * @param weather the typical year
     * @throws IllegalArgumentException if the forcing was prepared for another installation or in another weather year
     */
    public static SeasonForecast of(Installation installation, SeasonForcing forcing, WeatherYear weather) {
        forcing.checkServes(weather);
        SeasonLedger with = SeasonSimulator.simulate(installation, forcing);
        SeasonLedger without = installation.arrays().isEmpty()
                ? with
                : SeasonSimulator.simulate(installation.withoutCollectors(), forcing.withoutCollectors());
        return new SeasonForecast(with, without, forcing, weather);
    }

    /** What was simulated, with its collectors. */
    public Installation installation() {
        return with.installation();
    }

    /** The months of the season in their order, see {@link Periods#months}. */
    public List<PeriodSummary> months() {
        return summaries(Periods.months(with));
    }

    /** The weeks of the season counted from opening, see {@link Periods#weeks}. */
    public List<PeriodSummary> weeks() {
        return summaries(Periods.weeks(with));
    }

    /** The days of the season, see {@link Periods#days}. */
    public List<PeriodSummary> days() {
        return summaries(Periods.days(with));
    }

    /** All numbers of the season; simulates once more for the worth of the next square metre. */
    public SeasonSummary summary() {
        return SeasonSummary.of(this);
    }

    private List<PeriodSummary> summaries(List<Period> periods) {
        return periods.stream().map(period -> PeriodSummary.of(this, period)).toList();
    }
}
