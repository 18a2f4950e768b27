package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.LeadMap.Line;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.study.LeadMap.Side;
import dev.warmlane.units.Measure;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which of two mountings leads over two variables, and where they are drawn in. */
public final class LeadMapChart {

    private static final int STEPS = 8;

    private static final Axis ALBEDO =
            new Axis("share of the sun that the roof reflects", new Scale(0, 0.9, 0.1), x -> x);
    private static final Axis INNER =
            new Axis("wind at inner rows over that at the first", new Scale(0.2, 1.3, 0.1), y -> y);

    /** Radius of the day with most heat, and of where they are, pixels. */
    private static final double LARGEST = 7;

    private static final double HERE = 6;

    /** Steps from one place that was simulated to the next, in which words are tried. */
    private static final int BETWEEN = 4;

    private final Numbers numbers;
    private final LeadMap map;
    private final Axis x;
    private final Axis y;
    private final LinePlot plot;

    private LeadMapChart(LeadMap map, Axis x, Axis y, Numbers numbers) {
        this.numbers = numbers;
        this.map = map;
        this.x = x;
        this.y = y;
        this.plot = new LinePlot(
                x.title, x.scale, (at, notation) -> notation.show(at, x.scale.decimals()), y.title, y.scale);
    }

    /** What is added last comes first in the legend. */
    private void lines() {
        String two = numbers.show(Measure.SHARE, LeadMap.NO_LEAD_BELOW);
        lines(racks() + " leads by " + two, map.racksLead(), Palette.VERMILLION, Pen.DOTTED);
        lines(flat() + " leads by " + two, map.flatLeads(), Palette.BLUE, Pen.DASHED);
        lines("both give the same", map.even(), Palette.INK, Pen.THICK);
    }

    /** Over the wind along the roof and the temperature of the water, the season's days drawn in. */
    public static Chart windAndWater(String name, BreakEvenMap season, String subtitle, Numbers numbers) {
        LeadMapChart chart = new LeadMapChart(
                season.map(),
                Axis.of(
                        "mean wind along the roof, ",
                        Measure.SPEED,
                        season.map().x().from(),
                        season.map().x().to(),
                        numbers),
                Axis.of(
                        "water held at, ",
                        Measure.TEMPERATURE,
                        season.map().y().from(),
                        season.map().y().to(),
                        numbers),
                numbers);
        chart.reach(season.reach());
        chart.lines();
        chart.days(season.days());
        chart.here("the season");
        chart.labels(
                season.days().stream().map(BreakEvenMap.Day::place).toList(),
                chart.y.share(season.reach().limitC()));
        return new Chart(name, "How near are the wind and the water at which the ranking turns?", subtitle, chart.plot);
    }

    /** Over how light the roof is and how much wind the inner rows have, the roof itself drawn in. */
    public static Chart roof(String name, LeadMap map, String subtitle, Numbers numbers) {
        LeadMapChart chart = new LeadMapChart(map, ALBEDO, INNER, numbers);
        chart.lines();
        chart.here("the roof as described");
        chart.labels(List.of(map.here()), 1);
        return new Chart(
                name, "How near are the roof and the shelter at which the ranking turns?", subtitle, chart.plot);
    }

    /** Water that the pool never has by its collectors is shaded; nobody is to read the map there. */
    private void reach(BreakEvenMap.Reach reach) {
        if (reach.limitC() < map.y().to()) {
            double limit = y.at(reach.limitC());
            plot.band(
                    "above " + water(reach.limitC()) + ", where collectors stop",
                    new double[] {x.scale.low(), x.scale.high()},
                    new double[] {limit, limit},
                    new double[] {y.scale.high(), y.scale.high()},
                    Palette.GRID);
        }
        reach.setPointC()
                .ifPresent(setPoint -> plot.level(
                        "kept by the heater, " + water(setPoint), y.at(setPoint), Palette.FAINT_INK, Pen.DASH_DOT));
    }

    private String water(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }

    private void days(List<BreakEvenMap.Day> days) {
        double most = days.stream().mapToDouble(BreakEvenMap.Day::heatKwh).max().orElse(1);
        plot.dots(
                "a day of the season, its area as its heat",
                Palette.faint(Palette.SKY_BLUE, 0.55),
                days.stream()
                        .filter(day -> map.side(day.place()) != Side.OFF_THE_MAP)
                        .map(day -> dot(day.place(), LARGEST * Math.sqrt(day.heatKwh() / most)))
                        .toList());
    }

