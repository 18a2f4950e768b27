package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonSummary;
import java.util.Comparator;
import java.util.List;

/** What to be careful of where several seasons are shown: the warmest of them counts. */
public final class StudyCautions {

    private StudyCautions() {}

    /**
     * The cautions.
     *
     * @param described the season that the study started from
     * @param seasons those it shows, at least one
     */
    public static List<String> of(ForecastReport described, List<PeriodSummary> seasons) {
        SeasonSummary summary = described.summary();
        PeriodSummary warmest = seasons.stream()
                .max(Comparator.comparingDouble(season -> season.water().highestC()))
                .orElseThrow();
        return SafetyText.cautions(
                        new Numbers(described.units()),
                        new SeasonSummary(
                                warmest,
                                summary.warmUpHours(),
                                summary.warmUpHoursWithout(),
                                summary.arrays(),
                                summary.workingRange(),
                                summary.nextSquareMetre(),
                                summary.money()))
                .points();
    }
}
