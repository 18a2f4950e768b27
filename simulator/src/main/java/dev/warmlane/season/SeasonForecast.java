package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Optional;

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

    /** How much larger it is grown: large enough to stand out from rounding, small enough to be a slope. */
    private static final double GROWTH = 0.01;

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

    /** How the pool opens, see {@link OpeningSummary}. */
    public OpeningSummary opening() {
        return OpeningSummary.of(this);
    }

    /** All numbers of the season; {@link #grown} is simulated for the worth of the next square metre. */
    public SeasonSummary summary() {
        return SeasonSummary.of(this, grown());
    }

    /**
     * The same season with every array a hundredth larger, beside the same pool without collectors; nothing where there are
     * none. The largest arrays that can be described shrink instead: the slope is the same. One beside them that is too
     * small to shrink stays, it has a two-hundred-thousandth of the area.
     */
    public Optional<SeasonForecast> grown() {
        Installation built = installation();
        if (built.arrays().isEmpty()) {
            return Optional.empty();
        }
        boolean mayGrow = built.arrays().stream()
                .allMatch(array -> array.areaM2() * (1 + GROWTH) <= CollectorArray.AREA.highest());
        double factor = mayGrow ? 1 + GROWTH : 1 - GROWTH;
        Installation other = built.toBuilder()
                .arrays(built.arrays().stream()
                        .map(array -> array.withAreaM2(Math.max(CollectorArray.AREA.lowest(), array.areaM2() * factor)))
                        .toList())
                .build();
        return Optional.of(new SeasonForecast(SeasonSimulator.simulate(other, forcing), without, forcing, weather));
    }

    private List<PeriodSummary> summaries(List<Period> periods) {
        return periods.stream().map(period -> PeriodSummary.of(this, period)).toList();
    }
}
