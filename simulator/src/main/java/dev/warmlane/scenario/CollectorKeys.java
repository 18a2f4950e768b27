package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorArray.Filling;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.Mounting.OpenRack;
import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/** Keys of the section collectors, without its parts. */
final class CollectorKeys {

    private static final Range PANELS_OF_AN_ARRAY = Range.number("number of panels", 1, 100_000);
    private static final Range ROW_LENGTHS = Range.of("row length", Dimension.LENGTH, 0.5, 1000);
    private static final String WITH_RACK = "required for racks";
    private static final String WITH_TILT = "required for racks and pitched roofs";

    static final Key<String> NAME =
            Key.optional("name", WordKinds.text(), "what these collectors are called", "\"collectors\" and a number");
    static final Key<Double> AREA =
            Key.optional("area", CollectorArray.AREA, "collector area", "required without panels");
    static final Key<Integer> PANELS = Key.optional(
            "panels", Kinds.count(PANELS_OF_AN_ARRAY), "number of panels; the area is theirs", "required without area");
    static final Key<Double> PANEL_AREA = Key.optional(
            "panel_area",
            CollectorArray.PANEL_AREA,
            "area of one panel; beside area it gives the steps of an area study",
            "required with panels");
    static final Key<Double> WATER_CONTENT =
            Key.assumed("water_content", Filling.USUAL_WATER, "water that the collector holds");
    static final Key<Double> DRY_WEIGHT = Key.optional(
            "dry_weight",
            Filling.DRY_WEIGHT,
            "weight of the collector without water, for the load on the roof",
            "not known");
    static final Key<FlowKind.Flow> FLOW = Key.assumed(
            "flow",
            new FlowKind(),
            "water flow while running, per collector area or of all these collectors together",
            FlowKind.Flow.perArea(CollectorArray.USUAL_FLOW.value()),
            CollectorArray.USUAL_FLOW.source());
    static final Key<MountingKind> MOUNTING = Key.required(
            "mounting",
            WordKinds.choice(MountingKind.class),
            "flat on the flat roof, on racks standing on it, on tents of two racks back to back, lying on a pitched roof, or half"
                    + " of them on either slope of a gable roof; what is said of racks holds for tents, and their pitch is from"
                    + " ridge to ridge; what is said of pitched roofs holds for gables");
    static final Key<Double> GAP =
            Key.assumed("gap", Mounting.USUAL_GAP, "mean gap between collector and roof, flat and pitched");
    static final Key<Double> TILT = Key.optional("tilt", Plane.TILT, "tilt from the horizontal", WITH_TILT);
    static final Key<Double> AZIMUTH = Key.optional(
            "azimuth",
            Plane.AZIMUTH,
            "direction the front faces, clockwise from north; 180 deg is south; of a tent or a gable one of its two sides",
            WITH_TILT);
    static final Key<Double> CHORD =
            Key.optional("chord", Rack.CHORD, "length of a rack's collector up the slope", WITH_RACK);
    static final Key<Double> PITCH = Key.optional(
            "pitch",
            OpenRack.PITCH,
            "distance from row to row on the roof, at least chord times cosine of tilt, for tents twice that",
            WITH_RACK);
    static final Key<Integer> ROWS =
            Key.optional("rows", Kinds.count(RackRows.ROWS), "number of rows", "required for racks without row_length");
    static final Key<Double> ROW_LENGTH = Key.optional(
            "row_length",
            ROW_LENGTHS,
            "length of a row; rows is then area / (chord times row_length), or for tents half that, rounded up",
            "required for racks without rows");
    static final Key<Double> CLEARANCE =
            Key.optional("clearance", Rack.CLEARANCE, "height of a rack's lower edge above the roof", WITH_RACK);
    static final Key<BackKind> BACK = Key.assumed(
            "back",
            WordKinds.choice(BackKind.class),
            "back of a rack, open to wind and roof or closed by an insulating board",
            BackKind.OPEN,
            "racks are usually open, no source");
    static final Key<Double> BOARD_U_VALUE = Key.assumed(
            "board_u_value",
            Mounting.Back.USUAL_BOARD,
            "conductance of the board behind a boarded rack, from face to face: conductivity over thickness");
    static final Key<Double> INNER_WIND = Key.assumed(
            "inner_wind", OpenRack.USUAL_INNER, "wind at every row of racks but the first over that at the first");
    static final Key<Mounting.WindRun> WIND_RUN = Key.assumed(
            "wind_run",
            WordKinds.choice(
                    Mounting.WindRun.class, run -> run == Mounting.WindRun.CHORD ? "their own length" : "the roof"),
            "surface that the wind has run over on its way across a rack: its chord, or the roof for one whose middle lies within a tenth of its chord above it",
            Mounting.WindRun.CHORD,
            "a rack stands in the wind");
    static final Key<Double> SLOPE_LENGTH = Key.optional(
            "slope_length",
            Mounting.FlushOnPitchedRoof.SLOPE_LENGTH,
            "length of a pitched roof up the slope",
            "required for pitched roofs");

    static final SectionSchema COLLECTORS = SectionSchema.repeated(
                    "collectors",
                    "collectors of one kind, mounted one way, on one pumped circuit; several on one surface of a drawn roof are laid in"
                            + " their order, each on what those before it leave",
                    NAME,
                    AREA,
                    PANELS,
                    PANEL_AREA,
                    FLOW,
                    WATER_CONTENT,
                    DRY_WEIGHT,
                    MOUNTING,
                    GAP,
                    TILT,
                    AZIMUTH,
                    CHORD,
                    PITCH,
                    ROWS,
                    ROW_LENGTH,
                    CLEARANCE,
                    BACK,
                    BOARD_U_VALUE,
                    WIND_RUN,
                    INNER_WIND,
                    SLOPE_LENGTH)
            .with(AbsorberKeys.ABSORBER, CertificateKeys.CERTIFICATE, IncidenceKeys.INCIDENCE);

    private CollectorKeys() {}

    /** What closes the back of racks. */
    enum BackKind {
        OPEN,
        BOARDED;

        static BackKind of(Mounting.Back back) {
            return back.open() ? OPEN : BOARDED;
        }
    }

    /** How collectors are mounted. */
    enum MountingKind {
        FLAT,
        RACK,
        TENT,
        PITCHED,
        GABLE;

        static MountingKind of(RackRows rows) {
            return rows.tents() ? TENT : RACK;
        }

        static MountingKind of(Mounting.FlushOnPitchedRoof roof) {
            return roof.gable() ? GABLE : PITCHED;
        }
    }
}
