package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.chart.FlowChart;
import dev.warmlane.season.Prices;
import dev.warmlane.study.FlowStudy;
import dev.warmlane.study.FlowStudy.Choice;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** More and less flow through the collectors, and which of them gains most. */
final class FlowSection {

    private final Optional<FlowStudy> study;
    private final Numbers numbers;

    FlowSection(Optional<FlowStudy> study, Numbers numbers) {
        this.study = study;
        this.numbers = numbers;
    }

    /** The section; nothing in it where the circuit is not described. */
    Section section() {
        Section section = Section.of("How fast the water should run", Place.DETAIL);
        return study.map(found -> section.points(points(found))
                        .with(table(found))
                        .with(
                                Set.of(Place.TECHNICAL),
                                new Picture("flow-gain", name -> FlowChart.of(name, found, numbers))))
                .orElse(section);
    }

    /** Its table for csv files. */
    List<Report.Data> data() {
        return study.map(found -> List.of(new Report.Data("flows", () -> table(found))))
                .orElse(List.of());
    }

    private List<String> points(FlowStudy found) {
        List<String> points = new ArrayList<>();
        found.best().ifPresent(best -> {
            String currency = found.prices().map(Prices::currency).orElse("");
            double gain = best.netGain(found.prices().orElseThrow());
            points.add("The flow of the highest net gain is " + numbers.show(Measure.FLOW_PER_AREA, best.flowKgSM2())
                    + " of collector, "
                    + numbers.show(Measure.FLOW, best.circuit().flowM3h()) + " in all, with "
                    + numbers.aboutMoney(gain, currency) + " in the season"
                    + (found.bestIsAtAnEnd()
                            ? "; it is the last of the flows tried, and better ones may lie beyond"
                            : "")
                    + ". From "
                    + numbers.show(
                            Measure.FLOW_PER_AREA, found.asGoodFromKgSM2().orElseThrow()) + " to "
                    + numbers.show(
                            Measure.FLOW_PER_AREA, found.asGoodUpToKgSM2().orElseThrow())
                    + " it is no more than a hundredth lower");
        });
        points.add("Each flow is simulated with a pump of the same efficiency that gives just the head it takes, in the"
                + " pipes described. Net gain is what is saved of the heater's energy less the pump's electricity, at the prices"
                + " given; pipes and pump are not counted"
                + (found.prices().isPresent() ? "" : ". No prices are given, so that no flow is said to be the best"));
        points.add(
                "Slow water leaves the collectors warmer and is less evenly divided; start and stop of the pump follow the"
                        + " control, whose stop difference suits one flow better than another");
        return points;
    }

    private Table table(FlowStudy found) {
        TableBuilder<Choice> table = new TableBuilder<Choice>(numbers.units())
                .number("flow per\narea", "flow_per_area", Measure.FLOW_PER_AREA, Choice::flowKgSM2)
                .number("flow", "flow", Measure.FLOW, one -> one.circuit().flowM3h())
                .number("head", "head", Measure.LENGTH, one -> one.circuit().headM())
                .number("pump", "pump", Measure.PUMP_POWER, one -> one.circuit().powerW())
                .number("heat", "heat", Measure.HEAT, one -> one.season()
                        .balance()
                        .deliveredKwh())
                .number("electri-\ncity", "electricity", Measure.ELECTRICITY, one -> one.season()
                        .pump()
                        .electricityKwh());
        found.prices()
                .ifPresent(prices -> table.optional(
                        "net\ngain", "net_gain", Measure.MONEY, one -> OptionalDouble.of(one.netGain(prices))));
        return table.words("", "remark", one -> remark(one, found.best())).build(found.choices());
    }

    private static String remark(Choice one, Optional<Choice> best) {
        boolean described = one.overDescribed() == 1;
        boolean most =
                best.map(known -> known.overDescribed() == one.overDescribed()).orElse(false);
        return described ? most ? "as planned, gains most" : "as planned" : most ? "gains most" : "";
    }
}
