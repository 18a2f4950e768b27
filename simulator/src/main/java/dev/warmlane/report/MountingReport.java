package dev.warmlane.report;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.LeadMapChart;
import dev.warmlane.report.chart.MountingCharts;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Roof;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.wind.RoofRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The report of mountings side by side. A section is a method here and a line in {@link #sections}. */
public final class MountingReport {

    private static final String NAME = "mountings";
    private static final Set<Place> FIRST = Set.of(Place.FIRST_SHEET);
    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private final MountingStudy study;
    private final Optional<TurningPoints> turning;
    private final Optional<BreakEvenMap> map;
    private final Optional<LeadMap> roofMap;
    private final UnitSystem units;
    private final Numbers numbers;
    private final CommonSections common;
    private final RoofSection roof;

    private MountingReport(
            MountingStudy study,
            Optional<TurningPoints> turning,
            Optional<BreakEvenMap> map,
            Optional<LeadMap> roofMap,
            Subject described) {
        this.study = study;
        this.turning = turning;
        this.map = map;
        this.roofMap = roofMap;
        this.units = described.units();
        this.numbers = described.numbers();
        this.common = new CommonSections(described);
        this.roof = RoofSection.of(NAME, study, numbers);
    }

    /** The report of a study of an installation that comes from no scenario file. */
    public static Report of(MountingStudy study, UnitSystem units) {
        return of(
                study,
                Optional.empty(),
                Subject.of(
                        SeasonForecast.of(study.template(), study.weather()),
                        new ReportSettings(study.template().name(), units)));
    }

    /**
     * The report of a study.
     *
     * @param study the study
     * @param turning where the ranking turns; nothing where that was not looked for
     * @param described what the study started from, with all that was assumed
     */
    public static Report of(MountingStudy study, Optional<TurningPoints> turning, Subject described) {
        return of(study, turning, Optional.empty(), Optional.empty(), described);
    }

    /**
     * The report of a study.
     *
     * @param study the study
     * @param turning where the ranking turns; nothing where that was not looked for
     * @param map how near that is over wind and water; nothing where that was not looked for
     * @param roofMap how near it is over albedo and inner wind; nothing where that was not looked for
     * @param described what the study started from, with all that was assumed
     */
    public static Report of(
            MountingStudy study,
            Optional<TurningPoints> turning,
            Optional<BreakEvenMap> map,
            Optional<LeadMap> roofMap,
            Subject described) {
        MountingReport report = new MountingReport(study, turning, map, roofMap, described);
        return new Report(
                NAME,
                study.template().name() + ": mountings",
                report.common.place(),
                described.settings().letterhead(),
                described.settings().notation(),
                report.sections(new MountingBands(described.bands()), MountingShade.of(study, described)),
                report.data());
    }

    private List<Data> data() {
        List<Data> data = new ArrayList<>(List.of(
                new Data(NAME, () -> MountingCsv.seasons(study, units)),
                new Data("mountings_months", () -> MountingCsv.months(study, units))));
        map.ifPresent(found -> {
            data.add(new Data("mountings_even", () -> LeadMapCsv.windAndWater(found, units)));
            data.add(new Data("mountings_days", () -> LeadMapCsv.days(found, units)));
        });
        roofMap.ifPresent(found -> data.add(new Data("mountings_roof", () -> LeadMapCsv.roof(found, units))));
        data.addAll(roof.data());
        return data;
    }

    private List<Section> sections(MountingBands bands, Section shade) {
        return CommonSections.list(
                List.of(
                        new MountingAnswer(study, bands, numbers).section(),
                        common.lookAt(),
                        job(),
                        sameArea(),
                        sameRoof()),
                List.of(new MountingMoney(study, bands, numbers).section()),
                MountingWhy.of(numbers, study, turning.map(TurningPoints::flat)),
                List.of(shade, held(), turning(), nearness(), nearnessOfRoof(), months(), roof.section()),
                common.last(Stream.concat(study.sameArea().stream(), study.sameRoof().stream())
                        .map(MountingResult::season)
                        .toList()));
    }

    /** What they stand on, and what is compared. */
    private Section job() {
        Installation built = study.template();
        Roof roof = built.roof();
        return Section.of("The job", Place.PRINTED)
                .words(
                        "Roof: " + size(built) + ", albedo " + numbers.show(roof.albedo(), 2),
                        "Wind: over the flat array it has run "
                                + length(RoofRun.effectiveRunM(roof.lengthM(), roof.widthM()))
                                + " of roof on average, over a rack its slope length",
                        "Collectors: " + numbers.show(Measure.AREA, built.collectorAreaM2()) + " of the kind of “"
                                + built.arrays().get(0).name() + "”" + insteadOf(built.arrays()),
                        "Season: " + numbers.show(built.season().first()) + " to "
                                + numbers.show(built.season().last()),
                        common.weatherLine())
                .points(study.compared().stream()
                        .map(one -> one.option().name() + ": " + MountingWords.of(numbers, study, one))
                        .toList());
    }

    private static String insteadOf(List<CollectorArray> arrays) {
        return arrays.size() == 1
                ? ""
                : ", the first described. Each mounting is compared alone, in place of all " + arrays.size()
                        + " collectors described: with their area together, and with the roof to itself";
    }

    private String size(Installation built) {
        Roof roof = built.roof();
        String high = ", " + length(roof.heightM()) + " high";
        return built.plan()
                .map(plan -> "as drawn, "
                        + numbers.show(
                                Measure.AREA,
                                plan.surfaces().stream()
                                        .mapToDouble(
                                                surface -> surface.outline().areaM2())
                                        .sum())
                        + high)
                .orElseGet(() -> length(roof.lengthM()) + " by " + length(roof.widthM()) + high + ", "
                        + numbers.show(Measure.AREA, roof.usableAreaM2()) + " usable");
    }

    private Section sameArea() {
        List<String> tooLarge = study.sameArea().stream()
                .filter(r -> !r.fit().fits())
                .map(r -> "“" + r.option().name() + "”")
                .toList();
        return Section.of("Same collector area", Place.ANSWER)
                .with(FIRST, new Picture("mounting-heat", name -> MountingCharts.heat(name, study, units)))
                .with(Place.ANSWER, MountingTables.comparison(study.sameArea(), units))
                .words(
                        tooLarge.isEmpty()
                                ? ""
                                : "No room on this roof for all of it: " + String.join(", ", tooLarge)
                                        + ". The comparison shows what the same area would give.")
                .with(
                        TECHNICAL,
                        new Picture("mounting-heat-per-area", name -> MountingCharts.perArea(name, study, units)));
    }

    private Section sameRoof() {
        return Section.of("The most that fits the same roof", Place.ANSWER)
                .with(MountingTables.comparison(study.sameRoof(), units))
                .words(study.compared().stream()
                        .filter(one -> one.sameRoof().isEmpty())
                        .map(one -> "Nothing of “" + one.option().name() + "” fits.")
                        .collect(Collectors.joining(" ")))
                .givingWay();
    }

    private Section held() {
        return Section.of("What the pool's temperature does", Place.PRINTED)
                .words(
                        "Heat of a unit of area over the season's pumping hours if the water were held at one temperature"
                                + " all season, same collector area, without any limit:")
                .with(MountingTables.heldPool(study.sameArea(), units))
                .with(TECHNICAL, new Picture("mounting-held-pool", name -> MountingCharts.held(name, study, numbers)));
    }

    private Section turning() {
        Section section = Section.of("Where the ranking turns", Place.PRINTED);
        return turning.map(found -> section.words(TurningWords.opening(found)).points(TurningWords.of(numbers, found)))
                .orElse(section);
    }

    private Section nearness() {
        Section section = Section.of("How near the turning is", Place.PRINTED);
        return map.map(found -> section.words(new BreakEvenWords(numbers, found).conclusion())
                        .with(
                                TECHNICAL,
                                new Picture(
                                        "mounting-even",
                                        name -> Optional.of(LeadMapChart.windAndWater(
                                                name, found, study.template().name(), numbers))))
                        .with(Place.DETAIL, new Block.Words(BreakEvenWords.compared())))
                .orElse(section);
    }

    private Section nearnessOfRoof() {
        Section section = Section.of("How near roof and shelter are to it", Place.PRINTED);
        return roofMap.map(found -> section.words(new RoofMapWords(numbers, found).conclusion())
                        .with(
                                TECHNICAL,
                                new Picture(
                                        "mounting-roof",
                                        name -> Optional.of(LeadMapChart.roof(
                                                name, found, study.template().name(), numbers))))
                        .with(Place.DETAIL, new Block.Words(RoofMapWords.compared())))
                .orElse(section);
    }

    /** The tables are too wide for a page, which has a chart instead. */
    private Section months() {
        Section section = Section.of("Month by month, same collector area", Place.DETAIL);
        for (MountingResult result : study.sameArea()) {
            if (result.light().isPresent()) {
                section = section.with(
                        Set.of(Place.FULL),
                        MountingTables.months(result, numbers)
                                .captioned(result.option().name()));
            }
        }
        return section.words("All numbers by month are in mountings_months.csv.")
                .with(TECHNICAL, new Picture("mounting-months", name -> MountingCharts.months(name, study, numbers)));
    }

    private String length(double metres) {
        return numbers.show(Measure.LENGTH, metres);
    }
}
