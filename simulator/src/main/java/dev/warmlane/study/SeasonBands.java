package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.units.Estimate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How far the seasons of many installations in one weather are to be trusted. A season's doubt is simulated when it is first
 * asked for and kept, some 1.5 MB each; what is prepared for it is shared. For one thread.
 */
public final class SeasonBands {

    private final SharedForcing forcing;
    private final Runs runs;
    private final Map<Asked, SeasonBand> known = new HashMap<>();

    /**
     * Knows nothing yet.
     *
     * @param forcing of the weather; shared with studies of it
     * @param runs how to run
     */
    public SeasonBands(SharedForcing forcing, Runs runs) {
        this.forcing = forcing;
        this.runs = runs;
    }

    /** For a season that is simulated already, and whatever else is asked of its weather; on all cores. */
    public static SeasonBands of(SeasonForecast forecast) {
        SharedForcing forcing = new SharedForcing(forecast.weather());
        forcing.hold(forecast.installation(), forecast.forcing());
        return new SeasonBands(forcing, Runs.onAllCores());
    }

    /**
     * The doubt of a season by {@link SeasonBand#USUAL}.
     *
     * @param built what is built, as it was asked for before: another that is equal to it is simulated anew
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public SeasonBand of(Installation built) {
        return of(built, SeasonBand.USUAL);
    }

    /**
     * The doubt of a season by inputs of one's choice.
     *
     * @param built what is built, as it was asked for before: another that is equal to it is simulated anew
     * @param doubtful what to vary
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public SeasonBand of(Installation built, List<Parameter> doubtful) {
        Asked asked = new Asked(built, doubtful);
        SeasonBand band = known.get(asked);
        if (band == null) {
            band = SeasonBand.of(SensitivityStudy.vary(built, doubtful, forcing, runs), built.fitted());
            known.put(asked, band);
        }
        return band;
    }

    /**
     * The heat that each m² beyond an area adds with its doubt, kWh/m² a season: the same inputs are varied for that area and
     * for the next larger one, so that it is the doubt of the difference.
     *
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public Estimate nextKwhPerM2(AreaDesign design) {
        return new PairedBand(of(design.built()), of(design.larger()))
                .of((season, larger) ->
                        NextSquareMetre.between(season, larger, design.built()).deliveredKwhPerM2());
    }

    /** What is prepared for the weather. */
    public SharedForcing forcing() {
        return forcing;
    }

    /** How they are run. */
    public Runs runs() {
        return runs;
    }

    private record Asked(Installation built, List<Parameter> doubtful) {}
}
