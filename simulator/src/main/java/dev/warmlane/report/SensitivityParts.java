package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.SensitivityStudy;
import java.util.ArrayList;
import java.util.List;

/**
 * The parts of what a forecast depends on, which a page shows as the text does, with the same numbers and words.
 *
 * @param name what the installation is called
 * @param exposure pool and roof in the wind
 * @param study one thing at a time
 * @param units units of the numbers
 */
public record SensitivityParts(
        String name, ExposureStudy exposure, SensitivityStudy study, ReportSettings.Units units) {

    /** The title of all of it. */
    public String title() {
        return StudyText.of(name, exposure, study, units).title();
    }

    /** Sheltered and exposed: what it is, and a table for each measure. */
    public List<Part> exposures() {
        TextSection section = SensitivityText.of(exposure, units);
        List<Part> parts = new ArrayList<>();
        parts.add(Part.of(section.heading(), section.opening(), List.of()));
        parts.add(Part.of("Pool temperature, season mean", "", ExposureTables.means(exposure, units), ""));
        parts.add(Part.of("Heat delivered by the collectors", "", ExposureTables.heat(exposure, units), ""));
        if (ExposureTables.displaces(exposure)) {
            parts.add(Part.of("Gas displaced (higher heating value)", "", ExposureTables.gas(exposure, units), ""));
        }
        return parts;
    }

    /** One thing at a time. */
    public Part effects() {
        TextSection section = SensitivityText.of(study, units).get(0);
        return Part.of(section.heading(), section.opening(), SensitivityTables.effects(study, units), "");
    }

    /** Why each was varied so far. */
    public List<String> why() {
        return study.effects().stream().map(s -> s.name() + ": " + s.why()).toList();
    }

    /** What was not varied, and why. */
    public List<String> skipped() {
        return study.skipped().stream().map(s -> s.name() + ": " + s.why()).toList();
    }
}
