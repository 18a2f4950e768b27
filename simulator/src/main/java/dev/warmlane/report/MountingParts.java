package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.wind.RoofRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The parts of a comparison of mountings, which text and page show with the same numbers and words.
 *
 * @param study the study
 * @param turning where the ranking turns; nothing where there is no flat array or no rack
 * @param units units of the numbers
 */
public record MountingParts(MountingStudy study, Optional<TurningPoints> turning, ReportSettings.Units units) {

    /** The title of all of it. */
    public String title() {
        return study.template().name() + ": mountings";
    }

    /** What they stand on, and what is compared. */
    public List<String> job() {
        Installation built = study.template();
        Roof roof = built.roof();
        return List.of(
                "Roof: " + length(roof.lengthM()) + " by " + length(roof.widthM()) + ", " + length(roof.heightM())
                        + " high, " + numbers().show(Measure.AREA, roof.usableAreaM2()) + " usable, albedo "
                        + Numbers.show(roof.albedo(), 2),
                "Wind: over the flat array it has run "
                        + length(RoofRun.effectiveRunM(roof.lengthM(), roof.widthM()))
                        + " of roof on average, over a rack its slope length",
                "Collectors: " + numbers().show(Measure.AREA, built.collectorAreaM2()) + " of the kind of \""
                        + built.arrays().get(0).name() + "\"",
                "Season: " + Numbers.show(built.season().first()) + " to "
                        + Numbers.show(built.season().last()));
    }

    /** Where the weather is from. */
    public String weather() {
        return study.weather().site().name() + ", "
                + Numbers.place(study.weather().site()) + " (" + study.weather().source() + ")";
    }

    /** Each mounting in a line. */
    public List<String> mountings() {
        return study.compared().stream()
                .map(one -> one.option().name() + ": " + SpacingText.of(numbers(), study, one))
                .toList();
    }

    /** With the same collector area. */
    public Part sameArea() {
        List<String> tooLarge = study.sameArea().stream()
                .filter(r -> !r.fit().fits())
                .map(r -> "\"" + r.option().name() + "\"")
                .toList();
        return Part.of(
                "Same collector area",
                "",
                MountingTables.comparison(study.sameArea(), units),
                tooLarge.isEmpty()
                        ? ""
                        : "No room on this roof for all of it: " + String.join(", ", tooLarge)
                                + ". The comparison shows what the same area would give.");
    }

    /** With the most that fits. */
    public Part sameRoof() {
        return Part.of(
                "The most that fits the same roof",
                "",
                MountingTables.comparison(study.sameRoof(), units),
                study.compared().stream()
                        .filter(one -> one.sameRoof().isEmpty())
                        .map(one -> "Nothing of \"" + one.option().name() + "\" fits.")
                        .collect(Collectors.joining(" ")));
    }

    /** Where the difference comes from. */
    public List<Part> why() {
        return MountingWhyText.of(numbers(), study);
    }

    /** What the pool's temperature does. */
    public Part held() {
        return Part.of(
                "What the pool's temperature does",
                "Heat of a unit of area over the season's pumping hours if the water were held at one temperature all"
                        + " season, same collector area, without any limit:",
                MountingTables.heldPool(study.sameArea(), units),
                "");
    }

    /** Where the ranking turns. */
    public Optional<Part> turningPoints() {
        return turning.map(found -> TurningText.of(numbers(), found));
    }

    /** All that is asked for first, in the order of the text. */
    List<Part> brief() {
        List<Part> parts = new ArrayList<>(List.of(sameArea(), sameRoof()));
        parts.addAll(why());
        parts.add(held());
        turningPoints().ifPresent(parts::add);
        return parts;
    }

    /** The months of each mounting. */
    List<Part> byMonth() {
        return MountingWhyText.byMonth(numbers(), study);
    }

    private String length(double metres) {
        return numbers().show(Measure.LENGTH, metres);
    }

    private Numbers numbers() {
        return new Numbers(units);
    }
}
