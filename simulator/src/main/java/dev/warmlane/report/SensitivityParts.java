package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.SensitivityStudy;
import java.util.List;
import java.util.Optional;

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

    /** Sheltered and exposed: what that means. */
    public Part sheltered() {
        TextSection section = SensitivityText.of(exposure, units);
        return Part.of(section.heading(), section.opening(), List.of());
    }

    /** Sheltered and exposed: temperature and heat. */
    public List<Part> exposures() {
        return List.of(
                Part.of("Pool temperature, season mean", "", ExposureTables.means(exposure, units), ""),
                Part.of("Heat delivered by the collectors", "", ExposureTables.heat(exposure, units), ""));
    }

    /** Sheltered and exposed: gas; nothing where there is no heater. */
    public Optional<Part> gasExposure() {
        return ExposureTables.displaces(exposure)
                ? Optional.of(
                        Part.of("Gas displaced (higher heating value)", "", ExposureTables.gas(exposure, units), ""))
                : Optional.empty();
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
