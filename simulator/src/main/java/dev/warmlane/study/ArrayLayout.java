package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.roof.Laying;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.season.Installation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An array as it is laid on a roof that is drawn: flat mats and racks on the flat surfaces, what lies on a pitched roof on
 * the surfaces of its slope and direction.
 *
 * @param array the array
 * @param layout its area in the fewest banks; where it does not fit, the most that does
 * @param fits whether all of it has room
 */
public record ArrayLayout(CollectorArray array, RoofLayout layout, boolean fits) {

    /**
     * The arrays of an installation, as they are laid; none where its roof is not drawn. An array for which no surface is
     * drawn is left out.
     *
     * @throws IllegalArgumentException if two arrays would lie on one surface: draw it as two
     */
    public static List<ArrayLayout> of(Installation installation) {
        List<ArrayLayout> layouts = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        installation.plan().ifPresent(plan -> {
            for (CollectorArray array : installation.arrays()) {
                List<Surface> surfaces = array.mounting().surfaces(plan);
                if (!surfaces.isEmpty()) {
                    surfaces.forEach(surface -> take(surface, taken));
                    layouts.add(of(array, surfaces, plan));
                }
            }
        });
        return List.copyOf(layouts);
    }

    private static void take(Surface surface, Set<String> taken) {
        if (!taken.add(surface.name())) {
            throw new IllegalArgumentException("two arrays would lie on the surface \"" + surface.name()
                    + "\"; draw what each of them has as a surface of its own");
        }
    }

    private static ArrayLayout of(CollectorArray array, List<Surface> surfaces, RoofPlan plan) {
        Laying laying = array.mounting().laying();
        Optional<RoofLayout> wanted = RoofLayout.ofArea(surfaces, plan.rules(), laying, array.areaM2());
        return new ArrayLayout(
                array, wanted.orElseGet(() -> RoofLayout.most(surfaces, plan.rules(), laying)), wanted.isPresent());
    }
}
