package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.units.Estimate;

/** How far the seasons of an area study are to be trusted, by what is doubtful in every forecast. */
public final class AreaBands {

    private AreaBands() {}

    /**
     * The doubt of one area's season, by {@link SeasonBand#USUAL}.
     *
     * @param design the area
     * @param forcing of the same weather
     * @param runs how to run
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static SeasonBand of(AreaDesign design, SharedForcing forcing, Runs runs) {
        return of(design.built(), forcing, runs);
    }

    /**
     * The heat that each m² beyond an area adds with its doubt, kWh/m² a season: the same inputs are varied for that area and
     * for the next larger one, so that it is the doubt of the difference.
     *
     * @param design the area
     * @param band its season's doubt, see {@link #of(AreaDesign, SharedForcing, Runs)}
     * @param forcing of the same weather
     * @param runs how to run
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static Estimate nextKwhPerM2(AreaDesign design, SeasonBand band, SharedForcing forcing, Runs runs) {
        return new PairedBand(band, of(design.larger(), forcing, runs))
                .of((season, larger) ->
                        NextSquareMetre.between(season, larger, design.built()).deliveredKwhPerM2());
    }

    private static SeasonBand of(Installation built, SharedForcing forcing, Runs runs) {
        return SeasonBand.of(SensitivityStudy.vary(built, SeasonBand.USUAL, forcing, runs), built.fitted());
    }
}
