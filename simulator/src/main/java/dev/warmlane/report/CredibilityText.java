package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import java.util.Optional;

/** Whether a season is to be believed at all; the first thing that a reader is told. */
final class CredibilityText {

    /**
     * Water above this is not credible, °C: the heat curves of the collectors and the steps of the season are made for
     * pools up to here, and bathing ends at 40 °C (own choice).
     */
    static final double LIMIT_C = 45;

    private CredibilityText() {}

    /** The warning, a sentence or two without a closing full stop; nothing for a credible season. */
    static Optional<String> of(Numbers numbers, PeriodSummary season) {
        double highest =
                Math.max(season.water().highestC(), season.waterWithout().highestC());
        if (highest <= LIMIT_C) {
            return Optional.empty();
        }
        return Optional.of("NOT CREDIBLE: the water reaches " + numbers.show(Measure.TEMPERATURE, highest)
                + (season.water().highestC() > LIMIT_C ? "" : " without collectors") + ", above the "
                + numbers.show(Measure.TEMPERATURE, LIMIT_C)
                + " up to which this model is meant for pools. Check cover, bathers, depth and weather before any other"
                + " number is used");
    }
}
