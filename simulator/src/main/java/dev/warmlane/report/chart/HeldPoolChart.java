package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.study.HeldPool;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Season heat of each mounting against a temperature that the water is held at. */
final class HeldPoolChart {

    /** From one point of a curve to the next, K. */
    private static final double STEP_K = 1;

    private static final int X_STEPS = 10;
    private static final int Y_STEPS = 8;

    private HeldPoolChart() {}

    static Chart of(String name, MountingStudy study, Numbers numbers) {
        UnitSystem units = numbers.units();
        double[] water = temperaturesC();
        List<MountingResult> results = study.sameArea();
        List<double[]> heat = results.stream()
                .map(result -> Arrays.stream(water)
                        .map(c -> Measure.HEAT_PER_AREA.in(
                                units,
                                HeldPool.heatKwhM2(
                                        result.forecast().installation(),
                                        result.forecast().forcing(),
                                        c)))
                        .toArray())
                .toList();
        double[] x =
                Arrays.stream(water).map(c -> Measure.TEMPERATURE.in(units, c)).toArray();
        double meanC = results.get(0).season().water().meanC();
        double mean = Measure.TEMPERATURE.in(units, meanC);
        LinePlot plot = new LinePlot(
                "water held at, " + Measure.TEMPERATURE.unit(units),
                Scale.holding(Math.min(x[0], mean), Math.max(x[x.length - 1], mean), X_STEPS),
                Plot.Label.WHOLE,
                Measure.HEAT_PER_AREA.unit(units) + " in the season",
                Scale.withZero(Y_STEPS, heat.toArray(double[][]::new)));
        plot.upright(
                "this pool's mean with “" + results.get(0).option().name() + "”, "
                        + numbers.show(Measure.TEMPERATURE, meanC),
                mean,
                Palette.FAINT_INK,
                Pen.HAIR);
        // what is added last comes first in the legend
        for (int i = results.size() - 1; i >= 0; i--) {
            plot.line(results.get(i).option().name(), x, heat.get(i), Wheel.ink(i), Wheel.pen(i));
        }
        return new Chart(
                name,
                "How much less does each " + numbers.unitOfArea() + " give to warmer water?",
                study.template().name(),
                plot);
    }

    private static double[] temperaturesC() {
        double from = TurningVariable.POOL_TEMPERATURE.from();
        double to = TurningVariable.POOL_TEMPERATURE.to();
        return IntStream.rangeClosed(0, (int) Math.round((to - from) / STEP_K))
                .mapToDouble(step -> from + step * STEP_K)
                .toArray();
    }
}
