package dev.warmlane.study;

import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.units.Estimate;
import java.util.Optional;

/**
 * How far the numbers of {@link AlternativesStudy} are to be trusted: the seasons without and with the cover, each again
 * with the doubtful inputs of a forecast at their ends.
 */
public final class AlternativesBand {

    private final Installation built;
    private final PairedBand seasons;

    private AlternativesBand(Installation built, PairedBand seasons) {
        this.built = built;
        this.seasons = seasons;
    }

    /**
     * Simulates the season that a forecast does not have: without its cover, or with the one offered.
     *
     * @param forecast the season as described
     * @param bands of the same weather
     */
    public static AlternativesBand of(SeasonForecast forecast, SeasonBands bands) {
        Installation built = forecast.installation();
        SeasonBand described = bands.of(built);
        SeasonBand band = bands.of(AlternativesStudy.other(built));
        return new AlternativesBand(
                built, built.cover().isPresent() ? new PairedBand(band, described) : new PairedBand(described, band));
    }

    /** What is bought for the heater with neither less what is bought with one of the others, kWh. */
    public Estimate savedKwh(Alternative one) {
        return seasons.of((bare, covered) -> withoutKwh(bare) - boughtKwh(one, one.cover() ? covered : bare));
    }

    /** All that is paid over the years, {@link Alternative.Cost#overYears}; nothing where a price is missing. */
    public Optional<Estimate> overYears(Alternative one) {
        return one.cost()
                .map(cost -> seasons.of((bare, covered) -> AlternativesStudy.cost(
                                built, one.collectors(), one.cover(), one.cover() ? covered : bare)
                        .orElse(cost)
                        .overYears()));
    }

    private static double boughtKwh(Alternative one, PeriodSummary season) {
        return one.collectors() ? season.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0) : withoutKwh(season);
    }

    private static double withoutKwh(PeriodSummary season) {
        return season.gas().match(GasSummary.Displaced::burnedWithoutKwh, none -> 0.0);
    }
}
