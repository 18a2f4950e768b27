package dev.warmlane.report.chart;

import dev.warmlane.report.Measure;
import dev.warmlane.report.Numbers;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The charts of mountings side by side. */
public final class MountingCharts {

    static final String SAME_AREA = "same collector area";
    static final String SAME_ROOF = "the most that fits the same roof";

    private static final int STEPS = 8;

    /** The names of all charts that there may be. */
    public static final List<String> NAMES = List.of(
            "mounting-heat", "mounting-heat-per-area", "mounting-light", "mounting-months", "mounting-held-pool");

    private MountingCharts() {}

    /** All that there is something to show on, the most asked for first. */
    public static List<Chart> of(MountingStudy study, ReportSettings.Units units) {
        List<Chart> charts = new ArrayList<>();
        charts.add(rows(
                study,
                "mounting-heat",
                "Heat in the season, both comparisons",
                Measure.HEAT,
                units,
                MountingResult::deliveredKwh));
        charts.add(rows(
                study,
                "mounting-heat-per-area",
                "Heat in the season from each " + new Numbers(units).unitOfArea(),
                Measure.HEAT_PER_AREA,
                units,
                MountingResult::deliveredKwhPerM2));
        MountingLightChart.of(study, units).ifPresent(charts::add);
        charts.add(months(study, units));
        charts.add(HeldPoolChart.of(study, units));
        return charts;
    }

    /** Both comparisons in one picture; of a mounting of which nothing fits the roof the bar has no length. */
    private static Chart rows(
            MountingStudy study,
            String name,
            String title,
            Measure measure,
            ReportSettings.Units units,
            ToDoubleFunction<MountingResult> heat) {
        double[] area = study.compared().stream()
                .mapToDouble(one -> measure.in(units, heat.applyAsDouble(one.sameArea())))
                .toArray();
        double[] roof = study.compared().stream()
                .mapToDouble(one -> measure.in(
                        units,
                        one.sameRoof().stream().mapToDouble(heat).findFirst().orElse(0)))
                .toArray();
        RowPlot plot = new RowPlot(
                study.compared().stream().map(one -> one.option().name()).toList(),
                measure.unit(units) + " in the season",
                Scale.withZero(STEPS, area, roof));
        plot.bars(SAME_AREA, area, Palette.BLUE);
        plot.bars(SAME_ROOF, roof, Palette.YELLOW);
        return new Chart(name, title, study.template().name(), plot);
    }

    private static Chart months(MountingStudy study, ReportSettings.Units units) {
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
                        .map(month -> month.period().label())
                        .toList(),
                Measure.HEAT_PER_AREA.unit(units) + " in the month",
                Scale.withZero(STEPS, heat));
        for (int i = 0; i < results.size(); i++) {
            plot.bars(results.get(i).option().name(), heat[i], Wheel.fill(i));
        }
        return new Chart(
                "mounting-months",
                "Heat by month from each " + new Numbers(units).unitOfArea() + ", same collector area",
                study.template().name(),
                plot);
    }
}
