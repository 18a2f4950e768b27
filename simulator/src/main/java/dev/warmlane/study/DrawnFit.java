package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.roof.Laying;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.roof.SurfaceLayout;
import dev.warmlane.season.Installation;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a mounting option is laid on a roof that is drawn, by the same rules for mats and racks. Rows that are spaced by
 * the sun leave at least the layout's walkway between them; where rows at a given pitch do not, nothing fits.
 */
final class DrawnFit {

    private final Installation installation;
    private final RoofPlan plan;
    private final double latitudeDeg;

    DrawnFit(Installation installation, RoofPlan plan, double latitudeDeg) {
        this.installation = installation;
        this.plan = plan;
        this.latitudeDeg = latitudeDeg;
    }

    /** The most that fits; nothing where not a panel does. */
    Optional<RoofFit> most(MountingOption option) {
        return option.match(
                flat -> most(plan.flat(), flat.mounting()),
                racks -> mostRacks(racks),
                pitched -> isDrawn(pitched) ? most(drawn(pitched), pitched.mounting()) : mostOfArea(pitched));
    }

    /** A given area, in as few banks as it takes, whether there is room for it or not. */
    RoofFit ofArea(MountingOption option, double areaM2) {
        return option.match(
                flat -> lying(plan.flat(), flat.mounting(), areaM2),
                racks -> racks(racks, areaM2),
                pitched -> isDrawn(pitched)
                        ? lying(drawn(pitched), pitched.mounting(), areaM2)
                        : new RoofFit(
                                areaM2,
                                OptionalInt.empty(),
                                pitched.mounting(),
                                0,
                                areaM2 <= limitM2(pitched),
                                Optional.empty()));
    }

    private Optional<RoofFit> most(List<Surface> surfaces, Mounting mounting) {
        return fit(RoofLayout.most(surfaces, plan.rules(), new Laying.Mats()), mounting);
    }

    private Optional<RoofFit> fit(RoofLayout layout, Mounting mounting) {
        return layout.areaM2() >= CollectorArray.AREA.lowest()
                ? Optional.of(new RoofFit(
                        layout.areaM2(),
                        OptionalInt.of(layout.panels()),
                        mounting,
                        longestRowM(layout),
                        true,
                        Optional.of(layout)))
                : Optional.empty();
    }

    private RoofFit lying(List<Surface> surfaces, Mounting mounting, double areaM2) {
        return fit(RoofLayout.ofArea(surfaces, plan.rules(), new Laying.Mats(), areaM2), mounting, areaM2);
    }

    private static RoofFit fit(Optional<RoofLayout> layout, Mounting mounting, double areaM2) {
        return new RoofFit(
                areaM2,
                layout.map(laid -> OptionalInt.of(laid.panels())).orElse(OptionalInt.empty()),
                mounting,
                layout.map(DrawnFit::longestRowM).orElse(0.0),
                layout.isPresent(),
                layout);
    }

    private Optional<RoofFit> mostRacks(MountingOption.Racks racks) {
        Laying.Racks laying = laying(racks);
        if (!laying.leaves(plan.rules())) {
            return Optional.empty();
        }
        RoofLayout layout = RoofLayout.most(plan.flat(), plan.rules(), laying);
        return layout.banks() == 0 ? Optional.empty() : fit(layout, racks.inRows(laying.pitchM(), layout.rowsDeep()));
    }

    private RoofFit racks(MountingOption.Racks racks, double areaM2) {
        Laying.Racks laying = laying(racks);
        Optional<RoofLayout> layout = laying.leaves(plan.rules())
                ? RoofLayout.ofArea(plan.flat(), plan.rules(), laying, areaM2)
                : Optional.empty();
        int rows = layout.map(RoofLayout::rowsDeep).orElseGet(() -> rowsWithoutRoom(racks, laying, areaM2));
        return fit(layout, racks.inRows(laying.pitchM(), rows), areaM2);
    }

    /** As long as the longest row that the roof holds; a panel to a row where it holds none. */
    private int rowsWithoutRoom(MountingOption.Racks racks, Laying.Racks laying, double areaM2) {
        double longest = longestRowM(RoofLayout.most(plan.flat(), plan.rules(), laying));
        double row = Math.max(longest, plan.rules().widthM()) * racks.chordM() * laying.sides();
        return (int) Math.min(RackRows.ROWS.highest(), Math.ceil(areaM2 / row));
    }

    private Laying.Racks laying(MountingOption.Racks racks) {
        Laying.Racks laying = new Laying.Racks(
                racks.tiltDeg(),
                racks.azimuthDeg(),
                racks.chordM(),
                racks.pitchM(latitudeDeg, installation.season()),
                racks.tents());
        double least = laying.depthM(plan.rules()) + plan.rules().walkwayM();
        return racks.spacing().match(fixed -> laying, unshaded -> laying.withPitchM(Math.max(laying.pitchM(), least)));
    }

    private static double longestRowM(RoofLayout layout) {
        return layout.surfaces().stream()
                .mapToDouble(SurfaceLayout::longestRowM)
                .max()
                .orElse(0);
    }

    private boolean isDrawn(MountingOption.Pitched pitched) {
        return !drawn(pitched).isEmpty();
    }

    private List<Surface> drawn(MountingOption.Pitched pitched) {
        return pitched.mounting().surfaces(plan);
    }

    /** A pitched roof that is not on the drawing has its given area, or room for as much as the flat surfaces. */
    private double limitM2(MountingOption.Pitched pitched) {
        return pitched.roofAreaM2().orElseGet(() -> RoofLayout.most(plan.flat(), plan.rules(), new Laying.Mats())
                .areaM2());
    }

    private Optional<RoofFit> mostOfArea(MountingOption.Pitched pitched) {
        double area = limitM2(pitched);
        return area >= CollectorArray.AREA.lowest()
                ? Optional.of(new RoofFit(area, OptionalInt.empty(), pitched.mounting(), 0, true, Optional.empty()))
                : Optional.empty();
    }
}
