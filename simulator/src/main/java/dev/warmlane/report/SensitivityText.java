package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.SensitivityStudy;
import java.util.ArrayList;
import java.util.List;

/** Wind exposure and sensitivity in words and tables, for a terminal or a mail. */
final class SensitivityText {

    private final Numbers numbers;

    private SensitivityText(Numbers numbers) {
        this.numbers = numbers;
    }

    /** The 3 x 3 of pool and roof in the wind. */
    static TextSection of(ExposureStudy study, ReportSettings.Units units) {
        boolean outdoor = study.cases().get(0).poolWindFactor().isPresent();
        List<String> lines = new ArrayList<>(TextSection.broken(
                "",
                outdoor
                        ? "How much wind reaches pool and roof is the least known of all. The pool's number is the wind at"
                                + " the water over the station's at 10 m; the roof's word is the terrain that the wind"
                                + " crosses. From little wind to much; what is described as sheltered or exposed as any"
                                + " stands once."
                        : "How much wind reaches the roof is little known. Its word is the terrain that the wind crosses;"
                                + " the pool is in a hall."));
        table(lines, "Pool temperature, season mean", ExposureTables.means(study, units));
        table(lines, "Heat delivered by the collectors", ExposureTables.heat(study, units));
        if (ExposureTables.displaces(study)) {
            table(lines, "Gas displaced (higher heating value)", ExposureTables.gas(study, units));
        }
        return new TextSection("Sheltered and exposed", lines);
    }

    /** One parameter at a time: the table, and why each was varied so far. */
    static List<TextSection> of(SensitivityStudy study, ReportSettings.Units units) {
        SensitivityText text = new SensitivityText(new Numbers(units));
        List<String> lines = new ArrayList<>(TextSection.broken("", text.described(study)));
        lines.add("");
        lines.addAll(TextSection.linesOf(SensitivityTables.effects(study, units)));
        List<TextSection> sections = new ArrayList<>();
        sections.add(new TextSection("One thing at a time", lines));
        sections.add(new TextSection(
                "Why so far",
                TextSection.listed(study.effects().stream()
                        .map(s -> s.name() + ": " + s.why())
                        .toList())));
        if (!study.skipped().isEmpty()) {
            sections.add(new TextSection(
                    "Not varied",
                    TextSection.listed(study.skipped().stream()
                            .map(s -> s.name() + ": " + s.why())
                            .toList())));
        }
        return sections;
    }

    private String described(SensitivityStudy study) {
        PeriodSummary season = study.described();
        String text =
                "As described: " + numbers.show(Measure.HEAT, season.balance().deliveredKwh())
                        + " of heat delivered, "
                        + numbers.show(Measure.TEMPERATURE, season.water().meanC()) + " in the season's mean";
        if (SensitivityTables.displaces(study)) {
            text += ", " + numbers.show(Measure.HEAT, season.gas().replacedKwh()) + " of gas displaced";
        }
        return text
                + ". Below, what is added to that when one thing is low or high and all else is as described; largest"
                + " effect on the heat first. Effects of several at once do not simply add up.";
    }

    private static void table(List<String> lines, String heading, Table table) {
        lines.add("");
        lines.add(heading);
        lines.addAll(TextSection.linesOf(table));
    }
}
