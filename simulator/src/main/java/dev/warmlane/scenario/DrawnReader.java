package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofDrawing;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.Surface;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads a roof as it is drawn. */
final class DrawnReader {

    private DrawnReader() {}

    /**
     * The drawn roof; nothing where none is drawn, or where anything about it is wrong.
     *
     * @param roofHeightM height of surfaces that have none of their own
     * @param scenarioFile from whose folder a drawing is seen
     */
    static @Nullable RoofPlan plan(
            List<Document.Group> surfaces,
            List<Document.Group> obstacles,
            Section layout,
            double roofHeightM,
            Path scenarioFile) {
        if (layout.has(DrawnKeys.DRAWING)) {
            return drawing(surfaces, obstacles, layout, roofHeightM, scenarioFile);
        }
        if (surfaces.isEmpty()) {
            obstacles.forEach(one -> one.main().error("stands on no surface; draw one, [[surface]]"));
            if (layout.present()) {
                layout.error("is for a roof that is drawn; draw its surfaces, [[surface]] or drawing, or leave it out");
            }
            return null;
        }
        if (!layout.present()) {
            layout.error("missing section; " + DrawnKeys.LAYOUT.meaning() + "; it needs " + DrawnKeys.LAYOUT.needs());
            return null;
        }
        Map<String, List<Obstacle>> standing = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < surfaces.size(); i++) {
            names.add(name(surfaces.get(i).main(), "surface", i));
        }
        for (int i = 0; i < obstacles.size(); i++) {
            obstacle(obstacles.get(i).main(), i, names, standing);
        }
        List<Surface> drawn = new ArrayList<>();
        boolean failed = obstacles.stream().anyMatch(one -> one.main().hasFailed());
        for (int i = 0; i < surfaces.size(); i++) {
            List<Obstacle> on = standing.getOrDefault(names.get(i), List.of());
            Surface surface = surface(surfaces.get(i).main(), names.get(i), roofHeightM, on);
            failed |= surface == null;
            if (surface != null) {
                drawn.add(surface);
            }
        }
        PanelRules rules = rules(layout);
        return failed || rules == null ? null : layout.build(() -> new RoofPlan(drawn, rules));
    }

    private static @Nullable RoofPlan drawing(
            List<Document.Group> surfaces,
            List<Document.Group> obstacles,
            Section layout,
            double roofHeightM,
            Path scenarioFile) {
        Stream.concat(surfaces.stream(), obstacles.stream())
                .forEach(one -> one.main().error("not allowed with layout.drawing; draw it here or there"));
        List<Surface> drawn = layout.sound(DrawnKeys.DRAWING) ? drawn(layout, roofHeightM, scenarioFile) : List.of();
        PanelRules rules = rules(layout);
        return drawn.isEmpty() || rules == null ? null : layout.build(() -> new RoofPlan(drawn, rules));
    }

    /** The surfaces of a file; none where it cannot be read. */
    private static List<Surface> drawn(Section layout, double roofHeightM, Path scenarioFile) {
        String named = layout.get(DrawnKeys.DRAWING);
        String quoted = Printable.quote(named);
        try {
            return RoofDrawing.read(scenarioFile.resolveSibling(named), roofHeightM);
        } catch (NoSuchFileException | InvalidPathException e) {
            layout.error(DrawnKeys.DRAWING, "no such file: " + quoted + ", seen from the folder of the scenario file");
        } catch (FileSystemException e) {
            layout.error(DrawnKeys.DRAWING, "cannot be read: " + quoted + " " + e.getReason());
        } catch (IOException e) {
            layout.error(DrawnKeys.DRAWING, "cannot be read: " + quoted);
        } catch (IllegalArgumentException e) {
            layout.error(
                    DrawnKeys.DRAWING,
                    PlaceReader.isNear(layout, DrawnKeys.DRAWING, scenarioFile)
                            ? quoted + " " + e.getMessage()
                            : quoted + " is no roof drawing; put it beside the scenario to be told what is wrong");
        }
        return List.of();
    }

    private static String name(Section s, String otherwise, int index) {
        return s.has(DrawnKeys.NAME) ? s.get(DrawnKeys.NAME) : otherwise + " " + (index + 1);
    }

    private static @Nullable Surface surface(Section s, String name, double roofHeightM, List<Obstacle> obstacles) {
        Outline outline;
        if (s.has(DrawnKeys.OUTLINE)) {
            s.refuse("not allowed with outline", DrawnKeys.LENGTH, DrawnKeys.WIDTH);
            outline = s.get(DrawnKeys.OUTLINE);
        } else {
            outline = Outline.rectangle(s.get(DrawnKeys.LENGTH), s.get(DrawnKeys.WIDTH));
        }
        double azimuth = s.get(DrawnKeys.AZIMUTH);
        double slope = s.get(DrawnKeys.SLOPE);
        double height = s.has(DrawnKeys.HEIGHT) ? s.get(DrawnKeys.HEIGHT) : roofHeightM;
        double parapet = s.get(DrawnKeys.PARAPET);
        double edge = s.get(DrawnKeys.EDGE_DISTANCE);
        return s.build(() -> new Surface(name, outline, azimuth, slope, height, parapet, edge, obstacles));
    }

    private static void obstacle(Section s, int index, List<String> surfaces, Map<String, List<Obstacle>> standing) {
        String name = name(s, "obstacle", index);
        Obstacle.@Nullable Shape shape = shape(s);
        double height = s.get(DrawnKeys.OBSTACLE_HEIGHT);
        double clearance = s.get(DrawnKeys.CLEARANCE);
        String on = s.has(DrawnKeys.ON) || surfaces.size() > 1 ? s.get(DrawnKeys.ON) : surfaces.get(0);
        if (s.sound(DrawnKeys.ON) && s.has(DrawnKeys.ON) && !surfaces.contains(on)) {
            s.error(
                    DrawnKeys.ON,
                    "no surface is called " + BadValueException.show(on) + "; allowed: \""
                            + String.join("\", \"", surfaces) + "\"");
        }
        Obstacle obstacle = s.build(() -> new Obstacle(name, Objects.requireNonNull(shape), height, clearance));
        if (obstacle != null) {
            standing.computeIfAbsent(on, key -> new ArrayList<>()).add(obstacle);
        }
    }

    private static Obstacle.@Nullable Shape shape(Section s) {
        if (s.has(DrawnKeys.OBSTACLE_OUTLINE)) {
            s.refuse(
                    "not allowed with outline",
                    DrawnKeys.X,
                    DrawnKeys.Y,
                    DrawnKeys.DIAMETER,
                    DrawnKeys.SIDE_X,
                    DrawnKeys.SIDE_Y);
            return new Obstacle.Block(s.get(DrawnKeys.OBSTACLE_OUTLINE));
        }
        double x = s.get(DrawnKeys.X);
        double y = s.get(DrawnKeys.Y);
        if (s.has(DrawnKeys.DIAMETER)) {
            s.refuse("not allowed with diameter; it is round or a rectangle", DrawnKeys.SIDE_X, DrawnKeys.SIDE_Y);
            double diameter = s.get(DrawnKeys.DIAMETER);
            return s.build(() -> new Obstacle.Disc(new RoofPoint(x, y), diameter));
        }
        double length = s.get(DrawnKeys.SIDE_X);
        double width = s.get(DrawnKeys.SIDE_Y);
        return s.build(() -> Obstacle.Block.around(new RoofPoint(x, y), length, width));
    }

    private static @Nullable PanelRules rules(Section s) {
        double width = s.get(DrawnKeys.PANEL_WIDTH);
        PanelRules.@Nullable Lengths lengths;
        if (s.has(DrawnKeys.CUT_LONGEST) || s.has(DrawnKeys.CUT_SHORTEST)) {
            s.refuse("not allowed where panels are cut to length", DrawnKeys.PANEL_LENGTHS);
            double shortest = s.get(DrawnKeys.CUT_SHORTEST);
            double longest = s.get(DrawnKeys.CUT_LONGEST);
            lengths = s.build(() -> new PanelRules.Cut(shortest, longest));
        } else {
            lengths = s.get(DrawnKeys.PANEL_LENGTHS);
        }
        PanelRules.HeaderEnds headers = s.get(DrawnKeys.HEADERS);
        double room = s.get(DrawnKeys.HEADER_ROOM);
        int perBank = s.get(DrawnKeys.PANELS_PER_BANK);
        double walkway = s.get(DrawnKeys.WALKWAY);
        double splits = s.get(DrawnKeys.SPLITS_AROUND);
        return s.build(
                () -> new PanelRules(width, Objects.requireNonNull(lengths), headers, room, perBank, walkway, splits));
    }
}
