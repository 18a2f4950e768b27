package dev.warmlane.report;

import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.BreakEvenMap.Day;
import dev.warmlane.study.BreakEvenMap.Line;
import dev.warmlane.study.BreakEvenMap.Place;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Where the ranking turns over wind and water, and the season's days, for csv. */
final class BreakEvenCsv {

    private BreakEvenCsv() {}

    /** One row for each place on a line. */
    static Table lines(BreakEvenMap map, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        add(rows, "same heat", map.even());
        add(rows, "flat leads by 2 %", map.flatLeads());
        add(rows, "racks lead by 2 %", map.racksLead());
        return heats(
                        place(
                                new TableBuilder<Row>(units)
                                        .words("line", row -> row.line)
                                        .count("branch", "branch", row -> row.branch),
                                row -> row.place),
                        row -> row.place)
                .build(rows);
    }

    /** One row for each day that gave heat. */
    static Table days(BreakEvenMap map, UnitSystem units) {
        TableBuilder<Day> table =
                new TableBuilder<Day>(units).words("day", Day::date).number("heat", Measure.HEAT, Day::heatKwh);
        return heats(place(table, Day::place), Day::place)
                .words("side", day -> map.side(day.place())
                        .name()
                        .toLowerCase(Locale.ROOT)
                        .replace('_', ' '))
                .build(map.days());
    }

    private static <T> TableBuilder<T> place(TableBuilder<T> table, Function<T, Place> of) {
        return table.number("roof_wind", Measure.SPEED, row -> of.apply(row).windMs())
                .number("water", Measure.TEMPERATURE, row -> of.apply(row).waterC());
    }

    private static <T> TableBuilder<T> heats(TableBuilder<T> table, Function<T, Place> of) {
        return table.number("season_flat", Measure.HEAT_PER_AREA, row -> of.apply(row)
                        .heats()
                        .flat())
                .number("season_racks", Measure.HEAT_PER_AREA, row -> of.apply(row)
                        .heats()
                        .racks());
    }

    private static void add(List<Row> rows, String name, List<Line> branches) {
        for (int branch = 0; branch < branches.size(); branch++) {
            for (Place place : branches.get(branch).places()) {
                rows.add(new Row(name, branch + 1, place));
            }
        }
    }

    private record Row(String line, int branch, Place place) {}
}
