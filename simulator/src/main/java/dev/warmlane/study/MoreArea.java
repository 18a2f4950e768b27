package dev.warmlane.study;

import dev.warmlane.units.Estimate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The heat that each further m² adds to the areas of a study, with its doubt. Of more than {@link AreaWorth#MOST_DOUBTED}
 * areas it is known of the smallest, of the one described and of the largest: the doubt of each takes some 17 seasons.
 *
 * @param kwhPerM2 by the area, m²; kWh/m² a season
 */
public record MoreArea(Map<Double, Estimate> kwhPerM2) {

    /** Keeps its own copy. */
    public MoreArea {
        kwhPerM2 = Map.copyOf(kwhPerM2);
    }

    /**
     * Simulates the doubt of a study's areas, as far as it is not known yet.
     *
     * @param study the study
     * @param bands of the same weather
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static MoreArea of(AreaStudy study, SeasonBands bands) {
        List<AreaDesign> designs = study.designs();
        Map<Double, Estimate> known = new LinkedHashMap<>();
        for (int i = 0; i < designs.size(); i++) {
            AreaDesign design = designs.get(i);
            if (designs.size() <= AreaWorth.MOST_DOUBTED || i == 0 || i == designs.size() - 1 || design.asDescribed()) {
                known.put(design.areaM2(), bands.nextKwhPerM2(design));
            }
        }
        return new MoreArea(known);
    }

    /** Of one design; nothing where its doubt is not known. */
    public Optional<Estimate> of(AreaDesign design) {
        return Optional.ofNullable(kwhPerM2.get(design.areaM2()));
    }
}
