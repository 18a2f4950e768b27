package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Finds where the ranking of a flat array and racks with the same area turns: each {@link TurningVariable} is scanned in
 * equal steps, and every step over which the sign of the difference changes is closed in on by Brent's method. Two
 * crossings within one step would be missed.
 *
 * @param flat name of the one mounting
 * @param racks name of the other
 * @param points what was found, one for each variable that the racks have
 */
public record TurningPoints(String flat, String racks, List<TurningPoint> points) {

    /** Crossings are found to this share of the variable's range. */
    static final double ACCURACY = 1e-4;

    private static final int MOST_EVALUATIONS = 60;

    /** Keeps its own copy of the list. */
    public TurningPoints {
        points = List.copyOf(points);
    }

    /**
     * Finds the turning points.
     *
     * @param template an installation with collectors, all of them taken as one array of the first's kind
     * @param weather the typical year
     * @param flat the one mounting
     * @param racks the other
     * @param runs how to run, and who hears of it: the scan first, then the crossings
     * @throws IllegalArgumentException if the rows cannot be spaced as the racks ask
     */
    public static TurningPoints of(
            Installation template,
            WeatherYear weather,
            MountingOption.Flat flat,
            MountingOption.Racks racks,
            Runs runs) {
        return of(new MountingDuel(template, new SharedForcing(weather), flat, racks), runs);
    }

    /**
     * Finds the turning points of two that are put up already.
     *
     * @param duel the two
     * @param runs how to run, and who hears of it: the scan first, then the crossings
     */
    public static TurningPoints of(MountingDuel duel, Runs runs) {
        MountingOption.Flat flat = duel.pair().flat();
        MountingOption.Racks racks = duel.pair().racks();
        List<Sample> asked = new ArrayList<>();
        for (TurningVariable variable : duel.variables()) {
            double from = duel.lowest(variable);
            for (int step = 0; step <= variable.steps(); step++) {
                double value = step == variable.steps()
                        ? variable.to()
                        : from + (variable.to() - from) * step / variable.steps();
                asked.add(new Sample(variable, value, 0));
            }
        }
        List<Sample> scan = runs.map(
                asked,
                s -> new Sample(
                        s.variable, s.value, duel.at(s.variable, s.value).margin()));
        List<Bracket> brackets = brackets(scan);
        List<Double> roots = runs.map(brackets, bracket -> root(duel, bracket));
        List<TurningPoint> points = new ArrayList<>();
        for (TurningVariable variable : duel.variables()) {
            List<TurningPoint.Crossing> crossings = new ArrayList<>();
            for (int i = 0; i < brackets.size(); i++) {
                if (brackets.get(i).low.variable == variable) {
                    boolean flatBelow = brackets.get(i).low.margin > 0;
                    crossings.add(new TurningPoint.Crossing(
                            roots.get(i),
                            duel.at(variable, roots.get(i)).flat(),
                            flatBelow ? flat.name() : racks.name(),
                            flatBelow ? racks.name() : flat.name()));
                }
            }
            points.add(new TurningPoint(
                    variable,
                    duel.lowest(variable),
                    variable.to(),
                    duel.now(variable),
                    crossings.isEmpty() ? none(variable, scan, flat, racks) : new TurningPoint.Crossings(crossings)));
        }
        return new TurningPoints(flat.name(), racks.name(), points);
    }

    /** Neighbours in the scan of which one is ahead in the one and the other in the other. */
    private static List<Bracket> brackets(List<Sample> scan) {
        List<Bracket> brackets = new ArrayList<>();
        for (int i = 1; i < scan.size(); i++) {
            Sample low = scan.get(i - 1);
            Sample high = scan.get(i);
            if (low.variable == high.variable && low.margin > 0 != high.margin > 0) {
                brackets.add(new Bracket(low, high));
            }
        }
        return brackets;
    }

    private static double root(MountingDuel duel, Bracket bracket) {
        TurningVariable variable = bracket.low.variable;
        BrentSolver solver = new BrentSolver(ACCURACY * (variable.to() - variable.from()));
        return solver.solve(
                MOST_EVALUATIONS, value -> duel.at(variable, value).margin(), bracket.low.value, bracket.high.value);
    }

    private static TurningPoint.NoneInRange none(
            TurningVariable variable, List<Sample> scan, MountingOption flat, MountingOption racks) {
        Sample nearest = scan.stream()
                .filter(s -> s.variable == variable)
                .reduce((a, b) -> Math.abs(b.margin) < Math.abs(a.margin) ? b : a)
                .orElseThrow();
        return new TurningPoint.NoneInRange(
                nearest.margin > 0 ? flat.name() : racks.name(), Math.abs(nearest.margin), nearest.value);
    }

    /** A value of a variable and by how much flat is ahead there, kWh per m² a season. */
    private record Sample(TurningVariable variable, double value, double margin) {}

    private record Bracket(Sample low, Sample high) {}
}
