package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.season.ArraySummary;
import dev.warmlane.season.CollectorHeat;
import dev.warmlane.season.HeatBalance;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.PumpSummary;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the collectors gave, and where the pool's heat came from and went. */
final class HeatSections {

    private final Numbers numbers;

    private HeatSections(Numbers numbers) {
        this.numbers = numbers;
    }

    /** What the collectors gave. */
    static Section collectors(Subject subject) {
        Section section = Section.of("Heat from the collectors", Place.DETAIL);
        SeasonSummary summary = subject.summary();
        if (summary.arrays().isEmpty()) {
            return section.words("There are no collectors.");
        }
        HeatSections text = new HeatSections(subject.numbers());
        List<String> points = new ArrayList<>();
        summary.arrays().forEach(array -> points.add(text.array(array)));
        points.addAll(text.heat(summary.season()));
        points.add(text.pump(summary.season().pump()));
        return section.points(points);
    }

    /** Where the pool's heat came from and went, without its pictures. */
    static Section balance(Subject subject) {
        Numbers numbers = subject.numbers();
        HeatBalance balance = subject.season().balance();
        return Section.of("Where the pool's heat came from and went", Place.DETAIL)
                .with(balanceTable(numbers, subject))
                .words("Positive warms the water. Evaporated: "
                        + numbers.show(Measure.VOLUME, balance.evaporatedKg() / 1000)
                        + " of water; fresh water taken in: " + numbers.show(Measure.VOLUME, balance.makeUpM3()) + ".");
    }

    private static Table balanceTable(Numbers numbers, Subject subject) {
        PeriodSummary season = subject.season();
        List<Flow> kinds =
                new ArrayList<>(subject.forecast().installation().pool().flows());
        kinds.remove(Flow.PIPES);
        if (season.balance().kwh(Flow.CIRCULATION) == 0) {
            kinds.remove(Flow.CIRCULATION);
        }
        return new TableBuilder<Flow>(numbers.units())
                .words("kind", "kind", flow -> label(flow))
                .number("with", "with", Measure.HEAT, flow -> net(season.balance(), flow))
                .number("without", "without", Measure.HEAT, flow -> net(season.balanceWithout(), flow))
                .build(kinds);
    }

    private static String label(Flow flow) {
        return flow == Flow.COLLECTORS ? "collectors, less pipe losses" : flow.label();
    }

    private static double net(HeatBalance balance, Flow flow) {
        return flow == Flow.COLLECTORS ? balance.deliveredKwh() : balance.kwh(flow);
    }

    private String array(ArraySummary array) {
        StringBuilder text =
                new StringBuilder(array.name()).append(": ").append(numbers.show(Measure.AREA, array.areaM2()));
        array.panels().ifPresent(panels -> text.append(" in ").append(panels).append(" panels"));
        array.rows().ifPresent(rows -> text.append(" in ").append(rows).append(rows == 1 ? " row" : " rows"));
        text.append(", flow ").append(numbers.show(Measure.FLOW, array.flowM3h()));
        text.append(", holding ").append(numbers.show(Measure.CONTENT, array.waterL()));
        if (array.filling().dryKgM2() > 0) {
            text.append(" of water; full it weighs ")
                    .append(numbers.show(Measure.WEIGHT, array.filling().wetKgM2()));
        } else {
            text.append(" of water, ")
                    .append(numbers.show(Measure.WEIGHT, array.filling().waterLM2()))
                    .append(" on top of the collector's own weight");
        }
        return text.toString();
    }

    private List<String> heat(PeriodSummary season) {
        CollectorHeat heat = season.collectors();
        List<String> points = new ArrayList<>();
        points.add(Signs.heatTaken(heat)
                        .map(why -> "Taken from the pool, because " + why + ": " + numbers.heat(-heat.deliveredKwh()))
                        .orElse("Delivered to the pool: " + numbers.heat(heat.deliveredKwh()))
                + heat.deliveredKwhPerM2().stream()
                        .map(Math::abs)
                        .mapToObj(perM2 -> ", " + numbers.show(Measure.HEAT_PER_AREA, perM2))
                        .findFirst()
                        .orElse(""));
        points.add("Collector efficiency: " + share(heat.efficiency()) + " of "
                + numbers.show(Measure.HEAT, heat.irradiationKwh()) + " of sun in their plane over the season");
        points.add("Most in one hour: " + numbers.show(Measure.POWER, heat.peakKw())
                + (heat.lowestOutletC().isPresent()
                        ? "; water leaves the collectors at "
                                + numbers.range(
                                        Measure.TEMPERATURE,
                                        heat.lowestOutletC().getAsDouble(),
                                        heat.highestOutletC().orElseThrow())
                        : ""));
        points.add("Not needed, because the pool was at its limit: " + numbers.show(Measure.HEAT, heat.refusedKwh())
                + (numbers.rounded(Measure.HEAT, heat.refusedKwh()) > 0
                        ? " (much of it is the sign of too much area)"
                        : ""));
        if (heat.deliveredKwh() >= 0) {
            points.add("Share of the heat from collectors and heater: " + share(season.solarShareOfHeating())
                    + "; of all that warmed the pool, the sun on the water included: "
                    + share(season.solarShareOfGains()));
        }
        return points;
    }

    private String pump(PumpSummary pump) {
        String running = "Pump: " + numbers.show(Measure.HOURS, pump.hours()) + " of running";
        if (pump.heatPerKwh().isEmpty() || pump.heatPerKwh().getAsDouble() < 0) {
            return running
                    + (pump.electricityKwh() > 0
                            ? ", " + numbers.show(Measure.ELECTRICITY, pump.electricityKwh()) + " of electricity"
                            : ", no electricity counted for it");
        }
        return running + ", " + numbers.show(Measure.ELECTRICITY, pump.electricityKwh()) + " of electricity, "
                + numbers.show(pump.heatPerKwh().getAsDouble(), 0) + " kWh of heat for each kWh";
    }

    private String share(OptionalDouble share) {
        return share.isPresent() ? numbers.show(Measure.SHARE, share.getAsDouble()) : "-";
    }
}
