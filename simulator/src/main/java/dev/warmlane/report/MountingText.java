package dev.warmlane.report;

import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.TurningPoints;
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
        MountingParts parts = new MountingParts(study, turning, units);
        List<TextSection> brief =
                new ArrayList<>(CredibilityText.section(CredibilityText.of(new Numbers(units), study)));
        brief.add(job(parts));
        parts.brief().forEach(part -> brief.add(part.section()));
        List<TextSection> sections = new ArrayList<>(brief);
        parts.byMonth().forEach(part -> sections.add(part.section()));
        if (!assumed.isEmpty()) {
            sections.add(new TextSection(
                    "Assumed, because the scenario does not say",
                    TextSection.listed(
                            assumed.stream().map(Assumption::toString).toList())));
        }
        return new MountingText(parts.title(), brief, sections);
    }

    /** All of it, lines ending with a line feed. */
    public String text() {
        return TextSection.page(title, sections);
    }

    /** Without the months and without what was assumed; lines ending with a line feed. */
    public String briefText() {
        return TextSection.page(title, brief);
    }

    private static TextSection job(MountingParts parts) {
        List<String> lines = new ArrayList<>(parts.job());
        lines.addAll(TextSection.broken("Weather: ", parts.weather()));
        lines.addAll(TextSection.listed(parts.mountings()));
        return new TextSection("The job", lines);
    }
}
