package dev.warmlane.report;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.FlowSplit;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Water;
import dev.warmlane.pool.Flow;
import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.chart.PumpChart;
import dev.warmlane.season.Installation;
import dev.warmlane.study.WaterCircuit;
import dev.warmlane.study.WaterCircuit.BankFlow;
import dev.warmlane.study.WaterCircuit.Part;
import dev.warmlane.study.WaterCircuit.PartHead;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The water through the collectors: where its pressure goes, how it divides, what its pump draws and its pipes lose. */
final class WaterSection {

    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    /** Faster water is said to wear pipes and to be heard: UFC 3-440-01 for copper (read); for plastic common practice. */
    private static final double FAST_MS = 1.5;

    /** Below this share of the mean a panel is told; own choice. */
    private static final double LITTLE = 0.7;

    /** Water at which the loss of the plates is taken, °C. */
    private static final double WATER_C = 25;

    /** What the water in the pipes cools by in the example of a night, K. */
    private static final double NIGHT_K = 10;

    private final Subject subject;
    private final Numbers numbers;
    private final Optional<WaterCircuit> circuit;

    WaterSection(Subject subject) {
        this.subject = subject;
        this.numbers = subject.numbers();
        this.circuit = WaterCircuit.of(subject.installation());
    }

    /** The section; nothing in it where the circuit is not described. */
    Section section() {
        Section section = Section.of("Water through the collectors", Place.DETAIL);
        return circuit.map(water -> section.points(points(water))
                        .with(parts(water).captioned("Where the head goes, means over all of the water"))
                        .with(
                                TECHNICAL,
                                new Picture(
                                        "pump",
                                        name -> Optional.of(PumpChart.of(
                                                name, water, subject.settings().title(), numbers))))
                        .with(banks(water).captioned("How the flow divides, for each area over the mean")))
                .orElse(section);
    }

    /** Its tables for csv files. */
    List<Report.Data> data() {
        return circuit.map(water -> List.of(
                        new Report.Data("water_head", () -> parts(water)),
                        new Report.Data("water_banks", () -> banks(water))))
                .orElse(List.of());
    }

    private List<String> points(WaterCircuit water) {
        List<String> points = new ArrayList<>();
        points.add("Flow " + numbers.show(Measure.FLOW, water.flowM3h()) + " against a head of " + head(water.headM())
                + "; water of " + numbers.show(Measure.TEMPERATURE, WATER_C));
        points.add(pump(water));
        points.add("In the pipe it runs at " + numbers.show(Measure.WATER_SPEED, water.pipeMs()) + speed(water.pipeMs())
                + fastHeaders(water));
        points.add(division(water));
        points.add(top(water));
        points.add(loss(water));
        return points;
    }

    private String head(double metres) {
        return numbers.show(Measure.LENGTH, metres) + " of water ("
                + numbers.show(Measure.PRESSURE, metres * Hydraulics.WATER.densityKgM3() * Constants.GRAVITY / 1000)
                + ")";
    }

    private String pump(WaterCircuit water) {
        double efficiency = water.hydraulics().pump().efficiency();
        double throttled = water.pumpHeadM() - water.headM();
        String takes = "The pump takes " + numbers.show(Measure.PUMP_POWER, water.powerW()) + ", "
                + numbers.show(Measure.ELECTRICITY, subject.season().pump().electricityKwh())
                + " in the season, at an efficiency of " + numbers.show(Measure.SHARE, efficiency)
                + " from electricity to water";
        if (water.hydraulics().pump().curve().isEmpty()) {
            return takes + "; it is taken to give just this head";
        }
        return takes
                + (numbers.rounded(Measure.LENGTH, throttled) > 0
                        ? "; by its curve it gives " + head(water.pumpHeadM()) + ", of which a valve throttles "
                                + numbers.show(Measure.LENGTH, throttled)
                        : "; its curve meets the circuit here");
    }

    private String speed(double ms) {
        return ms > FAST_MS
                ? ", MORE THAN THE " + numbers.show(Measure.WATER_SPEED, FAST_MS)
                        + " above which water wears pipes and is heard (common practice): a wider pipe takes less power too"
                : "";
    }

    private String fastHeaders(WaterCircuit water) {
        double fastest =
                water.banks().stream().mapToDouble(BankFlow::headerMs).max().orElse(0);
        return "; in the headers at up to " + numbers.show(Measure.WATER_SPEED, fastest)
                + (fastest > FAST_MS ? ", MORE THAN THAT: fewer panels in a bank, or wider headers" : "");
    }

    private String division(WaterCircuit water) {
        Installation built = subject.installation();
        double least = built.arrays().stream()
                .mapToDouble(array -> array.split().least())
                .min()
                .orElse(1);
        double greatest = built.arrays().stream()
                .mapToDouble(array -> array.split().greatest())
                .max()
                .orElse(1);
        return "Panels get " + numbers.show(Measure.SHARE, least) + " to " + numbers.show(Measure.SHARE, greatest)
                + " of the mean flow for each area; against an even flow that costs "
                + numbers.show(100 * costs(), 1) + " % of the collectors' heat, which is taken off"
                + (least < LITTLE ? ". More even: " + moreEven(water) : "");
    }

