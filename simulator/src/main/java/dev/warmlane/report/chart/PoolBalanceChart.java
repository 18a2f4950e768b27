package dev.warmlane.report.chart;

import dev.warmlane.pool.Flow;
import dev.warmlane.report.Subject;
import dev.warmlane.season.HeatBalance;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Measure;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The pool's heat month by month: what warmed it stands up, what cooled it hangs down. */
final class PoolBalanceChart {

    private static final int STEPS = 8;

    /** In the order they are stacked, neighbours of different lightness. */
    private static final List<Kind> KINDS = List.of(
            new Kind("sun on the pool", Palette.YELLOW, b -> b.kwh(Flow.SUN)),
            new Kind("collectors", Palette.GREEN, HeatBalance::deliveredKwh),
            new Kind("heater", Palette.VERMILLION, b -> b.kwh(Flow.HEATER)),
            new Kind("bathers", Palette.INK, b -> b.kwh(Flow.BATHERS)),
            new Kind("circulation pump", Palette.PALE, b -> b.kwh(Flow.CIRCULATION)),
            new Kind("evaporation", Palette.BLUE, b -> b.kwh(Flow.EVAPORATION)),
            new Kind("convection", Palette.SKY_BLUE, b -> b.kwh(Flow.CONVECTION)),
            new Kind("long-wave", Palette.PURPLE, b -> b.kwh(Flow.LONG_WAVE)),
            new Kind("ground, make-up water", Palette.PALE, b -> b.kwh(Flow.GROUND) + b.kwh(Flow.MAKE_UP)),
            new Kind("walls, through-flow", Palette.ORANGE, b -> b.kwh(Flow.WALLS) + b.kwh(Flow.THROUGH_FLOW)));

    private PoolBalanceChart() {}

    static Chart of(String name, Subject subject) {
        List<PeriodSummary> months = subject.forecast().months();
        double up = 0;
        double down = 0;
        for (PeriodSummary month : months) {
            double above = 0;
            double below = 0;
            for (Kind kind : KINDS) {
                double heat = kind.shown(subject, month);
                above += Math.max(0, heat);
                below += Math.min(0, heat);
            }
            up = Math.max(up, above);
            down = Math.min(down, below);
        }
        BarPlot plot = BarPlot.stacked(
                months.stream()
                        .map(month -> subject.numbers().label(month.period()))
                        .toList(),
                Measure.HEAT.unit(subject.units()) + " in the month",
                Scale.holding(down, up, STEPS));
        for (Kind kind : KINDS) {
            double[] heat =
                    months.stream().mapToDouble(m -> kind.shown(subject, m)).toArray();
            if (Arrays.stream(heat).anyMatch(h -> h != 0)) {
                plot.bars(kind.label, heat, kind.colour);
            }
        }
        return new Chart(
                name,
                "Where does the pool's heat come from (up), and where does it go (down)?",
                subject.settings().title(),
                plot);
    }

    private record Kind(String label, Color colour, ToDoubleFunction<HeatBalance> kwh) {

        double shown(Subject subject, PeriodSummary month) {
            return Measure.HEAT.in(subject.units(), kwh.applyAsDouble(month.balance()));
        }
    }
}
