package dev.warmlane.scenario;

import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;

/** Writes a roof as it is drawn. */
final class DrawnWriter {

    private DrawnWriter() {}

    static void write(TomlText out, RoofPlan plan) {
        for (Surface surface : plan.surfaces()) {
            out.section("[[surface]]")
                    .key(DrawnKeys.NAME, surface.name())
                    .key(DrawnKeys.OUTLINE, surface.outline())
                    .key(DrawnKeys.AZIMUTH, surface.azimuthDeg())
                    .key(DrawnKeys.SLOPE, surface.slopeDeg())
                    .key(DrawnKeys.HEIGHT, surface.heightM())
                    .key(DrawnKeys.PARAPET, surface.parapetM())
                    .key(DrawnKeys.EDGE_DISTANCE, surface.edgeDistanceM());
            surface.obstacles().forEach(obstacle -> obstacle(out, surface, obstacle));
        }
        PanelRules rules = plan.rules();
        out.section("[layout]").key(DrawnKeys.PANEL_WIDTH, rules.widthM());
        rules.lengths().match(fixed -> out.key(DrawnKeys.PANEL_LENGTHS, fixed), cut -> out.key(
                        DrawnKeys.CUT_SHORTEST, cut.shortestM())
                .key(DrawnKeys.CUT_LONGEST, cut.longestM()));
        out.key(DrawnKeys.HEADERS, rules.headerEnds())
                .key(DrawnKeys.HEADER_ROOM, rules.headerM())
                .key(DrawnKeys.PANELS_PER_BANK, rules.panelsPerBank())
                .key(DrawnKeys.WALKWAY, rules.walkwayM())
                .key(DrawnKeys.SPLITS_AROUND, rules.splitsAroundM());
    }

    private static void obstacle(TomlText out, Surface surface, Obstacle obstacle) {
        out.section("[[obstacle]]").key(DrawnKeys.NAME, obstacle.name()).key(DrawnKeys.ON, surface.name());
        obstacle.shape()
                .match(
                        disc -> out.key(DrawnKeys.X, disc.centre().xM())
                                .key(DrawnKeys.Y, disc.centre().yM())
                                .key(DrawnKeys.DIAMETER, disc.diameterM()),
                        block -> out.key(DrawnKeys.OBSTACLE_OUTLINE, block.outline()));
        out.key(DrawnKeys.OBSTACLE_HEIGHT, obstacle.heightM()).key(DrawnKeys.CLEARANCE, obstacle.clearanceM());
    }
}
