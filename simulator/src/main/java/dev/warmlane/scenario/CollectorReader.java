package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorArray.Filling;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads one section {@code [[collectors]]}. */
final class CollectorReader {

    private CollectorReader() {}

    static @Nullable CollectorArray array(
            Document.Group group, int number, DrawnCollectors drawn, boolean flowIsThePumps) {
        Section s = group.main();
        String name = s.has(CollectorKeys.NAME) ? s.get(CollectorKeys.NAME) : "collectors " + number;
        Optional<DrawnCollectors.Fit> fit = drawn.fit(s);
        double area = drawn.isBroken() && !s.has(CollectorKeys.AREA) && !s.has(CollectorKeys.PANELS)
                ? CollectorArray.AREA.lowest()
                : area(s, fit);
        double water = s.get(CollectorKeys.WATER_CONTENT);
        double dry = s.has(CollectorKeys.DRY_WEIGHT) ? s.get(CollectorKeys.DRY_WEIGHT) : 0;
        double panel = s.has(CollectorKeys.PANEL_AREA)
                ? s.get(CollectorKeys.PANEL_AREA)
                : fit.map(DrawnCollectors.Fit::panelM2).orElse(0.0);
        if (s.has(CollectorKeys.PANEL_AREA)) {
            fit.ifPresent(there -> there.checkPanel(s, panel));
        }
        Mounting mounting = mounting(s, area, fit, drawn.isBroken());
        fit.ifPresent(there -> drawn.lay(there, name, area));
        CollectorModel model = CollectorModelReader.model(
                s, group.parts().get(0), group.parts().get(1), group.parts().get(2));
        // a flow that is the pump's is found once the whole circuit is known
        double flow = flowIsThePumps && !s.has(CollectorKeys.FLOW)
                ? CollectorArray.USUAL_FLOW_KG_S_M2
                : FlowKind.over(s, CollectorKeys.FLOW, area);
        if (model == null) {
            return null;
        }
        return s.build(() -> new CollectorArray(
                name, area, Objects.requireNonNull(mounting), model, flow, panel, new Filling(water, dry)));
    }

    /** The area that is given; on a drawn roof it may be left out for the most that fits. */
    private static double area(Section s, Optional<DrawnCollectors.Fit> fit) {
        if (s.has(CollectorKeys.AREA)) {
            s.refuse("not allowed with area; give area or panels and panel_area", CollectorKeys.PANELS);
            double area = s.get(CollectorKeys.AREA);
            fit.ifPresent(there -> there.check(s, CollectorKeys.AREA, area));
            return area;
        }
        double panel = fit.map(DrawnCollectors.Fit::panelM2).orElse(0.0);
        if (s.has(CollectorKeys.PANELS) && !s.has(CollectorKeys.PANEL_AREA) && panel > 0) {
            double area = s.get(CollectorKeys.PANELS) * panel;
            fit.ifPresent(there -> there.check(s, CollectorKeys.PANELS, area));
            return area;
        }
        if (s.has(CollectorKeys.PANELS) || (fit.isEmpty() && s.has(CollectorKeys.PANEL_AREA))) {
            double area = s.get(CollectorKeys.PANELS) * s.get(CollectorKeys.PANEL_AREA);
            fit.ifPresent(there -> there.check(s, CollectorKeys.PANELS, area));
            return area;
        }
        if (fit.isPresent()) {
            return s.get(CollectorKeys.AREA, fit.get().mostM2(s), fit.get().why());
        }
        return s.get(CollectorKeys.AREA);
    }

    private static @Nullable Mounting mounting(
            Section s, double area, Optional<DrawnCollectors.Fit> fit, boolean broken) {
        CollectorKeys.MountingKind kind = s.get(CollectorKeys.MOUNTING);
        if (!s.has(CollectorKeys.MOUNTING) || !s.sound(CollectorKeys.MOUNTING)) {
            return null;
        }
        return switch (kind) {
            case FLAT -> flat(s);
            case RACK, TENT -> rack(s, area, fit, broken, kind == CollectorKeys.MountingKind.TENT);
            case PITCHED, GABLE -> pitched(s, kind == CollectorKeys.MountingKind.GABLE);
        };
    }

    private static @Nullable Mounting flat(Section s) {
        s.refuse(
                "not allowed for mats lying flat",
                CollectorKeys.TILT,
                CollectorKeys.AZIMUTH,
                CollectorKeys.SLOPE_LENGTH);
        refuseRackKeys(s, "allowed for racks only");
        double gap = s.get(CollectorKeys.GAP);
        return s.build(() -> new Mounting.FlatOnRoof(gap));
    }

