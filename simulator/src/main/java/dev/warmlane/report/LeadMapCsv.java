package dev.warmlane.report;

import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.BreakEvenMap.Day;
import dev.warmlane.study.LeadMap;
import dev.warmlane.study.LeadMap.Line;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Where the ranking of two mountings turns over two variables, and what is drawn in, for csv. */
final class LeadMapCsv {

    private LeadMapCsv() {}

    /** Over wind and water: one row for each place on a line. */
    static Table windAndWater(BreakEvenMap found, UnitSystem units) {
        return places(lines(found.map()), windAndWater(units));
    }

    /** Over wind and water: one row for each day that gave heat. */
    static Table days(BreakEvenMap found, UnitSystem units) {
        TableBuilder<Day> table =
                new TableBuilder<Day>(units).words("day", Day::date).number("heat", Measure.HEAT, Day::heatKwh);
        return windAndWater(units)
                .add(table, Day::place)
                .words("side", day -> found.map()
                        .side(day.place())
                        .name()
                        .toLowerCase(Locale.ROOT)
                        .replace('_', ' '))
                .build(found.days());
    }

    /** Over albedo and inner wind: the places on lines, then those simulated all over the map and the roof itself. */
    static Table roof(LeadMap map, UnitSystem units) {
        List<Row> rows = lines(map);
        add(rows, "simulated", List.of(new Line(map.scanned())));
        add(rows, "as described", List.of(new Line(List.of(map.here()))));
        return places(rows, new Axes(units, "albedo", Measure.FACTOR, "inner_wind", Measure.FACTOR));
    }

    private static Axes windAndWater(UnitSystem units) {
        return new Axes(units, "roof_wind", Measure.SPEED, "water", Measure.TEMPERATURE);
    }

    private static Table places(List<Row> rows, Axes axes) {
        TableBuilder<Row> table = new TableBuilder<Row>(axes.units)
                .words("line", row -> row.line)
                .count("branch", "branch", row -> row.branch);
        return axes.add(table, row -> row.place).build(rows);
    }

    private static List<Row> lines(LeadMap map) {
        List<Row> rows = new ArrayList<>();
        add(rows, "same heat", map.even());
        add(rows, "flat leads by 2 %", map.flatLeads());
        add(rows, "racks lead by 2 %", map.racksLead());
        return rows;
    }

    private static void add(List<Row> rows, String name, List<Line> branches) {
        for (int branch = 0; branch < branches.size(); branch++) {
            for (Place place : branches.get(branch).places()) {
                rows.add(new Row(name, branch + 1, place));
            }
        }
    }

    private record Row(String line, int branch, Place place) {}

    /** What the two variables are called, and what both give. */
    private record Axes(UnitSystem units, String x, Measure xMeasure, String y, Measure yMeasure) {

        <T> TableBuilder<T> add(TableBuilder<T> table, Function<T, Place> of) {
            return table.number(x, xMeasure, row -> of.apply(row).x())
                    .number(y, yMeasure, row -> of.apply(row).y())
                    .number("season_flat", Measure.HEAT_PER_AREA, row -> of.apply(row)
                            .heats()
                            .flat())
                    .number("season_racks", Measure.HEAT_PER_AREA, row -> of.apply(row)
                            .heats()
                            .racks());
        }
    }
}
