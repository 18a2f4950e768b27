package dev.warmlane.report.chart;

import dev.warmlane.report.LightItem;
import dev.warmlane.report.Numbers;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of the light on each mounting: what it takes in stands up, what it gives hangs down, the useful heat first
 * so that it can be compared. What stands up is as much as what hangs down, to what the solution of the plate leaves
 * open.
 */
final class MountingLightChart {

    private static final int STEPS = 8;

    /** In the order they are stacked, neighbours of different lightness. */
    private static final List<Kind> KINDS = List.of(
            new Kind(LightItem.USEFUL, Palette.GREEN),
            new Kind(LightItem.ABSORBED_FRONT, Palette.YELLOW),
            new Kind(LightItem.ABSORBED_BACK, Palette.ORANGE),
            new Kind(LightItem.CONVECTION_FRONT, Palette.SKY_BLUE),
            new Kind(LightItem.CONVECTION_BACK, Palette.BLUE),
            new Kind(LightItem.LONG_WAVE_FRONT, Palette.PALE),
            new Kind(LightItem.LONG_WAVE_BACK, Palette.PURPLE),
            new Kind(LightItem.THROUGH_BACK, Palette.INK));

    private MountingLightChart() {}

    /** Nothing where a certificate does not tell one loss from another. */
    static Optional<Chart> of(String name, MountingStudy study, UnitSystem units) {
        List<MountingResult> results = study.sameArea();
        List<LightBudget> budgets =
                results.stream().flatMap(result -> result.light().stream()).toList();
        if (budgets.size() < results.size()) {
            return Optional.empty();
        }
        double up = 0;
        double down = 0;
        for (LightBudget light : budgets) {
            double[] shown =
                    KINDS.stream().mapToDouble(kind -> kind.shown(light, units)).toArray();
            up = Math.max(up, Arrays.stream(shown).filter(heat -> heat > 0).sum());
            down = Math.min(down, Arrays.stream(shown).filter(heat -> heat < 0).sum());
        }
        BarPlot plot = BarPlot.stacked(
                results.stream().map(result -> result.option().name()).toList(),
                Measure.LIGHT.unit(units) + " while the pump ran",
                Scale.holding(down, up, STEPS));
        for (Kind kind : KINDS) {
            double[] heat = budgets.stream()
                    .mapToDouble(light -> kind.shown(light, units))
                    .toArray();
            if (Arrays.stream(heat).anyMatch(h -> h != 0)) {
                plot.bars(kind.item.label(), heat, kind.colour);
            }
        }
        return Optional.of(new Chart(
                name,
                "What does a " + new Numbers(units).unitOfArea() + " take in (up), and what becomes of it (down)?",
                study.template().name(),
                plot));
    }

    private record Kind(LightItem item, Color colour) {

        /** Useful heat goes from the collector to the water and is not its gain. */
        double shown(LightBudget light, UnitSystem units) {
            double gained = item.gained(light);
            return Measure.LIGHT.in(units, item == LightItem.USEFUL ? -gained : gained);
        }
    }
}
