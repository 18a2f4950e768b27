package dev.warmlane.study;

import dev.warmlane.roof.Bank;
import dev.warmlane.roof.LaidRoof;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Wanted;
import dev.warmlane.season.Installation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The most that a drawn roof holds of each array of an installation, and the areas on the way there. Of arrays that share a
 * surface each has what those before it leave, so that its limit depends on how large they are.
 */
final class DrawnLimits {

    /** An area that is missed by less fits, m². */
    private static final double ROUNDING_M2 = 1e-6;

    /** To this share of it the limit of arrays that share a surface is found; own choice. */
    private static final double ENOUGH = 1e-4;

    /** The most layouts that are tried for it; own choice. */
    private static final int TRIALS = 12;

    private final LaidRoof bare;
    private final double panelWidthM;
    private final List<Wanted> wanted;

    /** For each array its areas if it were alone on the roof. */
    private final List<double[]> alone;

    /** For each array whether others may lie where it lies. */
    private final List<Boolean> shares;

    private DrawnLimits(Installation installation, RoofPlan plan) {
        this.bare = LaidRoof.bare(plan.rules());
        this.panelWidthM = plan.rules().widthM();
        this.wanted = wanted(installation, plan);
        this.alone = wanted.stream()
                .map(one -> steps(bare.most(one.surfaces(), one.laying())))
                .toList();
        this.shares = wanted.stream()
                .map(one -> wanted.stream().filter(one::sharesWith).count() > 1)
                .toList();
    }

    private static List<Wanted> wanted(Installation installation, RoofPlan plan) {
        return installation.arrays().stream().map(array -> array.wanted(plan)).toList();
    }

    /** Nothing where the roof is not drawn. */
    static Optional<DrawnLimits> of(Installation installation) {
        return installation.plan().map(plan -> new DrawnLimits(installation, plan));
    }

    /** Panel by panel and bank by bank, of tents on both sides; none where no surface is drawn. */
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
        double[] areas = areas(built);
        return IntStream.range(0, areas.length)
                        .allMatch(i -> !isDrawn(i) || areas[i] <= most(alone.get(i)) + ROUNDING_M2)
                && room(areas) >= 1;
    }

    /** The area of all arrays together, growing as they are, at which the first of them has no more room, m². */
    OptionalDouble limitM2(Installation installation) {
        double factor = Double.POSITIVE_INFINITY;
        double[] areas = areas(installation);
        for (int array = 0; array < areas.length; array++) {
            if (isDrawn(array)) {
                factor = Math.min(factor, most(alone.get(array)) / areas[array]);
            }
        }
        if (Double.isInfinite(factor)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                (sharing().length == 0 ? factor : besideOthers(areas, factor)) * installation.collectorAreaM2());
    }

    /**
     * The factor up to that of arrays alone at which those that share are out of room, no less than 1 where they fit as they
     * are: now and then a little less of the first leaves a place that suits the next worse. Together they cover about as much
     * whatever their areas are, so that what they cover at one factor is the next to be tried.
     */
    private double besideOthers(double[] areasM2, double alone) {
        double low = 0;
        double high = alone;
        double next = Math.min(1, alone);
        for (int trial = 0; trial < TRIALS && high - low > ENOUGH * high; trial++) {
            double factor = next;
            double room = room(Arrays.stream(areasM2).map(area -> factor * area).toArray());
            low = room >= 1 ? factor : low;
            high = room >= 1 ? high : factor;
            next = factor * room;
            if (room >= 1 && next - factor < ENOUGH * factor) {
                return factor;
            }
            next = next > low && next < high ? next : (low + high) / 2;
        }
        return low;
    }

    /**
     * By how much arrays that share surfaces could grow as far as laying them once tells: what is laid of them, the last as
     * large as it can be, over what is wanted. 1 where none share; below 1 where they do not all fit.
     */
    private double room(double[] areasM2) {
        int[] sharing = sharing();
        LaidRoof roof = bare;
        double asked = 0;
        double laid = 0;
        for (int i = 0; i < sharing.length; i++) {
            Wanted next = withArea(wanted.get(sharing[i]), areasM2[sharing[i]]);
            double most;
            if (i == sharing.length - 1) {
                most = roof.most(next.surfaces(), next.laying()).areaM2();
            } else {
                roof = roof.with(next);
                most = roof.last().fits() ? next.areaM2() : roof.last().layout().areaM2();
            }
            asked += next.areaM2();
            laid += most;
            if (most < next.areaM2() - ROUNDING_M2) {
                return laid / asked;
            }
        }
        return sharing.length == 0 ? 1 : Math.max(1, laid / asked);
    }

    /** The nearest areas that can be laid, array by array, m²; beyond what is left of the roof, the area itself. */
    double[] nearestM2(double[] areasM2) {
        return laid(areasM2, DrawnLimits::nearestM2);
    }

    private static double nearestM2(double[] steps, double areaM2) {
        if (steps.length == 0 || areaM2 > most(steps)) {
            return areaM2;
        }
        double nearest = steps[0];
        for (double step : steps) {
            nearest = Math.abs(step - areaM2) < Math.abs(nearest - areaM2) ? step : nearest;
        }
        return nearest;
    }

    /** The next areas that can be laid; beyond what is left of the roof, a panel's width of a metre more, m². */
    double[] nextM2(double[] areasM2) {
        return laid(areasM2, this::nextM2);
    }

    private double nextM2(double[] steps, double areaM2) {
        for (double step : steps) {
            if (step > areaM2 + ROUNDING_M2) {
                return step;
            }
        }
        return areaM2 + panelWidthM;
    }

    /** An area near a wanted one. */
    private interface Choice {
        double of(double[] steps, double areaM2);
    }

    /** Chooses the areas of all arrays in their order. */
    private double[] laid(double[] areasM2, Choice choice) {
        double[] chosen = new double[areasM2.length];
        LaidRoof roof = bare;
        for (int array = 0; array < areasM2.length; array++) {
            Wanted one = wanted.get(array);
            boolean first = !shares.get(array) || roof.laid().isEmpty();
            double[] steps = first ? alone.get(array) : steps(roof.most(one.surfaces(), one.laying()));
            chosen[array] = choice.of(steps, areasM2[array]);
            if (shares.get(array)) {
                roof = roof.with(withArea(one, chosen[array]));
            }
        }
        return chosen;
    }

    private static Wanted withArea(Wanted one, double areaM2) {
        return new Wanted(one.surfaces(), one.laying(), areaM2);
    }

    private int[] sharing() {
        return IntStream.range(0, wanted.size()).filter(shares::get).toArray();
    }

    private static double[] areas(Installation built) {
        return built.arrays().stream().mapToDouble(array -> array.areaM2()).toArray();
    }

    private boolean isDrawn(int array) {
        return alone.get(array).length > 0;
    }

    /** 0 where nothing fits. */
    private static double most(double[] steps) {
        return steps.length == 0 ? 0 : steps[steps.length - 1];
    }
}
