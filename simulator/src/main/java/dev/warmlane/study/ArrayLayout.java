package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.roof.LaidRoof;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Wanted;
import dev.warmlane.season.Installation;
import java.util.ArrayList;
import java.util.List;

/**
 * An array as it is laid on a roof that is drawn: flat mats and racks on the flat surfaces, what lies on a pitched roof on
 * the surfaces of its slope and direction. Several on one surface are laid in their order, each on what those before leave.
 *
 * @param array the array
 * @param layout its area in the fewest banks; where it does not fit, the most that does
 * @param fits whether all of it has room
 */
public record ArrayLayout(CollectorArray array, RoofLayout layout, boolean fits) {

    /** Whether arrays of an installation may lie on one surface of a drawn roof, so that they leave each other less. */
    public static boolean share(Installation installation) {
        return installation
                .plan()
                .map(plan -> wanted(installation, plan))
                .filter(all -> all.stream()
                        .anyMatch(one -> all.stream().filter(one::sharesWith).count() > 1))
                .isPresent();
    }

    private static List<Wanted> wanted(Installation installation, RoofPlan plan) {
        return installation.arrays().stream().map(array -> array.wanted(plan)).toList();
    }

    /**
     * The arrays of an installation, as they are laid; none where its roof is not drawn. An array for which no surface is
     * drawn is left out.
     */
    public static List<ArrayLayout> of(Installation installation) {
        List<ArrayLayout> layouts = new ArrayList<>();
        installation.plan().ifPresent(plan -> {
            LaidRoof roof = LaidRoof.of(plan.rules(), wanted(installation, plan));
            for (int i = 0; i < roof.laid().size(); i++) {
                LaidRoof.Laid laid = roof.laid().get(i);
                if (!laid.wanted().surfaces().isEmpty()) {
                    layouts.add(new ArrayLayout(installation.arrays().get(i), laid.layout(), laid.fits()));
                }
            }
        });
        return List.copyOf(layouts);
    }
}