    private static String moreEven(WaterCircuit water) {
        boolean diagonal = water.hydraulics().panel().outlet() == Manifold.Outlet.FAR_END;
        return "fewer panels in a bank, wider headers, throttled tube ends, "
                + (diagonal ? "a bank's return at the end of its supply" : "a bank's return across from its supply")
                + (water.hydraulics().banks() == Manifold.Outlet.SAME_END ? ", or a reversed return of the banks" : "");
    }

    /** Share of the heat that an uneven flow costs, over the year's hours in which the collectors would give any. */
    private double costs() {
        double even = 0;
        double divided = 0;
        List<CollectorArray> arrays = subject.installation().arrays();
        for (int a = 0; a < arrays.size(); a++) {
            CollectorArray array = arrays.get(a);
            FlowSplit split = array.split();
            HeatCurves curves = subject.forecast().forcing().collectors().get(a).curves();
            double carries = array.flowKgSM2() * Water.specificHeatJKgK(WATER_C);
            for (int hour = 0; hour < subject.forecast().weather().hours(); hour++) {
                double heat = array.areaM2() * curves.heatWm2(hour, WATER_C);
                double removed = -curves.slopeWm2K(hour, WATER_C) / carries;
                if (heat > 0 && removed < 1) {
                    divided += heat;
                    even += heat / split.heatShare(-Math.log1p(-removed));
                }
            }
        }
        return even > 0 ? 1 - divided / even : 0;
    }

    private String top(WaterCircuit water) {
        Hydraulics.Lift lift = water.hydraulics().lift();
        if (!lift.returnsFull()) {
            return "All of the lift of " + numbers.show(Measure.LENGTH, lift.heightM())
                    + " is pumped as long as the pump runs, because the return is open. A return that runs full down to below"
                    + " the pool's water would give it back";
        }
        double kpa = water.topKpa();
        String fills = "The pump must fill the pipes up to " + numbers.show(Measure.LENGTH, lift.heightM())
                + " at every start; after that the full return gives the lift back";
        return kpa >= 0
                ? fills
                : fills + ". At the highest point it pulls with " + numbers.show(Measure.PRESSURE, -kpa)
                        + ": a valve there that lets air in on vacuum would open, the lift would have to be pumped, and"
                        + " panels that cannot stand it could be sucked flat. Where such a valve belongs, licensed practice"
                        + " and the maker's instructions decide";
    }

    private String loss(WaterCircuit water) {
        double lengthM = water.hydraulics().pipe().lengthM() + water.pipesOnRoofM();
        double content = water.contentM3();
        double nightKwh =
                Units.kwh(content * Hydraulics.WATER.densityKgM3() * Water.specificHeatJKgK(WATER_C) * NIGHT_K);
        return numbers.show(Measure.LENGTH, lengthM) + " of pipe "
                + (subject.installation().pipes().heatLossWK() > 0
                        ? "lose "
                                + numbers.show(
                                        Measure.CONDUCTANCE,
                                        subject.installation().pipes().heatLossWK())
                                + " while water runs, "
                                + numbers.show(
                                        Measure.HEAT,
                                        -subject.season().balance().kwh(Flow.PIPES))
                                + " in the season"
                        : "are counted without any loss of heat")
                + ". Pipes, headers and tubes hold " + numbers.show(Measure.CONTENT, 1000 * content)
                + "; each night in which that stands and cools by "
                + numbers.degrees(NIGHT_K) + " costs "
                + numbers.show(Measure.HEAT, nightKwh) + ", which is not taken off";
    }

    private Table parts(WaterCircuit water) {
        double whole = water.headM();
        return new TableBuilder<PartHead>(subject.units())
                .words("part", "part", one -> word(one.part()))
                .number("head", "head", Measure.LENGTH, PartHead::headM)
                .number(
                        "pressure",
                        "pressure",
                        Measure.PRESSURE,
                        one -> one.headM() * Hydraulics.WATER.densityKgM3() * Constants.GRAVITY / 1000)
                .number("share", "share", Measure.SHARE, one -> whole > 0 ? one.headM() / whole : 0)
                .build(water.parts());
    }

    private static String word(Part part) {
        return switch (part) {
            case LIFT -> "lift that is pumped";
            case RUN -> "pipe between pool and collectors";
            case ROOF_PIPES -> "pipes beside the banks";
            case HEADERS -> "headers and connections of banks";
            case TUBES -> "tubes of the panels";
        };
    }

    private Table banks(WaterCircuit water) {
        List<BankFlow> banks = water.banks();
        TableBuilder<BankFlow> table = new TableBuilder<BankFlow>(subject.units());
        if (subject.installation().arrays().size() > 1) {
            table.words("collectors", "collectors", BankFlow::array);
        }
        if (subject.installation().plan().isPresent()) {
            table.words("surface", "surface", BankFlow::surface);
        }
        return table.count("bank", "bank", BankFlow::number)
                .count("row", "row", BankFlow::row)
                .count("panels", "panels", BankFlow::panels)
                .number("flow", "flow", Measure.FLOW, BankFlow::flowM3h)
                .number("over\nmean", "over_mean", Measure.SHARE, BankFlow::overMean)
                .number("least\npanel", "least_panel", Measure.SHARE, BankFlow::leastPanel)
                .number("speed in\nheader", "header_speed", Measure.WATER_SPEED, BankFlow::headerMs)
                .build(banks);
    }
}