    private void here(String name) {
        if (x.holds(map.here().x()) && y.holds(map.here().y())) {
            plot.dots(name, Palette.INK, List.of(dot(map.here(), HERE)));
        }
    }

    /** Both below a share of the height from which on the map is shaded. */
    private void labels(List<Place> drawnIn, double ceiling) {
        List<Place> around = new ArrayList<>(drawnIn);
        Stream.of(map.even(), map.flatLeads(), map.racksLead())
                .flatMap(List::stream)
                .forEach(line -> around.addAll(line.places()));
        label(Side.FLAT, flat() + " gives more", around, ceiling);
        label(Side.RACKS, racks() + " gives more", around, ceiling);
    }

    /** Branches of one look; the legend names them once. */
    private void lines(String name, List<Line> branches, Color colour, Pen pen) {
        for (int i = 0; i < branches.size(); i++) {
            List<Place> places = branches.get(i).places();
            plot.branch(
                    i == 0 ? name : "",
                    places.stream().mapToDouble(place -> x.at(place.x())).toArray(),
                    places.stream().mapToDouble(place -> y.at(place.y())).toArray(),
                    colour,
                    pen);
        }
    }

    /** Words in the middle of where a side leads: as far as can be from lines, from what is drawn in and from the edges. */
    private void label(Side side, String words, List<Place> around, double ceiling) {
        double half = Lettering.plain(words).width() / 2 / PlotStyle.width();
        double high = Lettering.plain(words).ascent() / PlotStyle.height();
        double top = Math.min(1, ceiling);
        ToDoubleFunction<Place> room = place -> Math.min(
                Math.min(top - y.share(place.y()), y.share(place.y())),
                around.stream()
                        .mapToDouble(other -> apart(place, other, half))
                        .min()
                        .orElse(1));
        map.scanned().stream()
                .filter(place -> map.side(place) == side)
                .flatMap(this::upwards)
                .filter(place -> x.share(place.x()) > half && x.share(place.x()) < 1 - half)
                .filter(place -> y.share(place.y()) > high && y.share(place.y()) < top - high)
                .max(Comparator.comparingDouble(room))
                .ifPresent(place -> plot.words(x.at(place.x()), y.at(place.y()), words));
    }

    /** A place, and some between it and the next one above, where the same side leads there. */
    private Stream<Place> upwards(Place from) {
        Stream<Place> next = map.scanned().stream()
                .filter(place -> place.x() == from.x() && place.y() > from.y())
                .min(Comparator.comparingDouble(Place::y))
                .filter(above -> map.side(above) == map.side(from))
                .stream()
                .flatMap(above -> IntStream.range(1, BETWEEN)
                        .mapToObj(i ->
                                new Place(from.x(), from.y() + i * (above.y() - from.y()) / BETWEEN, from.heats())));
        return Stream.concat(Stream.of(from), next);
    }

    /** How far words at a place are from another, in heights of the plot, which is about three times as wide as high. */
    private double apart(Place words, Place other, double half) {
        double across = Math.max(0, Math.abs(x.share(words.x()) - x.share(other.x())) - half) * 3;
        return Math.hypot(across, y.share(words.y()) - y.share(other.y()));
    }

    private Plot.Dot dot(Place place, double radius) {
        return new Plot.Dot(x.at(place.x()), y.at(place.y()), radius);
    }

    private String flat() {
        return "“" + map.pair().flat().name() + "”";
    }

    private String racks() {
        return "“" + map.pair().racks().name() + "”";
    }

    /** An axis, and how a variable is shown on it. */
    private record Axis(String title, Scale scale, DoubleUnaryOperator shown) {

        static Axis of(String title, Measure measure, double from, double to, Numbers numbers) {
            DoubleUnaryOperator shown = value -> measure.in(numbers.units(), value);
            double low = shown.applyAsDouble(from);
            double high = shown.applyAsDouble(to);
            return new Axis(
                    title + measure.unit(numbers.units()),
                    new Scale(low, high, Scale.roundStep((high - low) / STEPS)),
                    shown);
        }

        double at(double value) {
            return shown.applyAsDouble(value);
        }

        /** How far along the axis a value is, 0 to 1. */
        double share(double value) {
            return (at(value) - scale.low()) / (scale.high() - scale.low());
        }

        boolean holds(double value) {
            return share(value) >= 0 && share(value) <= 1;
        }
    }
}
