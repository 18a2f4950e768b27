package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether seasons are to be believed at all; the first thing that a reader is told. */
public final class CredibilityText {

    /**
     * Water above this is not credible, °C: the heat curves of the collectors are solved for pools up to here, and bathing
     * ends at 40 °C (own choice).
     */
    static final double LIMIT_C = 45;

    private CredibilityText() {}

    /** The warning without a closing full stop; nothing where all of the seasons are credible. */
    public static Optional<String> of(Numbers numbers, Stream<PeriodSummary> seasons) {
        double highest = seasons.mapToDouble(CredibilityText::highestC).max().orElseThrow();
        if (highest <= LIMIT_C) {
            return Optional.empty();
        }
        return Optional.of("NOT CREDIBLE: the water reaches " + numbers.show(Measure.TEMPERATURE, highest)
                + ", above the " + numbers.show(Measure.TEMPERATURE, LIMIT_C)
                + " up to which this model is meant for pools. Check cover, bathers, depth and weather before any other"
                + " number is used");
    }

    /** The same of a comparison of mountings. */
    public static Optional<String> of(Numbers numbers, MountingStudy study) {
        return of(
                numbers,
                Stream.concat(study.sameArea().stream(), study.sameRoof().stream())
                        .map(MountingResult::season));
    }

    /** The same of a pool sheltered and exposed. */
    public static Optional<String> of(Numbers numbers, ExposureStudy study) {
        return of(numbers, study.cases().stream().map(ExposureStudy.Case::season));
    }

    /** As the first section of a study in words. */
    static List<TextSection> section(Optional<String> warning) {
        return warning.map(why -> new TextSection("Before anything else", TextSection.broken("", why + "."))).stream()
                .toList();
    }

    /** With or without collectors. */
    private static double highestC(PeriodSummary season) {
        return Math.max(season.water().highestC(), season.waterWithout().highestC());
    }
}
