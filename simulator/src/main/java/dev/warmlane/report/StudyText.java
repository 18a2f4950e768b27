package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.SensitivityStudy;
import java.util.ArrayList;
import java.util.List;

/**
 * A study in words and tables, for a terminal or a mail.
 *
 * @param title its title
 * @param sections its parts in their order
 */
public record StudyText(String title, List<TextSection> sections) {

    /** Keeps its own copy of the list. */
    public StudyText {
        sections = List.copyOf(sections);
    }

    /** Writes an area study up. */
    public static StudyText of(AreaStudy study, ReportSettings.Units units) {
        List<TextSection> sections = new ArrayList<>(CredibilityText.section(
                CredibilityText.of(new Numbers(units), study.designs().stream().map(AreaDesign::season))));
        sections.addAll(AreaText.of(study, units));
        return new StudyText(study.installation().name() + ": collector area", sections);
    }

    /**
     * Writes up how far the season depends on what is not known well.
     *
     * @param name what the installation is called
     */
    public static StudyText of(
            String name, ExposureStudy exposure, SensitivityStudy sensitivity, ReportSettings.Units units) {
        List<TextSection> sections =
                new ArrayList<>(CredibilityText.section(CredibilityText.of(new Numbers(units), exposure)));
        sections.add(SensitivityText.of(exposure, units));
        sections.addAll(SensitivityText.of(sensitivity, units));
        return new StudyText(name + ": what the forecast depends on", sections);
    }

    /** All of it, lines ending with a line feed. */
    public String text() {
        return TextSection.page(title, sections);
    }
}
