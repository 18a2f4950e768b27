package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.study.LeadMap.Side;
import dev.warmlane.study.MountingDuel.Heats;
import dev.warmlane.study.TurningVariable.Extent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Flat against racks over the wind along the roof, x, and the temperature of the water, y, and how near the line on which both
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
 * water and where the line leaves the map. Where one leads by {@link LeadMap#NO_LEAD_BELOW} is found along the water alone; between
 * the winds so prepared everything is taken as straight. An hour counts from the heat at which the pump would stop: on the
 * line the two may differ by that.
 *
 * @param map the map; wind in m/s, water in °C, and on it the season with the flat array: means of its wind and its water
 * @param undisturbedMs mean wind at the roof's height without the roof, m/s; times the roof's wind speed ratio it is the
 *     wind along the roof
 * @param simulated what both give in the season as it is simulated: the pool at its own temperature, the pump under its
 *     control, heat refused at the limit
 * @param reach which water of the map the pool may have
 * @param days the days of the season on which the flat array gave heat
 */
public record BreakEvenMap(LeadMap map, double undisturbedMs, Heats simulated, Reach reach, List<Day> days) {

    private static final Extent WIND = TurningVariable.ROOF_WIND_RATIO.extent();
    private static final Extent WATER = TurningVariable.POOL_TEMPERATURE.extent();

    /** Winds are found to this share of the range: less than a tenth of a pixel of the chart. */
    private static final double ACCURACY = 1e-4;

    /** Of the steps of the scan over the wind the first are halved: as still air begins to move the line bends most. */
    private static final int HALVED_STEPS = 2;

    /** Steps along the water, of 3 K: leads of whole seasons do not turn twice within so little. */
    private static final int WATER_STEPS = 10;

    /** Keeps its own copy. */
    public BreakEvenMap {
        days = List.copyOf(days);
    }

    /**
     * What keeps the pool from colder and from warmer water. The map knows neither: at a place the water is held whatever
     * it takes.
     *
     * @param setPointC the temperature that the heater keeps, °C; nothing without a heater
     * @param limitC the temperature from which on collectors give nothing, °C
     */
    public record Reach(OptionalDouble setPointC, double limitC) {

        static Reach of(Installation built) {
            return new Reach(
                    built.heater()
                            .map(heater -> OptionalDouble.of(heater.setPointC()))
                            .orElse(OptionalDouble.empty()),
                    built.control().limitC());
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
        double[] water = WATER.cut(WATER_STEPS);
        double now = duel.now(TurningVariable.ROOF_WIND_RATIO);
        int steps = TurningVariable.ROOF_WIND_RATIO.steps();
        TreeSet<Double> scan = new TreeSet<>(List.of(now));
        DoubleStream.of(WIND.cut(steps)).forEach(scan::add);
        for (int i = 0; i < HALVED_STEPS; i++) {
            scan.add(WIND.from() + (i + 0.5) * (WIND.width() / steps));
        }
        LineTracer tracer = tracer(duel, water, 0, ACCURACY * WIND.width());
        List<Double> turning = tracer.crossings(season.waterC(), List.copyOf(scan), runs);
        scan.addAll(turning);
        List<List<LineTracer.Vertex>> even = tracer.trace(List.copyOf(scan), runs);
        even.forEach(branch -> branch.forEach(vertex -> scan.add(vertex.x())));
        List<Double> ratios = List.copyOf(scan);
        Mapped mapped = new Mapped(duel, season.undisturbedMs(), ratios);
        LeadMap map = new LeadMap(
                duel.pair(),
                new Extent(0, WIND.to() * season.undisturbedMs()),
                WATER,
                mapped.lines(even),
                mapped.lines(leading(duel, water, LeadMap.NO_LEAD_BELOW).trace(ratios, runs)),
                mapped.lines(leading(duel, water, -LeadMap.NO_LEAD_BELOW).trace(ratios, runs)),
                ratios.stream()
                        .flatMap(ratio -> Arrays.stream(water).mapToObj(celsius -> mapped.place(ratio, celsius)))
                        .toList(),
                mapped.place(now, season.waterC()),
                turning.stream().map(ratio -> ratio * season.undisturbedMs()).toList(),
                tracer.ofColumn(now));
        return new BreakEvenMap(
                map,
                season.undisturbedMs(),
                duel.at(TurningVariable.ROOF_WIND_RATIO, now),
                Reach.of(duel.template()),
                runs.map(season.days(), day -> new Day(day.date(), day.heatKwh(), mapped.of(day, map))));
    }

    /** Wind speed ratios that are prepared, and what lies between them; a place of the map has the wind instead. */
    private record Mapped(MountingDuel duel, double undisturbedMs, List<Double> ratios) implements LeadMap.Field {

        Place of(SeasonDays.Measured day, LeadMap map) {
            double windMs = day.undisturbedMs() * duel.now(TurningVariable.ROOF_WIND_RATIO);
            Place nothing = new Place(windMs, day.waterC(), new Heats(0, 0));
            return map.side(nothing) == Side.OFF_THE_MAP
                    ? nothing
                    : new Place(windMs, day.waterC(), at(windMs / undisturbedMs, day.waterC()));
        }

        @Override
        public Place place(double ratio, double waterC) {
            return new Place(ratio * undisturbedMs, waterC, at(ratio, waterC));
        }

        /** Straight between the two ratios next to one. */
        @Override
        public Heats at(double ratio, double waterC) {
            int above = IntStream.range(1, ratios.size() - 1)
                    .filter(i -> ratios.get(i) >= ratio)
                    .findFirst()
                    .orElse(ratios.size() - 1);
            double below = ratios.get(above - 1);
            double share = (ratio - below) / (ratios.get(above) - below);
            Heats low = duel.held(below, waterC);
            Heats high = duel.held(ratios.get(above), waterC);
            return new Heats(
                    (1 - share) * low.flat() + share * high.flat(), (1 - share) * low.racks() + share * high.racks());
        }
    }

    /** Follows where one leads by a share; below 0 the racks. Between the winds that are prepared it is taken as straight. */
    private static LineTracer leading(MountingDuel duel, double[] water, double lead) {
        return tracer(duel, water, lead, Double.POSITIVE_INFINITY);
    }

    private static LineTracer tracer(MountingDuel duel, double[] water, double lead, double accuracyRatio) {
        LeadMap.Field held = duel::held;
        return new LineTracer(held.beyond(lead), water, accuracyRatio, TurningPoints.ACCURACY * WATER.width());
    }

    /** Share of the season's heat on days that lie on a side, 0 to 1. */
    public double shareOfHeat(Side side) {
        return heatKwh(days.stream().filter(day -> map.side(day.place) == side)) / heatKwh(days.stream());
    }

    private static double heatKwh(Stream<Day> days) {
        return days.mapToDouble(Day::heatKwh).sum();
    }
}
