package dev.warmlane.report;

import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import java.util.ArrayList;
import java.util.List;

/** Why one mounting gives more heat than another, in numbers. */
final class MountingWhyText {

    private MountingWhyText() {}

    static List<TextSection> of(Numbers numbers, MountingStudy study) {
        List<MountingResult> results = study.sameArea();
        if (results.stream().anyMatch(r -> r.light().isEmpty())) {
            return List.of(new TextSection(
                    "Where the difference comes from",
                    TextSection.broken(
                            "",
                            "The collector is described by a test certificate, which does not tell one loss from"
                                    + " another. Describe it by its absorber to see them.")));
        }
        List<TextSection> sections = new ArrayList<>();
        if (results.size() > 1) {
            sections.add(difference(numbers, results));
        }
        sections.add(ways(numbers, results));
        sections.add(films(numbers, results));
        return sections;
    }

    static List<TextSection> byMonth(Numbers numbers, MountingStudy study) {
        return study.sameArea().stream()
                .filter(r -> r.light().isPresent())
                .map(r -> new TextSection(
                        "Month by month, same collector area: " + r.option().name(),
                        TextSection.linesOf(MountingTables.months(r, numbers.units()))))
                .toList();
    }

    private static TextSection difference(Numbers numbers, List<MountingResult> results) {
        List<String> lines = new ArrayList<>(TextSection.broken(
                "",
                "Same collector area, per unit of it, against \""
                        + results.get(0).option().name()
                        + "\" while its pump ran: above zero it is better off by that way, below zero worse."));
        lines.add("");
        lines.addAll(TextSection.linesOf(MountingTables.lightAgainstFirst(results, numbers.units())));
        return new TextSection("Where the difference comes from", lines);
    }

    private static TextSection ways(Numbers numbers, List<MountingResult> results) {
        List<String> lines = new ArrayList<>(TextSection.linesOf(MountingTables.light(results, numbers.units())));
        lines.add("");
        lines.addAll(TextSection.broken(
                "",
                "Heat gained is above zero, heat lost below. An open back that gains by long-wave takes more from the"
                        + " warm roof than it sends out; air that gains warms the collector."));
        return new TextSection("Where the light goes", lines);
    }

    private static TextSection films(Numbers numbers, List<MountingResult> results) {
        List<String> lines = new ArrayList<>(TextSection.linesOf(MountingTables.films(results, numbers.units())));
        lines.add("");
        boolean warmed = results.stream()
                .map(r -> r.light().orElseThrow())
                .mapToDouble(LightBudget::warmedByAir)
                .anyMatch(heat -> heat > 0);
        lines.addAll(TextSection.broken(
                "",
                "Means while the pump ran. A pump starts later and stops earlier where the collector loses more, and"
                        + " the sun of the hours between is lost to it: compare the sun on it in all hours with that"
                        + " while running. A film is what a face loses to the air for each degree between them."
                        + (warmed
                                ? " In the hours \"warmed by air\" the air was warmer than the plate and wind brought"
                                        + " heat instead of taking it; the more exposed mounting then gains more."
                                : " The air never warmed a running collector.")));
        return new TextSection("Films and temperatures", lines);
    }
}
