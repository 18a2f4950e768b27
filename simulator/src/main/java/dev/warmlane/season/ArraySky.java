package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.roof.Laying;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.StandingOnRoof;
import dev.warmlane.roof.Surface;
import dev.warmlane.site.Horizon;
import java.util.List;
import java.util.Optional;

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
     * @param surfaces the surfaces that may be used
     * @param laying how panels are laid on them
     * @param clearanceM height of their lower edges above the roof, m
     * @param areaM2 how much of them, m²
     */
    public record Near(RoofPlan plan, List<Surface> surfaces, Laying laying, double clearanceM, double areaM2) {

        private Skylines skylines(Horizon horizon) {
            RoofLayout layout = RoofLayout.ofArea(surfaces, plan.rules(), laying, areaM2)
                    .orElseGet(() -> RoofLayout.most(surfaces, plan.rules(), laying));
            return layout.banks() == 0 ? Skylines.of(horizon) : StandingOnRoof.skylines(layout, clearanceM, horizon);
        }
    }

    /** That of an array of an installation, as much of it as there is. */
    public static ArraySky of(Installation built, CollectorArray array) {
        Horizon horizon = built.roof().horizon();
        return new ArraySky(
                horizon,
                built.plan()
                        .map(plan -> new Near(
                                plan,
                                array.mounting().surfaces(plan),
                                array.mounting().laying(),
                                array.mounting()
                                        .racks()
                                        .map(racks -> racks.rack().clearanceM())
                                        .orElse(0.0),
                                array.areaM2()))
                        .filter(near -> near.surfaces.stream().anyMatch(StandingOnRoof::anything)));
    }

    /** What the array sees of the sky; its layout is made for it, and where not all fits, the most that does. */
    public Skylines skylines() {
        return near.map(layout -> layout.skylines(horizon)).orElseGet(() -> Skylines.of(horizon));
    }
}