    private static @Nullable Mounting pitched(Section s, boolean gable) {
        refuseRackKeys(s, "allowed for racks only");
        double tilt = s.get(CollectorKeys.TILT);
        double azimuth = s.get(CollectorKeys.AZIMUTH);
        double slope = s.get(CollectorKeys.SLOPE_LENGTH);
        double gap = s.get(CollectorKeys.GAP);
        return s.build(() -> new Mounting.FlushOnPitchedRoof(tilt, azimuth, slope, gap, gable));
    }

    private static @Nullable Mounting rack(
            Section s, double area, Optional<DrawnCollectors.Fit> fit, boolean broken, boolean tents) {
        s.refuse("not allowed for racks, which have a clearance", CollectorKeys.GAP);
        s.refuse("allowed for pitched roofs only", CollectorKeys.SLOPE_LENGTH);
        Rack rack = rack(s, CollectorKeys.CHORD, CollectorKeys.CLEARANCE);
        double pitch = s.get(CollectorKeys.PITCH);
        Mounting.Back back = back(s);
        int rows = broken && !s.has(CollectorKeys.ROWS) && !s.has(CollectorKeys.ROW_LENGTH)
                ? 1
                : rows(s, area, tents ? 2 * rack.chordM() : rack.chordM(), fit);
        double innerWind = innerWind(s, rows == 1);
        checkPitch(s, CollectorKeys.PITCH, pitch, rack, tents);
        Mounting.WindRun run = windRun(s, rack);
        return s.build(() -> new Mounting.OpenRack(new RackRows(rack, pitch, rows, tents), back, run, innerWind));
    }

    /** One rack; a stand-in for what is missing makes a rack too. */
    static Rack rack(Section s, Key<Double> chord, Key<Double> clearance) {
        return new Rack(s.get(CollectorKeys.TILT), s.get(CollectorKeys.AZIMUTH), s.get(chord), s.get(clearance));
    }

    /** Refuses rows that stand over each other. */
    static void checkPitch(Section s, Key<Double> key, double pitch, Rack rack, boolean tents) {
        double covered = RackRows.coveredM(rack, tents);
        if (!s.hasFailed() && pitch < covered) {
            s.error(
                    key,
                    "found " + key.kind().show(pitch) + ", but a row covers "
                            + key.kind().show(Math.round(covered * 1000) / 1000.0)
                            + " of roof; allowed: at least " + (tents ? "twice " : "")
                            + "chord times the cosine of tilt");
        }
    }

    /** The back of racks, with what its board lets through. */
    static Mounting.Back back(Section s) {
        if (s.get(CollectorKeys.BACK) == CollectorKeys.BackKind.OPEN) {
            s.refuse("allowed with back = \"boarded\" only", CollectorKeys.BOARD_U_VALUE);
            return Mounting.Back.OPEN;
        }
        return Mounting.Back.boarded(s.get(CollectorKeys.BOARD_U_VALUE));
    }

    /** The wind at inner rows, of which nothing is assumed where there are none. */
    static double innerWind(Section s, boolean oneRow) {
        return oneRow && !s.has(CollectorKeys.INNER_WIND)
                ? Mounting.OpenRack.USUAL_INNER_WIND
                : s.get(CollectorKeys.INNER_WIND);
    }

    /** What the wind has run over, if the racks lie as low as that asks. */
    static Mounting.WindRun windRun(Section s, Rack rack) {
        Mounting.WindRun run = s.get(CollectorKeys.WIND_RUN);
        if (!s.hasFailed()) {
            run.refused(rack).ifPresent(why -> s.error(CollectorKeys.WIND_RUN, why));
        }
        return run;
    }

    private static int rows(Section s, double area, double slopes, Optional<DrawnCollectors.Fit> fit) {
        if (s.has(CollectorKeys.ROWS)) {
            s.refuse("not allowed with rows; give rows or row_length", CollectorKeys.ROW_LENGTH);
            return s.get(CollectorKeys.ROWS);
        }
        if (s.has(CollectorKeys.ROW_LENGTH)) {
            return (int) Math.ceil(area / (slopes * s.get(CollectorKeys.ROW_LENGTH)) - 1e-9);
        }
        if (fit.isPresent() && !s.hasFailed()) {
            return s.get(CollectorKeys.ROWS, fit.get().rows(area), "as they stand on the drawn roof");
        }
        return s.get(CollectorKeys.ROWS);
    }

    private static void refuseRackKeys(Section s, String why) {
        s.refuse(
                why,
                CollectorKeys.CHORD,
                CollectorKeys.PITCH,
                CollectorKeys.ROWS,
                CollectorKeys.ROW_LENGTH,
                CollectorKeys.CLEARANCE,
                CollectorKeys.BACK,
                CollectorKeys.BOARD_U_VALUE,
                CollectorKeys.WIND_RUN,
                CollectorKeys.INNER_WIND);
    }
}
