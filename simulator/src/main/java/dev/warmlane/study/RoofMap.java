package dev.warmlane.study;

import dev.warmlane.study.MountingDuel.Heats;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;

/**
 * Flat against racks over how light the roof is and how much wind the inner rows have: two things of a roof that are seldom
 * known, that say nothing of flat mats and much of racks. At each place of the map the whole season is simulated, the pool at
 * its own temperature, with the same collector area. Of a season there is but one point, because a roof is the same all
 * through it.
 *
 * <p>The line on which both give the same is found by Brent's method along the wind at {@link #COLUMNS} albedos and at the
 * roof's own, and along the albedo where it leaves the map. Where one leads by {@link BreakEvenMap#NO_LEAD_BELOW} is read off
 * a cubic spline through the seasons simulated at each albedo, those on the line among them.
 *
 * @param pair the two mountings
 * @param even where both give the same, in branches; none where one is ahead everywhere
 * @param flatLeads where the flat array leads by {@link BreakEvenMap#NO_LEAD_BELOW}
 * @param racksLead where the racks lead by as much
 * @param scanned places all over the map
 * @param here the roof as it is described
 * @param evenInnerWind with the roof's albedo, the wind at inner rows nearest to its own at which both give the same
 * @param evenAlbedo with its inner wind, the albedo nearest to its own at which they do
 */
