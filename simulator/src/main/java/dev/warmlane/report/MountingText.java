package dev.warmlane.report;

import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.wind.RoofRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Mountings side by side in words and tables, for a terminal or a mail.
 *
 * @param title its title
 * @param brief the parts of its first pages
 * @param sections all of its parts
 */
public record MountingText(String title, List<TextSection> brief, List<TextSection> sections) {

    /** Keeps its own copies of the lists. */
    public MountingText {
        brief = List.copyOf(brief);
        sections = List.copyOf(sections);
    }

    /**
     * Writes a study up.
     *
     * @param study the study
     * @param turning where the ranking turns; nothing where there is no flat array or no rack
     * @param units units of its numbers
     * @param assumed what was assumed where nothing was given
     */
    public static MountingText of(
            MountingStudy study,
            Optional<TurningPoints> turning,
            ReportSettings.Units units,
            List<Assumption> assumed) {
        Numbers numbers = new Numbers(units);
        List<TextSection> brief = new ArrayList<>();
        brief.add(job(numbers, study));
        brief.add(sameArea(numbers, study));
        brief.add(sameRoof(numbers, study));
        brief.addAll(MountingWhyText.of(numbers, study));
        brief.add(held(numbers, study));
        turning.ifPresent(found -> brief.add(TurningText.of(numbers, found)));
        List<TextSection> sections = new ArrayList<>(brief);
        sections.addAll(MountingWhyText.byMonth(numbers, study));
        if (!assumed.isEmpty()) {
            sections.add(new TextSection(
                    "Assumed, because the scenario does not say",
                    TextSection.listed(
                            assumed.stream().map(Assumption::toString).toList())));
        }
        return new MountingText(study.template().name() + ": mountings", brief, sections);
    }

    /** All of it, lines ending with a line feed. */
    public String text() {
        return written(sections);
    }

    /** Without the months and without what was assumed; lines ending with a line feed. */
    public String briefText() {
        return written(brief);
    }

    private String written(List<TextSection> parts) {
        StringBuilder text = new StringBuilder(title)
                .append('\n')
                .append("=".repeat(title.codePointCount(0, title.length())))
                .append('\n');
        parts.forEach(section -> text.append('\n').append(section.text()));
        return text.toString();
    }

    private static TextSection job(Numbers numbers, MountingStudy study) {
        Installation built = study.template();
        Roof roof = built.roof();
        List<String> lines = new ArrayList<>();
        lines.add("Roof: " + numbers.show(Measure.LENGTH, roof.lengthM()) + " by "
                + numbers.show(Measure.LENGTH, roof.widthM()) + ", " + numbers.show(Measure.LENGTH, roof.heightM())
                + " high, " + numbers.show(Measure.AREA, roof.usableAreaM2()) + " usable, albedo "
                + Numbers.show(roof.albedo(), 2));
        lines.add("Wind: over the flat array it has run "
                + numbers.show(Measure.LENGTH, RoofRun.effectiveRunM(roof.lengthM(), roof.widthM()))
                + " of roof on average, over a rack its slope length");
        lines.add("Collectors: "
                + numbers.show(Measure.AREA, built.collectorAreaM2()) + " of the kind of \""
                + built.arrays().get(0).name() + "\"");
        lines.add("Season: " + Numbers.show(built.season().first()) + " to "
                + Numbers.show(built.season().last()));
        lines.addAll(TextSection.broken(
                "Weather: ",
                study.weather().site().name() + ", "
                        + Numbers.place(study.weather().site()) + " ("
                        + study.weather().source() + ")"));
        study.compared().forEach(one -> lines.addAll(TextSection.broken("- ", mounting(numbers, study, one))));
        return new TextSection("The job", lines);
    }

    private static String mounting(Numbers numbers, MountingStudy study, MountingStudy.Compared one) {
        return one.option().name() + ": " + SpacingText.of(numbers, study, one);
    }

    private static TextSection sameArea(Numbers numbers, MountingStudy study) {
        List<String> lines =
                new ArrayList<>(TextSection.linesOf(MountingTables.comparison(study.sameArea(), numbers.units())));
        List<String> tooLarge = study.sameArea().stream()
                .filter(r -> !r.fit().fits())
                .map(r -> "\"" + r.option().name() + "\"")
                .toList();
        if (!tooLarge.isEmpty()) {
            lines.add("");
            lines.addAll(TextSection.broken(
                    "",
                    "No room on this roof for all of it: " + String.join(", ", tooLarge)
                            + ". The comparison shows what the same area would give."));
        }
        return new TextSection("Same collector area", lines);
    }

    private static TextSection sameRoof(Numbers numbers, MountingStudy study) {
        List<String> lines =
                new ArrayList<>(TextSection.linesOf(MountingTables.comparison(study.sameRoof(), numbers.units())));
        for (MountingStudy.Compared one : study.compared()) {
            if (one.sameRoof().isEmpty()) {
                lines.add("Nothing of \"" + one.option().name() + "\" fits.");
            }
        }
        return new TextSection("The most that fits the same roof", lines);
    }

    private static TextSection held(Numbers numbers, MountingStudy study) {
        List<String> lines = new ArrayList<>(TextSection.broken(
                "",
                "Heat of a unit of area over the season's pumping hours if the water were held at one temperature all"
                        + " season, same collector area, without any limit:"));
        lines.add("");
        lines.addAll(TextSection.linesOf(MountingTables.heldPool(study.sameArea(), numbers.units())));
        return new TextSection("What the pool's temperature does", lines);
    }
}
