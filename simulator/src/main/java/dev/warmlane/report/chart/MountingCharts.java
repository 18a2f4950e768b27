package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The charts of mountings side by side. */
public final class MountingCharts {

    static final String SAME_AREA = "same collector area";
    static final String SAME_ROOF = "the most that fits the same roof";

    private static final int STEPS = 8;

    /** Behind the name of a mounting whose area is larger than the roof has room for. */
    static final String NO_ROOM = ", no room for as much";

    private MountingCharts() {}

    /** Heat of both comparisons. */
    public static Optional<Chart> heat(String name, MountingStudy study, UnitSystem units) {
        return Optional.of(rows(
                study,
                name,
                "Which mounting gives most heat in the season?",
                Measure.HEAT,
                units,
                MountingResult::deliveredKwh));
    }

    /** Heat from a unit of area in both comparisons. */
    public static Optional<Chart> perArea(String name, MountingStudy study, UnitSystem units) {
        return Optional.of(rows(
                study,
                name,
                "Which mounting gives most from each " + new Numbers(units).unitOfArea() + "?",
                Measure.HEAT_PER_AREA,
                units,
                MountingResult::deliveredKwhPerM2));
    }

    /** Where the light goes; nothing where a certificate does not tell one loss from another. */
    public static Optional<Chart> light(String name, MountingStudy study, UnitSystem units) {
        return MountingLightChart.of(name, study, units);
    }

    /** Heat against the temperature that the water is held at. */
    public static Optional<Chart> held(String name, MountingStudy study, Numbers numbers) {
        return Optional.of(HeldPoolChart.of(name, study, numbers));
    }

    /** Both comparisons in one picture; what the roof has no room for has no bar and says so. */
    private static Chart rows(
            MountingStudy study,
            String name,
            String title,
            Measure measure,
            UnitSystem units,
            ToDoubleFunction<MountingResult> heat) {
        double[] area = study.compared().stream()
                .mapToDouble(one -> fits(one) ? measure.in(units, heat.applyAsDouble(one.sameArea())) : 0)
                .toArray();
        double[] roof = study.compared().stream()
                .mapToDouble(one -> measure.in(
                        units,
                        one.sameRoof().stream().mapToDouble(heat).findFirst().orElse(0)))
                .toArray();
        RowPlot plot = new RowPlot(
                study.compared().stream()
                        .map(one -> one.option().name() + (fits(one) ? "" : NO_ROOM))
                        .toList(),
                measure.unit(units) + " in the season",
                Scale.withZero(STEPS, area, roof));
        plot.bars(SAME_AREA, area, Palette.BLUE);
        plot.bars(SAME_ROOF, roof, Palette.YELLOW);
        return new Chart(name, title, study.template().name(), plot);
    }

    private static boolean fits(MountingStudy.Compared one) {
        return one.sameArea().fit().fits();
    }

    /** Heat by month from a unit of area. */
    public static Optional<Chart> months(String name, MountingStudy study, Numbers numbers) {
        UnitSystem units = numbers.units();
        List<MountingResult> results = study.sameArea();
        double[][] heat = results.stream()
                .map(result -> result.months().stream()
                        .mapToDouble(month -> Measure.HEAT_PER_AREA.in(
                                units,
                                month.balance().deliveredKwh() / result.fit().areaM2()))
                        .toArray())
                .toArray(double[][]::new);
        BarPlot plot = BarPlot.sideBySide(
                results.get(0).months().stream()
                        .map(month -> numbers.label(month.period()))
                        .toList(),
                Measure.HEAT_PER_AREA.unit(units) + " in the month",
                Scale.withZero(STEPS, heat));
        for (int i = 0; i < results.size(); i++) {
            plot.bars(results.get(i).option().name(), heat[i], Wheel.fill(i));
        }
        return Optional.of(new Chart(
                name,
                "Which mounting gives most in which month, from each " + numbers.unitOfArea() + "?",
                study.template().name(),
                plot));
    }
}
