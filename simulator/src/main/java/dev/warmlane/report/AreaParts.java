package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.AreaStudy;
import java.util.List;

/**
 * The parts of an area study that a page shows as the text does, with the same numbers and words.
 *
 * @param study the study
 * @param units units of the numbers
 */
public record AreaParts(AreaStudy study, ReportSettings.Units units) {

    /** The title of all of it. */
    public String title() {
        return StudyText.of(study, units).title();
    }

    /** The areas side by side. */
    public Part areas() {
        return Part.of(
                "Collector area", AreaText.of(study, units).get(0).opening(), AreaTables.areas(study, units), "");
    }

    /** How to read them. */
    public List<String> notes() {
        return AreaText.of(study, units).get(1).points();
    }
}