public record RoofMap(
        TracedPair pair,
        List<Line> even,
        List<Line> flatLeads,
        List<Line> racksLead,
        List<Place> scanned,
        Place here,
        OptionalDouble evenInnerWind,
        OptionalDouble evenAlbedo) {

    /** Albedos at which the line is looked for, beside the roof's own. */
    public static final int COLUMNS = 5;

    private static final TurningVariable ALBEDO = TurningVariable.ROOF_ALBEDO;
    private static final TurningVariable INNER = TurningVariable.INNER_WIND;

    /** Steps of the scan along the wind: the lead bends so little over it that it does not turn twice within one. */
    private static final int INNER_STEPS = 3;

    /** Lines are found to this share of the ranges: less than a pixel of the chart. */
    private static final double ACCURACY = 1e-3;

    /** Keeps its own copies. */
    public RoofMap {
        even = List.copyOf(even);
        flatLeads = List.copyOf(flatLeads);
        racksLead = List.copyOf(racksLead);
        scanned = List.copyOf(scanned);
    }

    /**
     * A place of the map.
     *
     * @param albedo share of short-wave that the roof reflects
     * @param innerWind wind at every row but the first over that at the first
     * @param heats season's heat of both there
     */
    public record Place(double albedo, double innerWind, Heats heats) {}

    /**
     * A branch of a line.
     *
     * @param places places on it, in their order
     */
    public record Line(List<Place> places) {

        /** Keeps its own copy. */
        public Line {
            places = List.copyOf(places);
        }
    }

    /**
     * Draws the map of two mountings.
     *
     * @param duel the two
     * @param runs how to run, and who hears of it
     * @return nothing where the racks stand in one row, which has no inner ones
     */
    public static Optional<RoofMap> of(MountingDuel duel, Runs runs) {
        return duel.variables().contains(INNER) ? Optional.of(drawn(duel, runs)) : Optional.empty();
    }

    private static RoofMap drawn(MountingDuel duel, Runs runs) {
        double albedo = duel.now(ALBEDO);
        double inner = duel.now(INNER);
        TreeSet<Double> scan = new TreeSet<>(List.of(albedo));
        DoubleStream.of(steps(ALBEDO, COLUMNS - 1)).forEach(scan::add);
        List<Double> albedos = List.copyOf(scan);
        double[] winds = steps(INNER, INNER_STEPS);
        List<Place> scanned = runs.map(
                albedos.stream()
                        .flatMap(a -> Arrays.stream(winds).mapToObj(w -> new double[] {a, w}))
                        .toList(),
                at -> place(duel, at[0], at[1]));
        LineTracer tracer = new LineTracer(
                (a, w) -> duel.onRoof(a, w).margin(), winds, ACCURACY * range(ALBEDO), ACCURACY * range(INNER));
        List<List<LineTracer.Vertex>> even = tracer.trace(albedos, runs);
        return new RoofMap(
                duel.pair(),
                lines(duel, even),
                leading(duel, albedos, winds, even, BreakEvenMap.NO_LEAD_BELOW, runs),
                leading(duel, albedos, winds, even, -BreakEvenMap.NO_LEAD_BELOW, runs),
                scanned,
                place(duel, albedo, inner),
                nearest(
                        tracer.trace(List.of(albedo), runs).stream()
                                .flatMap(List::stream)
                                .map(LineTracer.Vertex::y),
                        inner),
                nearest(tracer.crossings(inner, albedos, runs).stream(), albedo));
    }

    private static double[] steps(TurningVariable variable, int count) {
        return IntStream.rangeClosed(0, count)
                .mapToDouble(i -> variable.from() + range(variable) * i / count)
                .toArray();
    }

    private static double range(TurningVariable variable) {
        return variable.to() - variable.from();
    }

    private static Place place(MountingDuel duel, double albedo, double innerWind) {
        return new Place(albedo, innerWind, duel.onRoof(albedo, innerWind));
    }

    private static List<Line> lines(MountingDuel duel, List<List<LineTracer.Vertex>> branches) {
        return branches.stream()
                .map(branch -> new Line(branch.stream()
                        .map(vertex -> place(duel, vertex.x(), vertex.y()))
                        .toList()))
                .toList();
    }

    /** Where one leads by a share, below 0 the racks: from what is simulated at the albedos already. */
    private static List<Line> leading(
            MountingDuel duel,
            List<Double> albedos,
            double[] winds,
            List<List<LineTracer.Vertex>> even,
            double lead,
            Runs runs) {
        LineTracer tracer = new LineTracer(
                (a, w) -> {
                    Heats heats = between(duel, a, nodes(a, winds, even), w);
                    return lead < 0
                            ? (1 - lead) * heats.flat() - heats.racks()
                            : heats.flat() - (1 + lead) * heats.racks();
                },
                winds,
                Double.POSITIVE_INFINITY,
                ACCURACY * range(INNER));
        return tracer.trace(albedos, runs).stream()
                .map(branch -> new Line(branch.stream()
                        .map(vertex -> new Place(vertex.x(), vertex.y(), equalBut(duel, lead)))
                        .toList()))
                .toList();
    }

    /** The flat array's heat does not change over the map, so that a lead tells that of the racks. */
    private static Heats equalBut(MountingDuel duel, double lead) {
        double flat = duel.onRoof(duel.now(ALBEDO), duel.now(INNER)).flat();
        return new Heats(flat, lead < 0 ? flat * (1 - lead) : flat / (1 + lead));
    }

    /** The winds of the scan, and where both give the same: nothing is nearer to where one leads by a little. */
    private static double[] nodes(double albedo, double[] winds, List<List<LineTracer.Vertex>> even) {
        return DoubleStream.concat(
                        Arrays.stream(winds),
                        even.stream()
                                .flatMap(List::stream)
                                .filter(vertex -> vertex.x() == albedo)
                                .mapToDouble(LineTracer.Vertex::y))
                .distinct()
                .sorted()
                .toArray();
    }

    private static Heats between(MountingDuel duel, double albedo, double[] winds, double innerWind) {
        double[] racks = Arrays.stream(winds)
                .map(wind -> duel.onRoof(albedo, wind).racks())
                .toArray();
        return new Heats(
                duel.onRoof(albedo, winds[0]).flat(),
                new SplineInterpolator().interpolate(winds, racks).value(innerWind));
    }

    private static OptionalDouble nearest(Stream<Double> found, double to) {
        return found.mapToDouble(Double::doubleValue)
                .boxed()
                .min((a, b) -> Double.compare(Math.abs(a - to), Math.abs(b - to)))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }
}
