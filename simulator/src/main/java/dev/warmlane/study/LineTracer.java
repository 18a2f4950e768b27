package dev.warmlane.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Follows the line on which a difference over two variables is 0. At given places along x every change of sign along y is
 * closed in on by Brent's method; what is found at neighbouring places is linked where the sign changes the same way. A
 * branch that leaves through the low or the high end of y between two places is followed to there along x; where two branches
 * meet, the range between the places is halved a few times. Two changes of sign within one step along y would be missed.
 */
final class LineTracer {

    private static final int MOST_EVALUATIONS = 60;

    /** How often a range of x in which two branches meet is halved. */
    private static final int HALVINGS = 3;

    private final DoubleBinaryOperator difference;
    private final double[] steps;
    private final double accuracyX;
    private final double accuracyY;

    /**
     * Of a difference over x and y.
     *
     * @param difference what is 0 on the line
     * @param steps places along y that are looked at, from low to high
     * @param accuracyX how close the ends of branches are found along x; infinite where the difference is to be taken as
     *     straight from place to place, which asks for it nowhere else
     * @param accuracyY how close the line is found along y
     */
    LineTracer(DoubleBinaryOperator difference, double[] steps, double accuracyX, double accuracyY) {
        this.difference = difference;
        this.steps = steps.clone();
        this.accuracyX = accuracyX;
        this.accuracyY = accuracyY;
    }

    /** A place on the line; {@code rises}: whether the difference is above 0 above it. */
    record Vertex(double x, double y, boolean rises) {}

    /** The branches, each as places in their order along it; none where the difference has one sign everywhere. */
    List<List<Vertex>> trace(List<Double> places, Runs runs) {
        List<Column> columns = runs.map(places, this::column);
        List<List<Link>> links = runs.map(
                IntStream.range(1, places.size()).boxed().toList(),
                i -> links(columns.get(i - 1), columns.get(i), HALVINGS));
        return branches(columns, links.stream().flatMap(List::stream).toList());
    }

    /** Where the line is at a place along x, from low to high. */
    List<Double> ofColumn(double x) {
        return column(x).found.stream().map(Vertex::y).toList();
    }

    /** Where the line crosses a y between places along x, from low to high. */
    List<Double> crossings(double y, List<Double> places, Runs runs) {
        List<Integer> turning = IntStream.range(1, places.size())
                .filter(i ->
                        difference.applyAsDouble(places.get(i - 1), y) * difference.applyAsDouble(places.get(i), y) < 0)
                .boxed()
                .toList();
        return runs.map(turning, i -> alongX(places.get(i - 1), places.get(i), y));
    }

    private record Column(double x, List<Vertex> found) {}

    private record Link(Vertex one, Vertex other) {}

    private Column column(double x) {
        List<Vertex> found = new ArrayList<>();
        double before = difference.applyAsDouble(x, steps[0]);
        double from = steps[0];
        for (int i = 1; i < steps.length; i++) {
            double here = difference.applyAsDouble(x, steps[i]);
            if (before * here < 0) {
                double y = root(at -> difference.applyAsDouble(x, at), from, steps[i], accuracyY);
                found.add(new Vertex(x, y, here > 0));
            }
            // a place with a difference of just 0 has no sign: it lies within the next range
            if (here != 0) {
                before = here;
                from = steps[i];
            }
        }
        return new Column(x, found);
    }

    private double alongX(double from, double to, double y) {
        if (Double.isInfinite(accuracyX)) {
            double before = difference.applyAsDouble(from, y);
            return from + (to - from) * before / (before - difference.applyAsDouble(to, y));
        }
        return root(x -> difference.applyAsDouble(x, y), from, to, accuracyX);
    }

    private static double root(UnivariateFunction of, double low, double high, double accuracy) {
        return new BrentSolver(accuracy).solve(MOST_EVALUATIONS, of, low, high);
    }

