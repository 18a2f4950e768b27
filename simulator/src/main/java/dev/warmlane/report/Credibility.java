package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Measure;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether seasons are to be believed at all; the first thing that a reader is told. */
final class Credibility {

    /**
     * Water above this is not credible, °C: the heat curves of the collectors are solved for pools up to here, and bathing
     * ends at 40 °C (own choice).
     */
    static final double LIMIT_C = 45;

    private Credibility() {}

    /** The warning; nothing where all of the seasons are credible. */
    static Optional<String> of(Numbers numbers, Stream<PeriodSummary> seasons) {
        double highest = seasons.mapToDouble(Credibility::highestC).max().orElseThrow();
        if (highest <= LIMIT_C) {
            return Optional.empty();
        }
        return Optional.of("NOT CREDIBLE: the water reaches " + numbers.show(Measure.TEMPERATURE, highest)
                + ", above the " + numbers.show(Measure.TEMPERATURE, LIMIT_C)
                + " up to which this model is meant for pools. Check cover, bathers, depth and weather before any other"
                + " number is used.");
    }

    /** With or without collectors. */
    private static double highestC(PeriodSummary season) {
        return Math.max(season.water().highestC(), season.waterWithout().highestC());
    }
}
