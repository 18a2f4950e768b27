package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Where panels may be on a surface, seen in a {@link Frame}. */
final class FreeArea {

    private final Frame frame;
    private final double[][] edges;
    private final List<Blocked> blocked;

    /** The obstacles among them, which mats may be split around. */
    private final List<Blocked> obstacles;

    /**
     * What is left of a surface.
     *
     * @param taken what others take of it
     */
    FreeArea(Surface surface, Frame frame, List<Blocked> taken) {
        this.frame = frame;
        this.edges = Shapes.inside(surface.outline(), surface.edgeDistanceM()).stream()
                .flatMap(ring -> Arrays.stream(Blocked.edges(ring, frame)))
                .toArray(double[][]::new);
        this.obstacles = surface.obstacles().stream()
                .map(obstacle -> Blocked.of(obstacle, frame))
                .toList();
        this.blocked = Stream.concat(obstacles.stream(), taken.stream()).toList();
    }

    Frame frame() {
        return frame;
    }

    /** Whether there is none. */
    boolean isEmpty() {
        return edges.length == 0;
    }

    /** The v where something begins or ends, in their order. */
    double[] turns() {
        Set<Double> turns = new TreeSet<>();
        for (double[] edge : edges) {
            turns.add(edge[1]);
        }
        double low = lowest();
        double high = highest();
        for (Blocked one : blocked) {
            for (double v : new double[] {one.vLowest(), one.vHighest()}) {
                if (v > low && v < high) {
                    turns.add(Frame.whole(v));
                }
            }
        }
        return turns.stream().mapToDouble(v -> v).toArray();
    }

    double lowest() {
        return Arrays.stream(edges).mapToDouble(edge -> edge[1]).min().orElse(0);
    }

    double highest() {
        return Arrays.stream(edges).mapToDouble(edge -> edge[1]).max().orElse(0);
    }

    /** The obstacles that panels with their tubes along v may be split around. */
    List<Blocked> splittable(double widestM) {
        return obstacles.stream()
                .filter(one -> widestM > 0 && one.widthM() <= widestM + Blocked.ROUNDING_M)
                .toList();
    }

    /**
     * Where a strip from v to v is free over its whole depth: pairs of u in their order.
     *
     * @param ignored obstacles that are no hindrance there
     */
    List<double[]> free(double from, double to, List<Blocked> ignored) {
        List<double[]> walls = new ArrayList<>();
        for (double[] edge : edges) {
            double[] wall = Blocked.clipped(edge, from + Blocked.ROUNDING_M, to - Blocked.ROUNDING_M);
            if (wall.length > 0) {
                walls.add(wall);
            }
        }
        int edgeWalls = walls.size();
        for (Blocked one : blocked) {
            if (!ignored.contains(one)) {
                double[] wall = one.across(from, to);
                if (wall.length > 0) {
                    walls.add(wall);
                }
            }
        }
        if (edgeWalls == 0) {
            return List.of();
        }
        walls.sort(Comparator.comparingDouble(wall -> wall[0]));
        List<double[]> free = new ArrayList<>();
        double reached = walls.get(0)[1];
        for (double[] wall : walls) {
            if (wall[0] > reached + Blocked.ROUNDING_M && isInside((reached + wall[0]) / 2, (from + to) / 2)) {
                free.add(new double[] {reached, wall[0]});
            }
            reached = Math.max(reached, wall[1]);
        }
        return free;
    }

    /** By the number of edges that a ray along u crosses. */
    private boolean isInside(double u, double v) {
        boolean inside = false;
        for (double[] edge : edges) {
            if (edge[1] > v != edge[3] > v) {
                double crossing = edge[0] + (v - edge[1]) / (edge[3] - edge[1]) * (edge[2] - edge[0]);
                inside ^= crossing > u;
            }
        }
        return inside;
    }
}
