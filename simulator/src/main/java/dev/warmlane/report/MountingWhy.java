package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.chart.MountingCharts;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Why one mounting gives more heat than another, in numbers. */
final class MountingWhy {

    private MountingWhy() {}

    /**
     * The sections.
     *
     * @param against the mounting that the others are set against: the first of the study where none of this name is there
     */
    static List<Section> of(Numbers numbers, MountingStudy study, Optional<String> against) {
        List<MountingResult> results = new ArrayList<>(study.sameArea());
        results.sort(
                Comparator.comparing(r -> !against.equals(Optional.of(r.option().name()))));
        if (results.stream().anyMatch(r -> r.light().isEmpty())) {
            return List.of(Section.of("Where the difference comes from", Place.PRINTED)
                    .words(
                            "The collector is described by a test certificate, which does not tell one loss from another."
                                    + " Describe it by its absorber to see them."));
        }
        List<Section> parts = new ArrayList<>();
        if (results.size() > 1) {
            parts.add(difference(numbers, results));
        }
        parts.add(ways(numbers, study));
        parts.add(films(numbers, results));
        return parts;
    }

    private static Section difference(Numbers numbers, List<MountingResult> results) {
        return Section.of("Where the difference comes from", Place.PRINTED)
                .words("Same collector area, per unit of it, against “"
                        + results.get(0).option().name()
                        + "” while its pump ran: above zero it is better off by that way, below zero worse.")
                .with(MountingTables.lightAgainstFirst(results, numbers.units()));
    }

    private static Section ways(Numbers numbers, MountingStudy study) {
        return Section.of("Where the light goes", Place.PRINTED)
                .with(MountingTables.light(study.sameArea(), numbers.units()))
                .words(
                        "Heat gained is above zero, heat lost below. An open back that gains by long-wave takes more from the"
                                + " warm roof than it sends out; air that gains warms the collector.")
                .with(
                        Set.of(Place.TECHNICAL),
                        new Picture("mounting-light", name -> MountingCharts.light(name, study, numbers.units())));
    }

    private static Section films(Numbers numbers, List<MountingResult> results) {
        boolean warmed = results.stream()
                .map(r -> r.light().orElseThrow())
                .mapToDouble(LightBudget::warmedByAir)
                .anyMatch(heat -> heat > 0);
        return Section.of("Films and temperatures", Place.PRINTED)
                .with(MountingTables.films(results, numbers.units()))
                .words(
                        "Means while the pump ran. A pump starts later and stops earlier where the collector loses more, and"
                                + " the sun of the hours between is lost to it: compare the sun on it in all hours with that"
                                + " while running. A film is what a face loses to the air for each degree between them."
                                + (warmed
                                        ? " In the hours “warmed by air” the air was warmer than the plate and wind brought"
                                                + " heat instead of taking it; the more exposed mounting then gains more."
                                        : " The air never warmed a running collector."));
    }
}
