package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.ShadeStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.units.Measure;
import java.util.List;

/** What horizon, obstacles and parapets take from each mounting in its own layout. */
final class MountingShade {

    private final Numbers numbers;
    private final SharedForcing forcing;

    private MountingShade(Numbers numbers, SharedForcing forcing) {
        this.numbers = numbers;
        this.forcing = forcing;
    }

    /** The section; nothing in it where nothing is in the way. */
    static Section of(MountingStudy study, Subject described) {
        MountingShade shade =
                new MountingShade(described.numbers(), described.bands().forcing());
        List<String> points = study.sameArea().stream()
                .flatMap(
                        result -> ShadeStudy.withOpenCollectors(result.forecast(), shade.forcing)
                                .map(open -> shade.point(result, open))
                                .stream())
                .toList();
        Section section = Section.of("What shade costs each", Place.PRINTED);
        return points.isEmpty()
                ? section
                : section.words(
                                "Each is shaded in its own layout by what stands on the roof and around it. With the same"
                                        + " collector area this takes:")
                        .points(points);
    }

    private String point(MountingResult result, SeasonForecast open) {
        PeriodSummary best = PeriodSummary.of(open, Periods.season(open.with()));
        return result.option().name() + ": "
                + lost(
                        result.season().collectors().irradiationKwh(),
                        best.collectors().irradiationKwh())
                + " of the season's sun on the collectors, and "
                + lost(result.deliveredKwh(), best.collectors().deliveredKwh())
                + " of their heat";
    }

    private String lost(double left, double whole) {
        return numbers.show(Measure.SHARE, whole > 0 ? 1 - left / whole : 0);
    }
}
