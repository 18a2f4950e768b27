package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The designs of an area study: the arrays of an installation, all scaled together and each brought to whole panels where
 * it is made of panels.
 */
final class AreaSteps {

    /** A design this close to the installation's own size, as a share of it, is the installation. */
    private static final double SAME = 1e-9;

    /** What the area grows by after the only design of a study, as a share of it. */
    static final double GROWTH = 0.01;

    private final Installation template;
    private final Optional<DrawnLimits> drawn;
    private final List<Installation> designs = new ArrayList<>();

    AreaSteps(Installation template, AreaRange range, Optional<DrawnLimits> drawn) {
        this.template = template;
        this.drawn = drawn;
        for (int design = 0; design < range.designs(); design++) {
            Installation next = scaled(range.areaM2(design));
            if (designs.isEmpty() || !sameArrays(next, last())) {
                designs.add(next);
            }
        }
        Installation beyond = scaled(range.toM2() + (range.stepM2() > 0 ? range.stepM2() : GROWTH * range.toM2()));
        designs.add(sameArrays(beyond, last()) ? onePanelMore(last()) : beyond);
    }

    /** The designs from small to large, and one more beyond the range, which tells what growing from the last is worth. */
    List<Installation> withOneBeyond() {
        return List.copyOf(designs);
    }

    private Installation last() {
        return designs.get(designs.size() - 1);
    }

    private Installation scaled(double areaM2) {
        double factor = areaM2 / template.collectorAreaM2();
        if (Math.abs(factor - 1) < SAME) {
            return template;
        }
        List<CollectorArray> arrays = template.arrays();
        double[] wanted =
                arrays.stream().mapToDouble(array -> factor * array.areaM2()).toArray();
        return with(
                arrays, drawn.map(limits -> limits.nearestM2(wanted)).orElseGet(() -> IntStream.range(0, wanted.length)
                        .mapToDouble(i -> wholePanels(arrays.get(i), wanted[i]))
                        .toArray()));
    }

    /** The nearest area that is made of whole panels, at least one. */
    static double wholePanels(CollectorArray array, double areaM2) {
        double panel = array.panelAreaM2();
        return panel == 0 ? areaM2 : Math.max(1, Math.rint(areaM2 / panel)) * panel;
    }

    /** Only arrays of panels can have stayed the same when everything grew. */
    private Installation onePanelMore(Installation built) {
        List<CollectorArray> arrays = built.arrays();
        double[] now = arrays.stream().mapToDouble(CollectorArray::areaM2).toArray();
        return with(arrays, drawn.map(limits -> limits.nextM2(now)).orElseGet(() -> arrays.stream()
                .mapToDouble(array -> array.areaM2() + array.panelAreaM2())
                .toArray()));
    }

    private Installation with(List<CollectorArray> arrays, double[] areasM2) {
        return PumpByFlow.with(
                template,
                IntStream.range(0, areasM2.length)
                        // a very small array beside very large ones stays as small as one can be
                        .mapToObj(i -> arrays.get(i).withAreaM2(Math.max(CollectorArray.AREA.lowest(), areasM2[i])))
                        .toList());
    }

    private static boolean sameArrays(Installation one, Installation other) {
        return one.arrays().equals(other.arrays());
    }
}
