package dev.warmlane.report.chart;

import dev.warmlane.report.FuelWords;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.SensitivityTables;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.units.Measure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The charts of a sensitivity study: what each parameter adds at either end, the largest effect on top. */
public final class SensitivityCharts {

    static final String LOW = "at the low value";
    static final String HIGH = "at the high value";

    private static final int STEPS = 8;

    /** What moves it less is left to the table: more rows would have to be drawn too small to read. */
    static final int MOST = 12;

    private SensitivityCharts() {}

    /**
     * The heat delivered; like the others nothing where nothing was varied.
     *
     * @param file the name of its files
     * @param name what the installation is called
     * @param study what was varied
     * @param numbers how they are shown
     */
    public static Optional<Chart> heat(String file, String name, SensitivityStudy study, Numbers numbers) {
        return of(file, name, "heat delivered", study, numbers, Measure.HEAT, Sensitivity.Change::deliveredKwh);
    }

    /** The pool's mean temperature. */
    public static Optional<Chart> pool(String file, String name, SensitivityStudy study, Numbers numbers) {
        return of(
                file,
                name,
                "pool's mean temperature",
                study,
                numbers,
                Measure.TEMPERATURE_DIFFERENCE,
                Sensitivity.Change::meanK);
    }

    /** The gas displaced; nothing where there is no heater either. */
    public static Optional<Chart> gas(String file, String name, SensitivityStudy study, Numbers numbers) {
        return SensitivityTables.displaces(study)
                ? of(
                        file,
                        name,
                        FuelWords.of(study.described()).wordDisplaced(),
                        study,
                        numbers,
                        Measure.HEAT,
                        Sensitivity.Change::replacedKwh)
                : Optional.empty();
    }

    private static Optional<Chart> of(
            String file,
            String name,
            String what,
            SensitivityStudy study,
            Numbers numbers,
            Measure measure,
            ToDoubleFunction<Sensitivity.Change> number) {
        return study.effects().isEmpty()
                ? Optional.empty()
                : Optional.of(new Chart(
                        file,
                        "What changes the " + what + " most, one thing at a time?",
                        name,
                        plot(study, numbers, measure, number)));
    }

    private static RowPlot plot(
            SensitivityStudy study, Numbers numbers, Measure measure, ToDoubleFunction<Sensitivity.Change> number) {
        List<Sensitivity> sorted = study.effects().stream()
                .sorted(Comparator.comparingDouble((Sensitivity s) -> Math.max(
                                Math.abs(number.applyAsDouble(s.low().change())),
                                Math.abs(number.applyAsDouble(s.high().change()))))
                        .reversed())
                .limit(MOST)
                .toList();
        double[] low = shown(
                sorted, numbers, measure, s -> number.applyAsDouble(s.low().change()));
        double[] high = shown(
                sorted, numbers, measure, s -> number.applyAsDouble(s.high().change()));
        RowPlot plot = new RowPlot(
                sorted.stream().map(s -> SensitivityTables.varied(s, numbers)).toList(),
                measure.unit(numbers.units()) + " more (right) or less (left) than as planned",
                Scale.withZero(STEPS, low, high));
        plot.bars(LOW, low, Palette.YELLOW);
        plot.bars(HIGH, high, Palette.BLUE);
        return plot;
    }

    private static double[] shown(
            List<Sensitivity> effects, Numbers numbers, Measure measure, ToDoubleFunction<Sensitivity> number) {
        return effects.stream()
                .mapToDouble(s -> measure.in(numbers.units(), number.applyAsDouble(s)))
                .toArray();
    }
}
