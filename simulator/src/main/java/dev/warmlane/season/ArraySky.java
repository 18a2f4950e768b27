package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.roof.LaidRoof;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.StandingOnRoof;
import dev.warmlane.roof.Wanted;
import dev.warmlane.site.Horizon;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What decides how much of the sky an array sees: the horizon, and where on a drawn roof it lies among what stands there.
 * Arrays for which all of this is equal see the same.
 *
 * @param horizon what stands farther away
 * @param near the layout among things that stand up on a drawn roof; nothing where none does
 */
public record ArraySky(Horizon horizon, Optional<Near> near) {

    /**
     * A layout to be made.
     *
     * @param plan the roof
     * @param wanted what is laid before where that has a say in it, and last the array's own panels
     * @param clearanceM height of their lower edges above the roof, m
     */
    public record Near(RoofPlan plan, List<Wanted> wanted, double clearanceM) {

        /** Keeps its own copy of the list. */
        public Near {
            wanted = List.copyOf(wanted);
        }

        private Skylines skylines(Horizon horizon) {
            RoofLayout layout = LaidRoof.of(plan.rules(), wanted).last().layout();
            return layout.banks() == 0 ? Skylines.of(horizon) : StandingOnRoof.skylines(layout, clearanceM, horizon);
        }
    }

    /** Those of the arrays of an installation, in their order. */
    public static List<ArraySky> of(Installation built) {
        return IntStream.range(0, built.arrays().size())
                .mapToObj(array -> of(built, array))
                .toList();
    }

    private static ArraySky of(Installation built, int array) {
        CollectorArray own = built.arrays().get(array);
        double clearance =
                own.mounting().racks().map(racks -> racks.rack().clearanceM()).orElse(0.0);
        return new ArraySky(
                built.roof().horizon(),
                built.plan()
                        .filter(plan -> own.mounting().surfaces(plan).stream().anyMatch(StandingOnRoof::anything))
                        .map(plan -> new Near(
                                plan,
                                LaidRoof.bearingOnLast(built.arrays().subList(0, array + 1).stream()
                                        .map(one -> one.wanted(plan))
                                        .toList()),
                                clearance)));
    }

    /** What the array sees of the sky; its layout is made for it, and where not all fits, the most that does. */
    public Skylines skylines() {
        return near.map(layout -> layout.skylines(horizon)).orElseGet(() -> Skylines.of(horizon));
    }
}
