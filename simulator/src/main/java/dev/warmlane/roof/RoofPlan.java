package dev.warmlane.roof;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A roof as drawn, and the panels that are to be laid on it.
 *
 * @param surfaces its surfaces, 1 to {@link #MOST_SURFACES}, each called otherwise
 * @param rules how panels are made and put together
 */
public record RoofPlan(List<Surface> surfaces, PanelRules rules) {

    /** The most surfaces; own choice. */
    public static final int MOST_SURFACES = 20;

    /** Differences of slope and azimuth up to this are the same surface's, degrees; own choice. */
    public static final double SAME_DEG = 1;

    /** Checks number and names, and keeps its own copy of the list. */
    public RoofPlan {
        if (surfaces.isEmpty() || surfaces.size() > MOST_SURFACES) {
            throw new IllegalArgumentException(
                    "a drawn roof has 1 to " + MOST_SURFACES + " surfaces, was given " + surfaces.size());
        }
        Set<String> names = new HashSet<>();
        for (Surface surface : surfaces) {
            if (!names.add(surface.name())) {
                throw new IllegalArgumentException("two surfaces are called \"" + surface.name() + "\"");
            }
        }
        surfaces = List.copyOf(surfaces);
    }

    /** The same roof with nothing that stands up on it: its obstacles keep their place and have no height. */
    public RoofPlan withoutHeights() {
        return new RoofPlan(surfaces.stream().map(Surface::withoutHeights).toList(), rules);
    }

    /** The flat surfaces. */
    public List<Surface> flat() {
        return surfaces.stream().filter(Surface::isFlat).toList();
    }

    /** The pitched surfaces of a slope that face a direction, degrees; {@link #SAME_DEG} off at most. */
    public List<Surface> pitched(double slopeDeg, double azimuthDeg) {
        return surfaces.stream()
                .filter(surface -> !surface.isFlat()
                        && Math.abs(surface.slopeDeg() - slopeDeg) <= SAME_DEG
                        && apartDeg(surface.azimuthDeg(), azimuthDeg) <= SAME_DEG)
                .toList();
    }

    /**
     * The rectangle that stands for the roof where the wind runs over it: as large as the largest flat surface (the
     * largest of all where none is flat), in the proportions of the rectangle around it along its longest edge. The
     * longer side, then the shorter, m.
     */
    public double[] windSidesM() {
        Surface largest = largest();
        Frame frame = new Frame(largest.alongDeg());
        double[] u = largest.outline().corners().stream()
                .mapToDouble(frame::u)
                .sorted()
                .toArray();
        double[] v = largest.outline().corners().stream()
                .mapToDouble(frame::v)
                .sorted()
                .toArray();
        double along = u[u.length - 1] - u[0];
        double across = v[v.length - 1] - v[0];
        double scale = Math.sqrt(largest.outline().areaM2() / (along * across));
        return new double[] {scale * Math.max(along, across), scale * Math.min(along, across)};
    }

    /**
     * The direction square to the edges of the largest flat surface that is nearest to a wanted one, degrees clockwise
     * from north.
     */
    public double squareFacingDeg(double wantedDeg) {
        return largest().squareFacingDeg(wantedDeg);
    }

    private Surface largest() {
        return (flat().isEmpty() ? surfaces : flat())
                .stream()
                        .max(Comparator.comparingDouble(
                                surface -> surface.outline().areaM2()))
                        .orElseThrow();
    }

    /** How far two directions are apart, degrees, 0 to 180. */
    public static double apartDeg(double one, double other) {
        double apart = Math.abs(one - other) % 360;
        return Math.min(apart, 360 - apart);
    }
}
