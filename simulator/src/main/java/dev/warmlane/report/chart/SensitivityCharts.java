package dev.warmlane.report.chart;

import dev.warmlane.report.Measure;
import dev.warmlane.report.SensitivityTables;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.SensitivityStudy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The charts of a sensitivity study: what each parameter adds at either end, the largest effect on top. */
public final class SensitivityCharts {

    static final String LOW = "at the first value";
    static final String HIGH = "at the second value";

    /** The names of all charts that there may be. */
    public static final List<String> NAMES = List.of("sensitivity-heat", "sensitivity-pool", "sensitivity-gas");

    private static final int STEPS = 8;

    private SensitivityCharts() {}

    /**
     * All that there is something to show on.
     *
     * @param name what the installation is called
     * @param study what was varied
     * @param units units of the numbers
     */
    public static List<Chart> of(String name, SensitivityStudy study, ReportSettings.Units units) {
        if (study.effects().isEmpty()) {
            return List.of();
        }
        List<Chart> charts = new ArrayList<>();
        charts.add(new Chart(
                "sensitivity-heat",
                "What one thing at a time adds to the heat delivered",
                name,
                plot(study, units, Measure.HEAT, Sensitivity.Change::deliveredKwh)));
        charts.add(new Chart(
                "sensitivity-pool",
                "What one thing at a time adds to the pool's mean temperature",
                name,
                plot(study, units, Measure.TEMPERATURE_DIFFERENCE, Sensitivity.Change::meanK)));
        if (SensitivityTables.displaces(study)) {
            charts.add(new Chart(
                    "sensitivity-gas",
                    "What one thing at a time adds to the gas displaced",
                    name,
                    plot(study, units, Measure.HEAT, Sensitivity.Change::replacedKwh)));
        }
        return charts;
    }

    private static RowPlot plot(
            SensitivityStudy study,
            ReportSettings.Units units,
            Measure measure,
            ToDoubleFunction<Sensitivity.Change> number) {
        List<Sensitivity> sorted = study.effects().stream()
                .sorted(Comparator.comparingDouble((Sensitivity s) -> Math.max(
                                Math.abs(number.applyAsDouble(s.low().change())),
                                Math.abs(number.applyAsDouble(s.high().change()))))
                        .reversed())
                .toList();
        double[] low =
                shown(sorted, units, measure, s -> number.applyAsDouble(s.low().change()));
        double[] high =
                shown(sorted, units, measure, s -> number.applyAsDouble(s.high().change()));
        RowPlot plot = new RowPlot(
                sorted.stream().map(s -> SensitivityTables.varied(s, units)).toList(),
                measure.unit(units) + " more (right) or less (left) than as described",
                Scale.withZero(STEPS, low, high));
        plot.bars(LOW, low, Palette.YELLOW);
        plot.bars(HIGH, high, Palette.BLUE);
        return plot;
    }

    private static double[] shown(
            List<Sensitivity> effects,
            ReportSettings.Units units,
            Measure measure,
            ToDoubleFunction<Sensitivity> number) {
        return effects.stream()
                .mapToDouble(s -> measure.in(units, number.applyAsDouble(s)))
                .toArray();
    }
}
