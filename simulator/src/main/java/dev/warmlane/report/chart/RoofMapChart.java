package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.RoofMap;
import dev.warmlane.study.RoofMap.Line;
import dev.warmlane.study.RoofMap.Place;
import dev.warmlane.units.Measure;
import java.awt.Color;
import java.util.Comparator;
import java.util.List;

/** Flat against racks over how light the roof is and how much wind the inner rows have, the roof itself drawn in. */
public final class RoofMapChart {

    private static final Scale ALBEDO = new Scale(0, 0.9, 0.1);
    private static final Scale INNER = new Scale(0.2, 1.3, 0.1);

    /** Radius of the roof's own place, pixels. */
    private static final double HERE = 6;

    private final RoofMap map;
    private final LinePlot plot;

    private RoofMapChart(RoofMap map) {
        this.map = map;
        this.plot = new LinePlot(
                "share of the sun that the roof reflects",
                ALBEDO,
                (at, notation) -> notation.show(at, 1),
                "wind at inner rows over that at the first",
                INNER);
    }

    /** The chart of a map. */
    public static Chart of(String name, RoofMap map, String subtitle, Numbers numbers) {
        RoofMapChart chart = new RoofMapChart(map);
        chart.draw(numbers.show(Measure.SHARE, BreakEvenMap.NO_LEAD_BELOW));
        return new Chart(
                name, "How near are the roof and the shelter at which the ranking turns?", subtitle, chart.plot);
    }

    private void draw(String two) {
        String flat = "“" + map.pair().flat().name() + "”";
        String racks = "“" + map.pair().racks().name() + "”";
        // what is added last comes first in the legend
        lines(racks + " leads by " + two, map.racksLead(), Palette.VERMILLION, Pen.DOTTED);
        lines(flat + " leads by " + two, map.flatLeads(), Palette.BLUE, Pen.DASHED);
        lines("both give the same", map.even(), Palette.INK, Pen.THICK);
        plot.dots(
                "the roof as described",
                Palette.INK,
                List.of(new Plot.Dot(map.here().albedo(), map.here().innerWind(), HERE)));
        label(
                flat + " gives more",
                Comparator.comparingDouble(place -> place.heats().lead()),
                1);
        label(
                racks + " gives more",
                Comparator.comparingDouble(place -> -place.heats().lead()),
                -1);
    }

    /** Branches of one look; the legend names them once. */
    private void lines(String name, List<Line> branches, Color colour, Pen pen) {
        for (int i = 0; i < branches.size(); i++) {
            List<Place> places = branches.get(i).places();
            plot.branch(
                    i == 0 ? name : "",
                    places.stream().mapToDouble(Place::albedo).toArray(),
                    places.stream().mapToDouble(Place::innerWind).toArray(),
                    colour,
                    pen);
        }
    }

    /** Words in the inside of the map where a side leads most clearly. */
    private void label(String words, Comparator<Place> lead, int side) {
        double half = Lettering.plain(words).width() / 2 / PlotStyle.width() * (ALBEDO.high() - ALBEDO.low());
        map.scanned().stream()
                .filter(place -> side * place.heats().lead() >= BreakEvenMap.NO_LEAD_BELOW)
                .filter(place -> place.albedo() - half > ALBEDO.low() && place.albedo() + half < ALBEDO.high())
                .filter(place -> Math.abs(place.innerWind() - map.here().innerWind()) > INNER.step() / 2
                        || Math.abs(place.albedo() - map.here().albedo()) > half)
                .max(lead)
                .ifPresent(place -> plot.words(place.albedo(), place.innerWind(), words));
    }
}
