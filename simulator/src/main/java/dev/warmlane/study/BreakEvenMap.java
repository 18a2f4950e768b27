package dev.warmlane.study;

import dev.warmlane.study.MountingDuel.Heats;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Flat against racks over the wind along the roof and the temperature of the water, and how near the line on which both
 * give the same lies to the season of the installation.
 *
 * <p>What is compared at a place of the map is the heat of a whole season, kWh per m² of collector, with the same collector
 * area: in the season's own sun, sky and air, hour by hour; with its wind made stronger or weaker in every hour alike, so
 * that its mean along the roof is that of the place; and with the water held at the temperature of the place, see
 * {@link HeldPool}. A steady moment would need one sun, one sky and one air, for which no season stands; a pool left to
 * itself has no temperature of its own to be a place. Means of wind and water are weighted by the heat that the flat array
 * delivers, hour by hour: wind and water of hours without heat decide nothing.
 *
 * <p>The line is found by Brent's method: along the water at every wind of a scan, and along the wind with the season's
 * water and where the line leaves the map. Where one leads by {@link #NO_LEAD_BELOW} is found along the water alone; between
 * the winds so prepared everything is taken as straight. An hour counts from the heat at which the pump would stop: on the
 * line the two may differ by that.
 *
 * @param pair the two mountings
 * @param undisturbedMs mean wind at the roof's height without the roof, m/s; times the roof's wind speed ratio it is the
 *     wind along the roof
 * @param windMs the range of the map along the roof wind, m/s, from 0
 * @param even where both give the same, in branches; none where one is ahead everywhere
 * @param flatLeads where the flat array leads by {@link #NO_LEAD_BELOW}
 * @param racksLead where the racks lead by as much
 * @param scanned places all over the map
 * @param season the season with the flat array: means of its wind and its water
 * @param simulated what both give in the season as it is simulated: the pool at its own temperature, the pump under its
 *     control, heat refused at the limit
 * @param evenWaterC with the season's wind, the temperatures of the water at which both give the same, °C
 * @param evenWindMs with the season's water, the winds along the roof with which both give the same, m/s
 * @param days the days of the season on which the flat array gave heat
 */
public record BreakEvenMap(
        TracedPair pair,
        double undisturbedMs,
        double windMs,
        List<Line> even,
        List<Line> flatLeads,
        List<Line> racksLead,
        List<Place> scanned,
        Place season,
        Heats simulated,
        List<Double> evenWaterC,
        List<Double> evenWindMs,
        List<Day> days) {

    /**
     * Less than this is no lead: what is assumed of roof and wind moves mountings against each other by more (own choice,
     * after docs/mountings.md).
     */
    public static final double NO_LEAD_BELOW = 0.02;

    private static final TurningVariable WIND = TurningVariable.ROOF_WIND_RATIO;
    private static final TurningVariable WATER = TurningVariable.POOL_TEMPERATURE;

    /** Winds are found to this share of the range: less than a tenth of a pixel of the chart. */
    private static final double ACCURACY = 1e-4;

    /** Of the steps of the scan over the wind the first are halved: as still air begins to move the line bends most. */
    private static final int HALVED_STEPS = 2;

    /** Steps along the water, of 3 K: leads of whole seasons do not turn twice within so little. */
    private static final int WATER_STEPS = 10;

    /** Keeps its own copies. */
    public BreakEvenMap {
        even = List.copyOf(even);
        flatLeads = List.copyOf(flatLeads);
        racksLead = List.copyOf(racksLead);
        scanned = List.copyOf(scanned);
        evenWaterC = List.copyOf(evenWaterC);
        evenWindMs = List.copyOf(evenWindMs);
        days = List.copyOf(days);
    }

    /**
     * A place of the map.
     *
     * @param windMs mean wind along the roof, m/s
     * @param waterC temperature of the water, °C
     * @param heats season's heat of both there
     */
    public record Place(double windMs, double waterC, Heats heats) {}

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
     * A day of the season.
     *
     * @param date month and day, as {@code 07-14}
     * @param heatKwh what the flat array gave, kWh
     * @param place wind and water, means weighted by that heat, and what a season would give in them, between the two winds
     *     of the scan that are next taken as straight; of a day off the map the heats are 0
     */
    public record Day(String date, double heatKwh, Place place) {}

    /** On which side of the line something lies. */
    public enum Side {
        /** The flat array leads. */
        FLAT,
        /** The racks lead. */
        RACKS,
        /** Neither does, by less than {@link #NO_LEAD_BELOW}. */
        NEITHER,
        /** More wind or other water than the map shows. */
        OFF_THE_MAP
    }

    /**
     * Draws the map of two mountings.
     *
     * @param duel the two; shared with {@link TurningPoints#of(MountingDuel, Runs)} the scan over the wind is made once
     * @param runs how to run, and who hears of it
     * @return nothing where the flat array gives no heat in the season, or no wind blows while it does
     */
    public static Optional<BreakEvenMap> of(MountingDuel duel, Runs runs) {
        SeasonDays season = SeasonDays.of(duel);
        return season.undisturbedMs() > 0 ? Optional.of(drawn(duel, season, runs)) : Optional.empty();
    }

    private static BreakEvenMap drawn(MountingDuel duel, SeasonDays season, Runs runs) {
        double[] water = IntStream.rangeClosed(0, WATER_STEPS)
                .mapToDouble(i -> WATER.from() + (WATER.to() - WATER.from()) * i / WATER_STEPS)
                .toArray();
        double now = duel.now(WIND);
        TreeSet<Double> scan = new TreeSet<>(List.of(now));
        double step = (WIND.to() - WIND.from()) / WIND.steps();
        for (int i = 0; i <= WIND.steps(); i++) {
            scan.add(WIND.from() + (WIND.to() - WIND.from()) * i / WIND.steps());
        }
        for (int i = 0; i < HALVED_STEPS; i++) {
            scan.add(WIND.from() + (i + 0.5) * step);
        }
        LineTracer tracer = tracer(duel, water, 0, ACCURACY * (WIND.to() - WIND.from()));
        List<Double> turning = tracer.crossings(season.waterC(), List.copyOf(scan), runs);
        scan.addAll(turning);
        List<List<LineTracer.Vertex>> even = tracer.trace(List.copyOf(scan), runs);
        even.forEach(branch -> branch.forEach(vertex -> scan.add(vertex.x())));
        List<Double> winds = List.copyOf(scan);
        Mapped mapped = new Mapped(duel, season.undisturbedMs(), winds);
        return new BreakEvenMap(
                duel.pair(),
                season.undisturbedMs(),
                WIND.to() * season.undisturbedMs(),
                mapped.lines(even),
                mapped.lines(leading(duel, water, NO_LEAD_BELOW).trace(winds, runs)),
                mapped.lines(leading(duel, water, -NO_LEAD_BELOW).trace(winds, runs)),
                winds.stream()
                        .flatMap(ratio -> Arrays.stream(water).mapToObj(celsius -> mapped.at(ratio, celsius)))
                        .toList(),
                mapped.at(now, season.waterC()),
                duel.at(WIND, now),
                tracer.trace(List.of(now), runs).stream()
                        .map(branch -> branch.get(0).y())
                        .toList(),
                turning.stream().map(ratio -> ratio * season.undisturbedMs()).toList(),
                runs.map(season.days(), day -> new Day(day.date(), day.heatKwh(), mapped.of(day))));
    }

    /** Places of the map at winds that are prepared, and between them. */
    private record Mapped(MountingDuel duel, double undisturbedMs, List<Double> winds) {

        List<Line> lines(List<List<LineTracer.Vertex>> branches) {
            return branches.stream()
                    .map(branch -> new Line(branch.stream()
                            .map(vertex -> at(vertex.x(), vertex.y()))
                            .toList()))
                    .toList();
        }

        Place of(SeasonDays.Measured day) {
            double windMs = day.undisturbedMs() * duel.now(WIND);
            return offTheMap(windMs, day.waterC(), WIND.to() * undisturbedMs)
                    ? new Place(windMs, day.waterC(), new Heats(0, 0))
                    : at(windMs / undisturbedMs, day.waterC());
        }

        /** A place, its heats straight between those of the two winds next to its own. */
        Place at(double ratio, double waterC) {
            int above = IntStream.range(1, winds.size() - 1)
                    .filter(i -> winds.get(i) >= ratio)
                    .findFirst()
                    .orElse(winds.size() - 1);
            double below = winds.get(above - 1);
            double share = (ratio - below) / (winds.get(above) - below);
            Heats low = duel.held(below, waterC);
            Heats high = duel.held(winds.get(above), waterC);
            return new Place(
                    ratio * undisturbedMs,
                    waterC,
                    new Heats(
                            (1 - share) * low.flat() + share * high.flat(),
                            (1 - share) * low.racks() + share * high.racks()));
        }
    }

    /** Follows where one leads by a share; below 0 the racks. Between the winds that are prepared it is taken as straight. */
    private static LineTracer leading(MountingDuel duel, double[] water, double lead) {
        return tracer(duel, water, lead, Double.POSITIVE_INFINITY);
    }

    private static LineTracer tracer(MountingDuel duel, double[] water, double lead, double accuracyRatio) {
        return new LineTracer(
                (ratio, celsius) -> {
                    Heats heats = duel.held(ratio, celsius);
                    // 0 where neither gives anything, which is no change of sign
                    return lead < 0
                            ? (1 - lead) * heats.flat() - heats.racks()
                            : heats.flat() - (1 + lead) * heats.racks();
                },
                water,
                accuracyRatio,
                TurningPoints.ACCURACY * (WATER.to() - WATER.from()));
    }

    /** On which side a place lies. */
    public Side side(Place place) {
        if (offTheMap(place.windMs, place.waterC, windMs)) {
            return Side.OFF_THE_MAP;
        }
        double lead = place.heats.lead();
        return lead >= NO_LEAD_BELOW ? Side.FLAT : lead <= -NO_LEAD_BELOW ? Side.RACKS : Side.NEITHER;
    }

    /** Share of the season's heat on days that lie on a side, 0 to 1. */
    public double shareOfHeat(Side side) {
        return heatKwh(days.stream().filter(day -> side(day.place) == side)) / heatKwh(days.stream());
    }

    private static double heatKwh(Stream<Day> days) {
        return days.mapToDouble(Day::heatKwh).sum();
    }

    private static boolean offTheMap(double windMs, double waterC, double mostMs) {
        return windMs > mostMs || waterC < WATER.from() || waterC > WATER.to();
    }
}
