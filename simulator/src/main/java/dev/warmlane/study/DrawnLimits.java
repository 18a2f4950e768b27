package dev.warmlane.study;

import dev.warmlane.roof.Bank;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.season.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The most that a drawn roof holds of each array of an installation, and the areas on the way there. */
final class DrawnLimits {

    /** An area that is missed by less fits, m². */
    private static final double ROUNDING_M2 = 1e-6;

    /** For each array its areas, panel by panel and bank by bank, of tents on both sides; none where no surface is drawn for it. */
    private final List<double[]> steps = new ArrayList<>();

    private final double panelWidthM;

    private DrawnLimits(Installation installation, RoofPlan plan) {
        this.panelWidthM = plan.rules().widthM();
        installation.arrays().forEach(array -> {
            List<Surface> surfaces = array.mounting().surfaces(plan);
            steps.add(steps(
                    RoofLayout.most(surfaces, plan.rules(), array.mounting().laying())));
        });
    }

    /** Nothing where the roof is not drawn. */
    static Optional<DrawnLimits> of(Installation installation) {
        return installation.plan().map(plan -> new DrawnLimits(installation, plan));
    }

    private static double[] steps(RoofLayout layout) {
        List<Double> areas = new ArrayList<>();
        int sides = layout.laying().sides();
        List<Bank> banks =
                layout.surfaces().stream().flatMap(on -> on.banks().stream()).toList();
        double before = 0;
        for (int i = 0; i < banks.size(); i += sides) {
            Bank bank = banks.get(i);
            for (int panels = 1; panels <= bank.panels(); panels++) {
                areas.add(before + sides * panels * bank.panelAreaM2());
            }
            before += sides * bank.areaM2();
        }
        return areas.stream().mapToDouble(area -> area).toArray();
    }

    /** Whether all arrays of a design have room. */
    boolean fits(Installation built) {
        for (int array = 0; array < steps.size(); array++) {
            if (isDrawn(array) && built.arrays().get(array).areaM2() > most(array) + ROUNDING_M2) {
                return false;
            }
        }
        return true;
    }

    /** The area of all arrays together, growing as they are, at which the first of them has no more room, m². */
    OptionalDouble limitM2(Installation installation) {
        double factor = Double.POSITIVE_INFINITY;
        for (int array = 0; array < steps.size(); array++) {
            if (isDrawn(array)) {
                factor = Math.min(
                        factor, most(array) / installation.arrays().get(array).areaM2());
            }
        }
        return Double.isInfinite(factor)
                ? OptionalDouble.empty()
                : OptionalDouble.of(factor * installation.collectorAreaM2());
    }

    /** The nearest area of an array that can be laid, m²; beyond what the roof holds, the area itself. */
    double nearestM2(int array, double areaM2) {
        if (!isDrawn(array) || areaM2 > most(array)) {
            return areaM2;
        }
        double nearest = steps.get(array)[0];
        for (double step : steps.get(array)) {
            nearest = Math.abs(step - areaM2) < Math.abs(nearest - areaM2) ? step : nearest;
        }
        return nearest;
    }

    /** The next area of an array that can be laid; beyond what the roof holds, a panel's width of a metre more, m². */
    double nextM2(int array, double areaM2) {
        for (double step : steps.get(array)) {
            if (step > areaM2 + ROUNDING_M2) {
                return step;
            }
        }
        return areaM2 + panelWidthM;
    }

    private boolean isDrawn(int array) {
        return steps.get(array).length > 0;
    }

    private double most(int array) {
        double[] areas = steps.get(array);
        return areas[areas.length - 1];
    }
}