    /** How the line goes on from one column to the next. */
    private List<Link> links(Column low, Column high, int halvings) {
        List<Link> links = new ArrayList<>();
        List<Vertex> left = new ArrayList<>(low.found);
        List<Vertex> right = new ArrayList<>(high.found);
        int shift = shift(low.found, high.found);
        for (int i = 0; i < low.found.size(); i++) {
            if (matches(low.found, i, high.found, i + shift)) {
                links.add(new Link(low.found.get(i), high.found.get(i + shift)));
                left.remove(low.found.get(i));
                right.remove(high.found.get(i + shift));
            }
        }
        List<Vertex> alone = new ArrayList<>(left);
        alone.addAll(right);
        if (!alone.isEmpty()) {
            throughAnEnd(low.x, high.x, steps[0], alone, links);
            throughAnEnd(low.x, high.x, steps[steps.length - 1], alone, links);
        }
        if (alone.size() > 1) {
            return halvings > 0 && Double.isFinite(accuracyX) ? halved(low, high, halvings) : met(alone, links);
        }
        return links;
    }

    private List<Link> halved(Column low, Column high, int halvings) {
        Column middle = column((low.x + high.x) / 2);
        List<Link> links = new ArrayList<>(links(low, middle, halvings - 1));
        links.addAll(links(middle, high, halvings - 1));
        return links;
    }

    private static List<Link> met(List<Vertex> alone, List<Link> links) {
        for (int i = 1; i < alone.size(); i += 2) {
            links.add(new Link(alone.get(i - 1), alone.get(i)));
        }
        return links;
    }

    /** Links what has no partner and lies nearest to an end of y to where the line leaves through that end, if it does. */
    private void throughAnEnd(double from, double to, double end, List<Vertex> alone, List<Link> links) {
        if (alone.isEmpty() || difference.applyAsDouble(from, end) * difference.applyAsDouble(to, end) >= 0) {
            return;
        }
        Vertex nearest = alone.stream()
                .reduce((a, b) -> Math.abs(b.y - end) < Math.abs(a.y - end) ? b : a)
                .orElseThrow();
        links.add(new Link(nearest, new Vertex(alongX(from, to, end), end, nearest.rises)));
        alone.remove(nearest);
    }

    /** By how many places the one list of crossings is to be shifted so that most match, and those the closest. */
    private static int shift(List<Vertex> low, List<Vertex> high) {
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int shift = -low.size(); shift <= high.size(); shift++) {
            double matched = 0;
            double apart = 0;
            for (int i = 0; i < low.size(); i++) {
                if (matches(low, i, high, i + shift)) {
                    matched++;
                    apart += Math.abs(low.get(i).y - high.get(i + shift).y);
                }
            }
            double worth = matched - apart / (1 + apart);
            if (worth > most) {
                most = worth;
                best = shift;
            }
        }
        return best;
    }

    private static boolean matches(List<Vertex> low, int i, List<Vertex> high, int j) {
        return j >= 0 && j < high.size() && low.get(i).rises == high.get(j).rises;
    }

    /** Chains links into branches; what is linked to nothing stands alone. */
    private static List<List<Vertex>> branches(List<Column> columns, List<Link> links) {
        Map<Vertex, List<Vertex>> neighbours = new LinkedHashMap<>();
        columns.forEach(column -> column.found.forEach(vertex -> neighbours.put(vertex, new ArrayList<>())));
        for (Link link : links) {
            neighbours.computeIfAbsent(link.one, vertex -> new ArrayList<>()).add(link.other);
            neighbours.computeIfAbsent(link.other, vertex -> new ArrayList<>()).add(link.one);
        }
        List<List<Vertex>> branches = new ArrayList<>();
        Set<Vertex> seen = new HashSet<>();
        // ends first; what is left then are rings
        for (int most : new int[] {1, 2}) {
            for (Vertex start : neighbours.keySet()) {
                if (neighbours.getOrDefault(start, List.of()).size() <= most && !seen.contains(start)) {
                    branches.add(walked(start, neighbours, seen));
                }
            }
        }
        return branches;
    }

    private static List<Vertex> walked(Vertex start, Map<Vertex, List<Vertex>> neighbours, Set<Vertex> seen) {
        List<Vertex> branch = new ArrayList<>();
        Optional<Vertex> next = Optional.of(start);
        while (next.isPresent()) {
            Vertex here = next.get();
            branch.add(here);
            seen.add(here);
            next = neighbours.getOrDefault(here, List.of()).stream()
                    .filter(vertex -> !seen.contains(vertex))
                    .findFirst();
        }
        boolean ring =
                branch.size() > 2 && neighbours.getOrDefault(start, List.of()).contains(branch.get(branch.size() - 1));
        if (ring) {
            branch.add(start);
        }
        return branch;
    }
}
