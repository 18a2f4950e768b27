package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.BreakEvenMap.Line;
import dev.warmlane.study.BreakEvenMap.Place;
import dev.warmlane.study.BreakEvenMap.Side;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Flat against racks over the wind along the roof and the temperature of the water, the season's days drawn in. */
public final class BreakEvenChart {

    private static final int X_STEPS = 8;
    private static final int Y_STEPS = 8;

    /** Radius of the day with most heat, and of the season's mean, pixels. */
    private static final double LARGEST = 7;

    private static final double SEASON = 6;

    private final BreakEvenMap map;
    private final Numbers numbers;
    private final UnitSystem units;
    private final LinePlot plot;
    private final double width;
    private final double low;
    private final double high;

    private BreakEvenChart(BreakEvenMap map, Numbers numbers) {
        this.map = map;
        this.numbers = numbers;
        this.units = numbers.units();
        this.width = Measure.SPEED.in(units, map.windMs());
        this.low = Measure.TEMPERATURE.in(units, TurningVariable.POOL_TEMPERATURE.from());
        this.high = Measure.TEMPERATURE.in(units, TurningVariable.POOL_TEMPERATURE.to());
        Scale x = new Scale(0, width, Scale.roundStep(width / X_STEPS));
        this.plot = new LinePlot(
                "mean wind along the roof, " + Measure.SPEED.unit(units),
                x,
                (at, notation) -> notation.show(at, x.decimals()),
                "water held at, " + Measure.TEMPERATURE.unit(units),
                new Scale(low, high, Scale.roundStep((high - low) / Y_STEPS)));
    }

    /** The chart of a map. */
    public static Chart of(String name, BreakEvenMap map, String subtitle, Numbers numbers) {
        BreakEvenChart chart = new BreakEvenChart(map, numbers);
        chart.draw();
        return new Chart(name, "How near are the wind and the water at which the ranking turns?", subtitle, chart.plot);
    }

    private void draw() {
        String two = numbers.show(Measure.SHARE, BreakEvenMap.NO_LEAD_BELOW);
        // what is added last comes first in the legend
        lines("“" + map.pair().racks().name() + "” leads by " + two, map.racksLead(), Palette.VERMILLION, Pen.DOTTED);
        lines("“" + map.pair().flat().name() + "” leads by " + two, map.flatLeads(), Palette.BLUE, Pen.DASHED);
        lines("both give the same", map.even(), Palette.INK, Pen.THICK);
        double most =
                map.days().stream().mapToDouble(BreakEvenMap.Day::heatKwh).max().orElse(1);
        plot.dots(
                "a day of the season, its area as its heat",
                Palette.faint(Palette.SKY_BLUE, 0.55),
                map.days().stream()
                        .filter(day -> map.side(day.place()) != Side.OFF_THE_MAP)
                        .map(day -> dot(day.place(), LARGEST * Math.sqrt(day.heatKwh() / most)))
                        .toList());
        if (map.side(map.season()) != Side.OFF_THE_MAP) {
            plot.dots("the season", Palette.INK, List.of(dot(map.season(), SEASON)));
        }
        label(Side.FLAT, "“" + map.pair().flat().name() + "” gives more");
        label(Side.RACKS, "“" + map.pair().racks().name() + "” gives more");
    }

    /** Branches of one look; the legend names them once. */
    private void lines(String name, List<Line> branches, Color colour, Pen pen) {
        for (int i = 0; i < branches.size(); i++) {
            List<Place> places = branches.get(i).places();
            plot.branch(
                    i == 0 ? name : "",
                    places.stream().mapToDouble(this::x).toArray(),
                    places.stream().mapToDouble(this::y).toArray(),
                    colour,
                    pen);
        }
    }

    /** Words in the middle of where a side leads: as far as can be from lines, days and the edges. */
    private void label(Side side, String words) {
        List<Place> around =
                new ArrayList<>(map.days().stream().map(BreakEvenMap.Day::place).toList());
        Stream.of(map.even(), map.flatLeads(), map.racksLead())
                .flatMap(List::stream)
                .forEach(line -> around.addAll(line.places()));
        double half = Lettering.plain(words).width() / 2 / PlotStyle.width();
        ToDoubleFunction<Place> room = place -> around.stream()
                .mapToDouble(other -> apart(place, other, half))
                .min()
                .orElse(1);
        map.scanned().stream()
                .filter(place -> map.side(place) == side)
                .filter(place -> x(place) / width > half && x(place) / width < 1 - half)
                .filter(place -> y(place) > low && y(place) < high)
                .max(Comparator.comparingDouble(room))
                .ifPresent(place -> plot.words(x(place), y(place), words));
    }

    /** How far words at a place are from another, in heights of the plot, which is about three times as wide as high. */
    private double apart(Place words, Place other, double half) {
        double across = Math.max(0, Math.abs(x(words) - x(other)) / width - half) * 3;
        double along = (y(words) - y(other)) / (high - low);
        return Math.hypot(across, along);
    }

    private Plot.Dot dot(Place place, double radius) {
        return new Plot.Dot(x(place), y(place), radius);
    }

    private double x(Place place) {
        return Measure.SPEED.in(units, place.windMs());
    }

    private double y(Place place) {
        return Measure.TEMPERATURE.in(units, place.waterC());
    }
}
