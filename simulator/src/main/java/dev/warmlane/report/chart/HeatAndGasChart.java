package dev.warmlane.report.chart;

import dev.warmlane.report.FuelWords;
import dev.warmlane.report.Subject;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Measure;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Heat that the collectors delivered, gas displaced and gas burned, month by month. */
final class HeatAndGasChart {

    static final String DELIVERED = "heat from the collectors";
    static final String WITHOUT = " without collectors";
    private static final String WITH = " with collectors";

    private static final int STEPS = 6;

    private HeatAndGasChart() {}

    /** Nothing for a pool with neither collectors nor a heater. */
    static Optional<Chart> of(String name, Subject subject) {
        boolean collectors = !subject.installation().arrays().isEmpty();
        boolean heater = subject.installation().heater().isPresent();
        if (!collectors && !heater) {
            return Optional.empty();
        }
        List<PeriodSummary> months = subject.forecast().months();
        FuelWords fuel = new FuelWords(months.get(0).gas().fuel());
        List<Bars> all = new ArrayList<>();
        if (collectors && heater) {
            all.add(bars(
                    subject,
                    months,
                    fuel.wordUsed() + WITHOUT,
                    Palette.PALE,
                    m -> burned(m) + m.gas().replacedKwh()));
        }
        if (heater) {
            all.add(bars(
                    subject,
                    months,
                    fuel.wordUsed() + (collectors ? WITH : ""),
                    Palette.VERMILLION,
                    HeatAndGasChart::burned));
        }
        if (collectors) {
            all.add(bars(
                    subject, months, DELIVERED, Palette.GREEN, m -> m.balance().deliveredKwh()));
        }
        double lowest = all.stream()
                .flatMapToDouble(b -> Arrays.stream(b.heights))
                .min()
                .orElse(0);
        double highest = all.stream()
                .flatMapToDouble(b -> Arrays.stream(b.heights))
                .max()
                .orElse(0);
        BarPlot plot = BarPlot.sideBySide(
                months.stream()
                        .map(month -> subject.numbers().label(month.period()))
                        .toList(),
                Measure.HEAT.unit(subject.units()) + " in the month",
                Scale.holding(Math.min(0, lowest), Math.max(0, highest), STEPS));
        all.forEach(bars -> plot.bars(bars.label, bars.heights, bars.colour));
        return Optional.of(new Chart(
                name,
                !heater
                        ? "How much heat do the collectors give in each month?"
                        : collectors
                                ? "How much " + fuel.word() + " is used in each month, before and after?"
                                : "How much " + fuel.word() + " is used in each month?",
                subject.settings().title(),
                plot));
    }

    private static double burned(PeriodSummary month) {
        return month.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0);
    }

    private static Bars bars(
            Subject subject,
            List<PeriodSummary> months,
            String label,
            Color colour,
            ToDoubleFunction<PeriodSummary> kwh) {
        return new Bars(
                label,
                colour,
                months.stream()
                        .mapToDouble(month -> Measure.HEAT.in(subject.units(), kwh.applyAsDouble(month)))
                        .toArray());
    }

    @SuppressWarnings("ArrayRecordComponent") // on its way into a chart, never compared
    private record Bars(String label, Color colour, double[] heights) {}
}
