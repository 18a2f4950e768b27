package dev.warmlane.study;

import dev.warmlane.study.MountingDuel.Heats;
import dev.warmlane.study.TurningVariable.Extent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;

/**
 * Flat against racks over how light the roof is, x, and how much wind the inner rows have, y: two things of a roof that are
 * seldom known, that say nothing of flat mats and much of racks. At each place of the map the whole season is simulated, the
 * pool at its own temperature, with the same collector area. Of a season there is but one point, because a roof is the same
 * all through it.
 *
 * <p>The line on which both give the same is found by Brent's method along the wind at {@link #COLUMNS} albedos and at the
 * roof's own, and along the albedo where it leaves the map. Where one leads by {@link LeadMap#NO_LEAD_BELOW} is read off
 * a cubic spline through the seasons simulated at each albedo, those on the line among them.
 */
public final class RoofMap {

    /** Albedos at which the line is looked for, beside the roof's own. */
    public static final int COLUMNS = 5;

    private static final Extent ALBEDO = TurningVariable.ROOF_ALBEDO.extent();
    private static final Extent INNER = TurningVariable.INNER_WIND.extent();

    /** Steps of the scan along the wind: the lead bends so little over it that it does not turn twice within one. */
    private static final int INNER_STEPS = 3;

    /** Lines are found to this share of the ranges: less than a pixel of the chart. */
    private static final double ACCURACY = 1e-3;

    private final MountingDuel duel;
    private final Runs runs;
    private final double albedo;
    private final double innerWind;
    private final List<Double> albedos;
    private final double[] winds = INNER.cut(INNER_STEPS);

    private RoofMap(MountingDuel duel, Runs runs) {
        this.duel = duel;
        this.runs = runs;
        this.albedo = duel.now(TurningVariable.ROOF_ALBEDO);
        this.innerWind = duel.now(TurningVariable.INNER_WIND);
        TreeSet<Double> scan = new TreeSet<>(List.of(albedo));
        DoubleStream.of(ALBEDO.cut(COLUMNS - 1)).forEach(scan::add);
        this.albedos = List.copyOf(scan);
    }

    /**
     * Draws the map of two mountings.
     *
     * @param duel the two
     * @param runs how to run, and who hears of it
     * @return nothing where the racks stand in one row, which has no inner ones
     */
    public static Optional<LeadMap> of(MountingDuel duel, Runs runs) {
        return duel.variables().contains(TurningVariable.INNER_WIND)
                ? Optional.of(new RoofMap(duel, runs).drawn())
                : Optional.empty();
    }

    private LeadMap drawn() {
        LeadMap.Field simulated = duel::onRoof;
        List<LeadMap.Place> scanned = runs.map(
                albedos.stream()
                        .flatMap(a -> Arrays.stream(winds).mapToObj(w -> new double[] {a, w}))
                        .toList(),
                at -> simulated.place(at[0], at[1]));
        LineTracer tracer =
                new LineTracer(simulated.beyond(0), winds, ACCURACY * ALBEDO.width(), ACCURACY * INNER.width());
        List<List<LineTracer.Vertex>> even = tracer.trace(albedos, runs);
        return new LeadMap(
                duel.pair(),
                ALBEDO,
                INNER,
                simulated.lines(even),
                leading(even, LeadMap.NO_LEAD_BELOW),
                leading(even, -LeadMap.NO_LEAD_BELOW),
                scanned,
                simulated.place(albedo, innerWind),
                tracer.crossings(innerWind, albedos, runs),
                tracer.ofColumn(albedo));
    }

    /** Where one leads by a share, below 0 the racks: from what is simulated at the albedos already. */
    private List<LeadMap.Line> leading(List<List<LineTracer.Vertex>> even, double lead) {
        LeadMap.Field between = (a, w) -> between(a, nodes(a, even), w);
        LineTracer tracer =
                new LineTracer(between.beyond(lead), winds, Double.POSITIVE_INFINITY, ACCURACY * INNER.width());
        // the flat array's heat does not change over the map, so that a lead tells that of the racks
        double flat = duel.onRoof(albedo, innerWind).flat();
        Heats there = new Heats(flat, lead < 0 ? flat * (1 - lead) : flat / (1 + lead));
        LeadMap.Field equal = (a, w) -> there;
        return equal.lines(tracer.trace(albedos, runs));
    }

    /** The winds of the scan, and where both give the same: nothing is nearer to where one leads by a little. */
    private double[] nodes(double at, List<List<LineTracer.Vertex>> even) {
        return DoubleStream.concat(
                        Arrays.stream(winds),
                        even.stream()
                                .flatMap(List::stream)
                                .filter(vertex -> vertex.x() == at)
                                .mapToDouble(LineTracer.Vertex::y))
                .distinct()
                .sorted()
                .toArray();
    }

    private Heats between(double at, double[] nodes, double wind) {
        double[] racks =
                Arrays.stream(nodes).map(node -> duel.onRoof(at, node).racks()).toArray();
        return new Heats(
                duel.onRoof(at, nodes[0]).flat(),
                new SplineInterpolator().interpolate(nodes, racks).value(wind));
    }
}
