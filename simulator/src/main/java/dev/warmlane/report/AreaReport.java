package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.AreaCharts;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.study.ArrayLayout;
import dev.warmlane.study.FlowStudy;
import dev.warmlane.study.MoreArea;
import dev.warmlane.study.SeasonBands;
import dev.warmlane.study.ShadeStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The report of an area study. A section is a method here and a line in {@link #sections}. */
public final class AreaReport {

    private static final String NAME = "areas";
    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private final AreaStudy study;
    private final UnitSystem units;
    private final Numbers numbers;
    private final CommonSections common;
    private final AreaAnswer answer;
    private final Optional<AreaWorth> worth;
    private final RoofSection roof;
    private final FlowSection flows;
    private final MoreArea more;
    private final Section shade;

    private AreaReport(AreaStudy study, Subject described) {
        this.study = study;
        this.units = described.units();
        this.numbers = described.numbers();
        this.common = new CommonSections(described);
        SeasonBands bands = described.bands();
        this.worth = AreaWorth.of(study, bands);
        this.more = MoreArea.of(study, bands);
        this.answer = new AreaAnswer(study, worth, more, described);
        this.roof = RoofSection.of(NAME, study.installation(), numbers);
        this.shade = shade(described);
        this.flows = new FlowSection(FlowStudy.of(described.forecast(), bands.forcing(), bands.runs()), numbers);
    }

    /**
     * The report of a study; simulates its areas with each doubtful input at its ends on the way.
     *
     * @param study the study
     * @param described what it started from
     */
    public static Report of(AreaStudy study, Subject described) {
        AreaReport report = new AreaReport(study, described);
        return new Report(
                NAME,
                study.installation().name() + ": collector area",
                report.common.place(),
                described.settings().letterhead(),
                described.settings().notation(),
                report.sections(),
                report.data());
    }

    private List<Data> data() {
        List<Data> data = new ArrayList<>(List.of(new Data(NAME, () -> AreaTables.all(study, worth, more, units))));
        data.addAll(flows.data());
        data.addAll(roof.data());
        return data;
    }

    private List<Section> sections() {
        return CommonSections.list(
                List.of(
                        answer.section(),
                        common.lookAt(),
                        common.job(),
                        areas(),
                        worth(),
                        reading(),
                        shade,
                        flows.section(),
                        roof.section()),
                common.last(study.designs().stream().map(AreaDesign::season).toList()));
    }

    private Section areas() {
        return Section.of("Collector area", Place.ANSWER)
                .words(without())
                .givingWay()
                .with(
                        Set.of(Place.FIRST_SHEET),
                        new Picture("area-heat", name -> AreaCharts.heat(name, study, numbers)))
                .with(AreaTables.areas(study, more, numbers));
    }

    private Section worth() {
        return worth.map(known -> new AreaMoney(known, numbers).section())
                .orElseGet(() -> Section.of("What the areas are worth", Place.PRINTED));
    }

    /** Of the area as planned; how it is with the others is said beside it. */
    private static Section shade(Subject described) {
        Section section = Section.of("What shade costs", Place.PRINTED);
        String others = described.installation().plan().isPresent()
                ? " Every other area is laid out by itself on the roof and has the shade of its own layout."
                : "";
        return ShadeStudy.of(described.forecast())
                .map(study -> section.words("The area as planned: " + ShadeSection.sentence(described, study) + others))
                .orElse(section);
    }

    private Section reading() {
        return Section.of("How to read it", Place.PRINTED)
                .points(notes())
                .with(TECHNICAL, new Picture("area-worth", name -> AreaCharts.worth(name, study, numbers)))
                .with(
                        TECHNICAL,
                        new Picture(
                                "area-comfort",
                                name -> held() ? Optional.empty() : AreaCharts.comfort(name, study, numbers)));
    }

    private boolean held() {
        return Telling.heldByHeater(study.installation(), study.designs().get(0).season());
    }

    private String ofThePool(double areaM2) {
        return numbers.show(100 * areaM2 / study.installation().pool().areaM2(), 0) + " %";
    }

    private String without() {
        PeriodSummary season = study.designs().get(0).season();
        List<AreaDesign> designs = study.designs();
        boolean held = held();
        String text = "From " + ofThePool(designs.get(0).areaM2()) + " to "
                + ofThePool(designs.get(designs.size() - 1).areaM2())
                + " of the pool's area. Without collectors the season's mean is "
                + numbers.show(Measure.TEMPERATURE, season.waterWithout().meanC())
                + (held
                        ? ""
                        : ", with " + season.comfortWithout().daysAtComfort() + " of "
                                + season.comfortWithout().openDays() + " days at "
                                + numbers.show(
                                        Measure.TEMPERATURE,
                                        study.installation().comfortC())
                                + " or above");
        return season.gas()
                .match(
                        gas -> text + "; the heater " + FuelWords.of(season).uses() + " "
                                + numbers.show(Measure.HEAT, gas.burnedWithoutKwh()) + " of "
                                + FuelWords.of(season).word() + ".",
                        none -> text + ".");
    }

    private List<String> notes() {
        Installation built = study.installation();
        List<AreaDesign> designs = study.designs();
        List<String> notes = new ArrayList<>();
        notes.add("Roof: " + roof());
        notes.add("Per area is the heat delivered over all of the area; heat of one more "
                + Measure.AREA.unit(units) + " is what each further "
                + Measure.AREA.unit(numbers.units())
                + " adds, up to the next larger row. Where that is far below what the area gives by itself, more area is mostly"
                + " idle.");
        notes.add("The share not needed is heat that could have been collected, but the pool was at its limit of "
                + numbers.show(Measure.TEMPERATURE, built.control().limitC())
                + ". A share that climbs steeply from row to row is the sign of too much area; one that is high in"
                + " the first row says that there are long spells in which this pool needs no heat at all.");
        if (AreaTables.displaces(designs)) {
            FuelWords fuel = FuelWords.of(designs.get(0).season());
            notes.add(FuelWords.capital(fuel.wordDisplaced())
                    + (fuel.counted().isEmpty() ? "" : ", as higher heating value,")
                    + " is what the same pool " + fuel.uses() + " without collectors less what it " + fuel.uses()
                    + " with them. It grows more slowly than the heat, because heat above the heater's set"
                    + " point warms the pool and displaces nothing.");
        }
        notes.add("All collectors grow and shrink together"
                + (designs.get(0).panels().isPresent() ? ", in whole panels" : "")
                + (hasRacks() ? "; racks keep their number of rows, which get longer or shorter" : "")
                + ". The flow grows with the area; " + pump()
                + (built.hydraulics().isPresent() ? "." : ". The pipes' heat loss stays as planned."));
        return notes;
    }

    private String pump() {
        Installation built = study.installation();
        double powerW = built.pipes().pumpPowerW();
        if (built.hydraulics().isPresent()) {
            return "the pump's power and the pipes' loss are computed anew for each area, its layout and its flow, in pipes of"
                    + " the same width; how the flow divides stays as planned";
        }
        return powerW == 0
                ? "no power of a pump is given, and none is counted for any area"
                : "the pump's " + numbers.show(powerW, 0) + " W are taken as those of the "
                        + numbers.show(Measure.AREA, built.collectorAreaM2())
                        + " planned, and every other area has them in proportion to its flow, through pipes chosen for it";
    }

    private boolean hasRacks() {
        return study.installation().arrays().stream()
                .anyMatch(array -> array.mounting().racks().isPresent());
    }

    private String roof() {
        OptionalDouble limit = study.roofLimitM2();
        if (limit.isEmpty()) {
            return "the collectors lie on a pitched roof, whose size is not given, so no limit is drawn.";
        }
        double most = limit.getAsDouble();
        if (study.installation().plan().isPresent()) {
            return "as drawn it holds at most " + numbers.show(Measure.AREA, most)
                    + " of collectors, in whole panels between its edges and obstacles"
                    + (ArrayLayout.share(study.installation())
                            ? ", all of them growing together; collectors share a surface, and those that are described later"
                                    + " have what the others leave."
                            : ".");
        }
        return numbers.show(Measure.AREA, study.installation().roof().usableAreaM2()) + " of "
                + numbers.show(Measure.AREA, study.installation().roof().areaM2())
                + " are usable; laid out like this it holds at most " + numbers.show(Measure.AREA, most)
                + " of collectors" + panels(most)
                + ". Areas alone are compared: the layout decides whether rows and ways fit.";
    }

    /** Whole panels that fit, where there is one array and it is made of panels. */
    private String panels(double most) {
        if (study.installation().arrays().size() != 1) {
            return "";
        }
        double panel = study.installation().arrays().get(0).panelAreaM2();
        return panel > 0 ? " (" + numbers.show(Math.floor(most / panel + 1e-9), 0) + " panels)" : "";
    }
}
