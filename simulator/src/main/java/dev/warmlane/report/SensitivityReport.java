package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.SensitivityCharts;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.wind.WindProfile;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The report of what a forecast depends on. A section is a method here and a line in {@link #sections}. */
public final class SensitivityReport {

    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private final Installation built;
    private final String name;
    private final ExposureStudy exposure;
    private final SensitivityStudy study;
    private final Numbers numbers;
    private final CommonSections common;

    private SensitivityReport(ExposureStudy exposure, SensitivityStudy study, Subject described) {
        this.built = described.installation();
        this.name = built.name();
        this.exposure = exposure;
        this.study = study;
        this.numbers = described.numbers();
        this.common = new CommonSections(described);
    }

    /**
     * The report of two studies of one installation.
     *
     * @param exposure pool and roof in the wind
     * @param study one thing at a time
     * @param described what they started from
     */
    public static Report of(ExposureStudy exposure, SensitivityStudy study, Subject described) {
        SensitivityReport report = new SensitivityReport(exposure, study, described);
        return new Report(
                "sensitivity",
                report.name + ": what the forecast depends on",
                report.common.place(),
                described.settings().letterhead(),
                described.settings().notation(),
                report.sections(),
                List.of(
                        new Data("exposure", () -> ExposureTables.all(exposure, described.units())),
                        new Data("sensitivity", () -> SensitivityTables.all(study, described.units()))));
    }

    private List<Section> sections() {
        return CommonSections.list(
                List.of(
                        new SensitivityAnswer(exposure, study, built, numbers).section(),
                        common.lookAt(),
                        common.job(),
                        exposed(),
                        oneAtATime(),
                        Section.of("Why so far", Place.PRINTED)
                                .points(study.effects().stream()
                                        .map(s -> s.name() + ": " + s.why())
                                        .toList()),
                        Section.of("Not varied", Place.PRINTED)
                                .points(study.skipped().stream()
                                        .map(s -> s.name() + ": " + s.why())
                                        .toList())),
                common.last(shown()));
    }

    private List<PeriodSummary> shown() {
        return Stream.concat(
                        exposure.cases().stream().map(ExposureStudy.Case::season),
                        study.effects().stream()
                                .flatMap(s ->
                                        Stream.of(s.low().season(), s.high().season())))
                .toList();
    }

    /** The 3 x 3 of pool and roof in the wind. */
    private Section exposed() {
        boolean outdoor = exposure.cases().get(0).poolWindFactor().isPresent();
        Section section = Section.of("Sheltered and exposed", Place.PRINTED)
                .words(
                        outdoor
                                ? "How much wind reaches pool and roof is the least known of all. The pool's number is the wind at"
                                        + " the water over the station's at "
                                        + numbers.show(Measure.LENGTH, WindProfile.STATION_HEIGHT_M)
                                        + "; the roof's word is the terrain that the wind"
                                        + " crosses. From little wind to much; what is described as sheltered or exposed as any"
                                        + " stands once."
                                : "How much wind reaches the roof is little known. Its word is the terrain that the wind crosses;"
                                        + " the pool is in a hall.")
                .with(
                        square("Pool temperature, season mean", PeriodColumn.WATER_MEAN),
                        square("Heat delivered by the collectors", PeriodColumn.DELIVERED));
        FuelWords fuel = FuelWords.of(study.described());
        return ExposureTables.displaces(exposure)
                ? section.with(
                        square(FuelWords.capital(fuel.wordDisplaced()) + fuel.counted(), PeriodColumn.GAS_DISPLACED))
                : section;
    }

    private Table square(String caption, PeriodColumn column) {
        return ExposureTables.square(exposure, numbers, column).captioned(caption);
    }

    /** The table, and why each was varied so far. */
    private Section oneAtATime() {
        return Section.of("One thing at a time", Place.PRINTED)
                .words(described())
                .with(
                        Set.of(Place.FIRST_SHEET),
                        new Picture("sensitivity-heat", file -> SensitivityCharts.heat(file, name, study, numbers)))
                .with(SensitivityTables.effects(study, numbers))
                .with(
                        TECHNICAL,
                        new Picture("sensitivity-pool", file -> SensitivityCharts.pool(file, name, study, numbers)))
                .with(
                        TECHNICAL,
                        new Picture(
                                "sensitivity-" + FuelWords.of(study.described()).slug(),
                                file -> SensitivityCharts.gas(file, name, study, numbers)));
    }

    private String described() {
        PeriodSummary season = study.described();
        String text =
                "As planned: " + numbers.show(Measure.HEAT, season.balance().deliveredKwh())
                        + " of heat delivered, "
                        + numbers.show(Measure.TEMPERATURE, season.water().meanC()) + " in the season's mean";
        if (SensitivityTables.displaces(study)) {
            text += ", " + numbers.show(Measure.HEAT, season.gas().replacedKwh()) + " of "
                    + FuelWords.of(season).wordDisplaced();
        }
        return text
                + ". Below, what is added to that when one thing is low or high and all else is as planned; largest"
                + " effect on the heat first. Effects of several at once do not simply add up.";
    }
}
