package dev.warmlane.roof;

import java.util.List;

/** What an obstacle takes away of a surface, in a {@link Frame}: its own extent and the same with its clearance. */
final class Blocked {

    /** Less than this is rounding, m. */
    static final double ROUNDING_M = 2e-6;

    private final double uLow;
    private final double uHigh;
    private final double vLow;
    private final double vHigh;
    private final double clearanceM;

    /** A disc's middle and radius with its clearance; no radius for straight edges. */
    private final double uMiddle;

    private final double vMiddle;
    private final double radiusM;
    private final double[][] edges;
    private final double vLowest;
    private final double vHighest;

    private Blocked(double[][] own, double clearanceM, double[] disc, double[][] edges) {
        this.uLow = own[0][0];
        this.uHigh = own[0][1];
        this.vLow = own[1][0];
        this.vHigh = own[1][1];
        this.clearanceM = clearanceM;
        this.uMiddle = disc[0];
        this.vMiddle = disc[1];
        this.radiusM = disc[2];
        this.edges = edges;
        this.vLowest = radiusM > 0 ? vMiddle - radiusM : extent(edges)[1][0];
        this.vHighest = radiusM > 0 ? vMiddle + radiusM : extent(edges)[1][1];
    }

    static Blocked of(Obstacle obstacle, Frame frame) {
        double clearance = obstacle.clearanceM();
        return obstacle.shape()
                .match(
                        disc -> {
                            double u = frame.u(disc.centre());
                            double v = frame.v(disc.centre());
                            double r = disc.diameterM() / 2;
                            double[][] own = {{u - r, u + r}, {v - r, v + r}};
                            return new Blocked(own, clearance, new double[] {u, v, r + clearance}, new double[0][]);
                        },
                        block -> {
                            double[][] own = extent(edges(block.outline().corners(), frame));
                            double[][] around = edges(Shapes.around(block.outline(), clearance), frame);
                            return new Blocked(own, clearance, new double[3], around);
                        });
    }

    /** A shape without hollows, its clearance within it, by the u and v of its corners. */
    static Blocked of(double[][] corners) {
        double[][] edges = new double[corners.length][];
        for (int i = 0; i < edges.length; i++) {
            double[] to = corners[(i + 1) % edges.length];
            edges[i] = new double[] {corners[i][0], corners[i][1], to[0], to[1]};
        }
        return new Blocked(extent(edges), 0, new double[3], edges);
    }

    /** Edges of a ring: u and v of both ends. */
    static double[][] edges(List<RoofPoint> ring, Frame frame) {
        double[][] edges = new double[ring.size()][];
        for (int i = 0; i < edges.length; i++) {
            RoofPoint from = ring.get(i);
            RoofPoint to = ring.get((i + 1) % edges.length);
            edges[i] = new double[] {frame.u(from), frame.v(from), frame.u(to), frame.v(to)};
        }
        return edges;
    }

    private static double[][] extent(double[][] edges) {
        double[][] extent = {
            {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}, {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}
        };
        for (double[] edge : edges) {
            for (int axis = 0; axis < 2; axis++) {
                extent[axis][0] = Math.min(extent[axis][0], edge[axis]);
                extent[axis][1] = Math.max(extent[axis][1], edge[axis]);
            }
        }
        return extent;
    }

    /** Its least v with its clearance. */
    double vLowest() {
        return vLowest;
    }

    /** Its greatest v with its clearance. */
    double vHighest() {
        return vHighest;
    }

    /** How wide it is across tubes that run along v. */
    double widthM() {
        return uHigh - uLow;
    }

    /** Whether it or its clearance reaches into a strip from v to v, even where that has no depth. */
    boolean reaches(double from, double to) {
        return vLow - clearanceM < to - ROUNDING_M && vHigh + clearanceM > from + ROUNDING_M;
    }

    /** Whether all of it lies between two v, with its clearance. */
    boolean isWithin(double from, double to) {
        return vLow - clearanceM > from - ROUNDING_M && vHigh + clearanceM < to + ROUNDING_M;
    }

    /** Whether a bank from u to u has it neither wholly inside nor wholly outside with its clearance. */
    boolean straddles(double from, double to) {
        boolean inside = uLow > from - ROUNDING_M && uHigh < to + ROUNDING_M;
        boolean outside = uHigh + clearanceM < from + ROUNDING_M || uLow - clearanceM > to - ROUNDING_M;
        return !inside && !outside;
    }

    /** What it takes, with its clearance, of a strip from v to v: lowest and highest u; nothing where it takes nothing. */
    double[] across(double from, double to) {
        if (radiusM > 0) {
            double beside = Math.max(0, Math.max(from - vMiddle, vMiddle - to));
            if (beside >= radiusM - ROUNDING_M) {
                return new double[0];
            }
            double half = Math.sqrt(radiusM * radiusM - beside * beside);
            return new double[] {uMiddle - half, uMiddle + half};
        }
        if (vHighest <= from + ROUNDING_M || vLowest >= to - ROUNDING_M) {
            return new double[0];
        }
        double[] taken = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (double[] edge : edges) {
            double[] part = clipped(edge, from + ROUNDING_M, to - ROUNDING_M);
            if (part.length > 0) {
                taken[0] = Math.min(taken[0], part[0]);
                taken[1] = Math.max(taken[1], part[1]);
            }
        }
        return taken[0] <= taken[1] ? taken : new double[0];
    }

    /** Lowest and highest u of the part of an edge between two v; nothing where no part is. */
    static double[] clipped(double[] edge, double from, double to) {
        double v1 = edge[1];
        double v2 = edge[3];
        if (Math.max(v1, v2) <= from || Math.min(v1, v2) >= to) {
            return new double[0];
        }
        if (v1 == v2) {
            return new double[] {Math.min(edge[0], edge[2]), Math.max(edge[0], edge[2])};
        }
        double u1 = uAt(edge, Math.max(from, Math.min(to, v1)));
        double u2 = uAt(edge, Math.max(from, Math.min(to, v2)));
        return new double[] {Math.min(u1, u2), Math.max(u1, u2)};
    }

    private static double uAt(double[] edge, double v) {
        if (v == edge[1]) {
            return edge[0];
        }
        return v == edge[3] ? edge[2] : edge[0] + (v - edge[1]) / (edge[3] - edge[1]) * (edge[2] - edge[0]);
    }
}
