package dev.warmlane.report;

import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import java.util.ArrayList;
import java.util.List;

/** Why one mounting gives more heat than another, in numbers. */
final class MountingWhyText {

    private MountingWhyText() {}

    static List<Part> of(Numbers numbers, MountingStudy study) {
        List<MountingResult> results = study.sameArea();
        if (results.stream().anyMatch(r -> r.light().isEmpty())) {
            return List.of(Part.of(
                    "Where the difference comes from",
                    "The collector is described by a test certificate, which does not tell one loss from another."
                            + " Describe it by its absorber to see them.",
                    List.of()));
        }
        List<Part> parts = new ArrayList<>();
        if (results.size() > 1) {
            parts.add(difference(numbers, results));
        }
        parts.add(ways(numbers, results));
        parts.add(films(numbers, results));
        return parts;
    }

    static List<Part> byMonth(Numbers numbers, MountingStudy study) {
        return study.sameArea().stream()
                .filter(r -> r.light().isPresent())
                .map(r -> Part.of(
                        "Month by month, same collector area: " + r.option().name(),
                        "",
                        MountingTables.months(r, numbers.units()),
                        ""))
                .toList();
    }

    private static Part difference(Numbers numbers, List<MountingResult> results) {
        return Part.of(
                "Where the difference comes from",
                "Same collector area, per unit of it, against \""
                        + results.get(0).option().name()
                        + "\" while its pump ran: above zero it is better off by that way, below zero worse.",
                MountingTables.lightAgainstFirst(results, numbers.units()),
                "");
    }

    private static Part ways(Numbers numbers, List<MountingResult> results) {
        return Part.of(
                "Where the light goes",
                "",
                MountingTables.light(results, numbers.units()),
                "Heat gained is above zero, heat lost below. An open back that gains by long-wave takes more from the"
                        + " warm roof than it sends out; air that gains warms the collector.");
    }

    private static Part films(Numbers numbers, List<MountingResult> results) {
        boolean warmed = results.stream()
                .map(r -> r.light().orElseThrow())
                .mapToDouble(LightBudget::warmedByAir)
                .anyMatch(heat -> heat > 0);
        return Part.of(
                "Films and temperatures",
                "",
                MountingTables.films(results, numbers.units()),
                "Means while the pump ran. A pump starts later and stops earlier where the collector loses more, and"
                        + " the sun of the hours between is lost to it: compare the sun on it in all hours with that"
                        + " while running. A film is what a face loses to the air for each degree between them."
                        + (warmed
                                ? " In the hours \"warmed by air\" the air was warmer than the plate and wind brought"
                                        + " heat instead of taking it; the more exposed mounting then gains more."
                                : " The air never warmed a running collector."));
    }
}
