package dev.warmlane.scenario;

import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.Surface;
import dev.warmlane.site.Roof;

/** Keys of a roof as it is drawn: the sections surface, obstacle and layout. */
final class DrawnKeys {

    private static final String WITHOUT_OUTLINE = "required without outline";

    static final Key<String> NAME =
            Key.optional("name", WordKinds.text(), "what it is called on the drawing", "its section and a number");

    static final Key<Double> LENGTH = Key.optional(
            "length", Roof.LENGTH, "side of a rectangle along its reference edge, which is x", WITHOUT_OUTLINE);
    static final Key<Double> WIDTH = Key.optional(
            "width",
            Roof.WIDTH,
            "side of a rectangle away from that edge, up the slope, which is y; in true length, not as seen from above",
            WITHOUT_OUTLINE);
    static final Key<Outline> OUTLINE = Key.optional(
            "outline",
            new PointsKind(),
            "corners of any other shape as one walks around it, in true lengths: x along the reference edge to the right"
                    + " of whoever looks along y, y away from it",
            "a rectangle of length and width with a corner at \"0 m, 0 m\"");
    static final Key<Double> AZIMUTH = Key.required(
            "azimuth",
            Surface.AZIMUTH,
            "direction that the reference edge faces, against y, clockwise from north; on a pitched roof where it falls");
    static final Key<Double> SLOPE = Key.assumed(
            "slope",
            Surface.USUAL_SLOPE,
            "slope of the surface; up to 5 deg it is a flat roof, on which mats lie and racks stand");
    static final Key<Double> HEIGHT =
            Key.optional("height", Roof.HEIGHT, "height of the surface above the ground", "that of the roof");
    static final Key<Double> PARAPET =
            Key.assumed("parapet", Surface.USUAL_PARAPET, "height of the parapet around it, which shades the panels");
    static final Key<Double> EDGE_DISTANCE = Key.assumed(
            "edge_distance", Surface.USUAL_EDGE_DISTANCE, "how far panels and headers stay away from every edge");

    static final SectionSchema SURFACE = SectionSchema.repeated(
            "surface",
            "a surface of the roof as it is drawn, for the layout",
            NAME,
            LENGTH,
            WIDTH,
            OUTLINE,
            AZIMUTH,
            SLOPE,
            HEIGHT,
            PARAPET,
            EDGE_DISTANCE);

    static final Key<String> ON = Key.optional(
            "on", WordKinds.text(), "name of the surface that it stands on", "required where there are several");
    static final Key<Double> X = Key.optional("x", RoofPoint.COORDINATE, "x of its middle", WITHOUT_OUTLINE);
    static final Key<Double> Y = Key.optional("y", RoofPoint.COORDINATE, "y of its middle", WITHOUT_OUTLINE);
    static final Key<Double> DIAMETER =
            Key.optional("diameter", Obstacle.DIAMETER, "diameter of a round one", "it is not round");
    static final Key<Double> SIDE_X =
            Key.optional("length", Obstacle.SIDE, "side of a rectangle along x", "required without diameter");
    static final Key<Double> SIDE_Y =
            Key.optional("width", Obstacle.SIDE, "side of a rectangle along y", "required without diameter");
    static final Key<Outline> OBSTACLE_OUTLINE = Key.optional(
            "outline", new PointsKind(), "corners of any other shape, in the surface's x and y", "it has a middle");
    static final Key<Double> OBSTACLE_HEIGHT =
            Key.assumed("height", Obstacle.USUAL_HEIGHT, "how far it stands up and shades the panels");
    static final Key<Double> CLEARANCE =
            Key.assumed("clearance", Obstacle.USUAL_CLEARANCE, "how far panels and headers stay away from it");

    static final SectionSchema OBSTACLE = SectionSchema.repeated(
            "obstacle",
            "something that stands on a surface or opens it: vent, chimney, skylight",
            NAME,
            ON,
            X,
            Y,
            DIAMETER,
            SIDE_X,
            SIDE_Y,
            OBSTACLE_OUTLINE,
            OBSTACLE_HEIGHT,
            CLEARANCE);

    static final Key<String> DRAWING = Key.optional(
            "drawing",
            WordKinds.text(),
            "file of surfaces and obstacles as GeoJSON in metres, seen from the folder of the scenario file; instead of"
                    + " [[surface]] and [[obstacle]]",
            "what is drawn here");
    static final Key<Double> PANEL_WIDTH =
            Key.required("panel_width", PanelRules.WIDTH, "width of a panel, across its tubes");
    static final Key<PanelRules.Fixed> PANEL_LENGTHS = Key.optional(
            "panel_lengths",
            new LengthsKind(),
            "lengths that panels are made in, along their tubes, without headers: one or a list",
            "required without cut_longest");
    static final Key<Double> CUT_SHORTEST = Key.optional(
            "cut_shortest",
            PanelRules.LENGTH,
            "shortest panel where they are cut to length",
            "required with cut_longest");
    static final Key<Double> CUT_LONGEST = Key.optional(
            "cut_longest",
            PanelRules.LENGTH,
            "longest panel where they are cut to length",
            "panels have fixed lengths");
    static final Key<PanelRules.HeaderEnds> HEADERS = Key.assumed(
            "headers",
            WordKinds.choice(PanelRules.HeaderEnds.class),
            "at which ends of a panel its two headers are",
            PanelRules.HeaderEnds.BOTH,
            "common practice, no source");
    static final Key<Double> HEADER_ROOM = Key.assumed(
            "header_room", PanelRules.USUAL_HEADER, "what the headers at one end take of the roof beyond the panel");
    static final Key<Integer> PANELS_PER_BANK = Key.assumed(
            "panels_per_bank",
            Kinds.count(PanelRules.PER_BANK),
            "the most panels side by side on one pair of headers",
            (int) PanelRules.USUAL_PER_BANK.value(),
            PanelRules.USUAL_PER_BANK.source());
    static final Key<Double> WALKWAY =
            Key.assumed("walkway", PanelRules.USUAL_WALKWAY, "way that is left free between banks, in both directions");
    static final Key<Double> SPLITS_AROUND = Key.assumed(
            "splits_around",
            PanelRules.USUAL_SPLITS_AROUND,
            "widest obstacle, across the tubes, that the tubes of a mat are parted around");

    static final SectionSchema LAYOUT = SectionSchema.optional(
            "layout",
            "how panels are made and put together on a roof that is drawn; there [[collectors]] may leave out area, for the most"
                    + " that fits, panel_area and rows",
            DRAWING,
            PANEL_WIDTH,
            PANEL_LENGTHS,
            CUT_SHORTEST,
            CUT_LONGEST,
            HEADERS,
            HEADER_ROOM,
            PANELS_PER_BANK,
            WALKWAY,
            SPLITS_AROUND);

    private DrawnKeys() {}
}
