package dev.warmlane.report;

import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.study.RoofMap;
import dev.warmlane.study.RoofMap.Line;
import dev.warmlane.study.RoofMap.Place;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How near the roof as described lies to where the ranking of two mountings turns, in words and for csv. */
final class RoofMapWords {

    private final Numbers numbers;
    private final RoofMap map;

    RoofMapWords(Numbers numbers, RoofMap map) {
        this.numbers = numbers;
        this.map = map;
    }

    /** The conclusion. */
    String conclusion() {
        Place here = map.here();
        return "On the roof as described, which reflects " + share(here.albedo())
                + " of the sun and whose inner rows have "
                + share(here.innerWind()) + " of the wind at the first, "
                + leads(here.heats().lead()) + ". "
                + turn(
                        "With its roof",
                        "wind at the inner rows",
                        map.evenInnerWind(),
                        here.innerWind(),
                        TurningVariable.INNER_WIND)
                + " "
                + turn(
                        "With its wind",
                        "share of the sun reflected",
                        map.evenAlbedo(),
                        here.albedo(),
                        TurningVariable.ROOF_ALBEDO);
    }

    /** What is compared. */
    static String compared() {
        return "At each place of this map a whole season is simulated with the same area of both. Neither says anything of flat"
                + " mats: what changes is the racks. A season is one point here, because a roof is the same all through it; both"
                + " numbers are seldom known, so that the distance to the line tells how far they may be wrong.";
    }

    private String leads(double lead) {
        String flat = "“" + map.pair().flat().name() + "”";
        String racks = "“" + map.pair().racks().name() + "”";
        if (Math.abs(lead) < BreakEvenMap.NO_LEAD_BELOW) {
            return "none leads: " + flat + " and " + racks + " differ by less than "
                    + numbers.show(Measure.SHARE, BreakEvenMap.NO_LEAD_BELOW);
        }
        return (lead > 0 ? flat : racks) + " leads by " + numbers.show(Measure.SHARE, Math.abs(lead));
    }

    private String turn(String with, String what, OptionalDouble even, double now, TurningVariable variable) {
        return even.isPresent()
                ? with + " both would give the same at a " + what + " of " + share(even.getAsDouble()) + ", "
                        + numbers.show(100 * Math.abs(even.getAsDouble() - now), 0) + " points "
                        + (even.getAsDouble() < now ? "less." : "more.")
                : with + " no " + what + " from " + share(variable.from()) + " to " + share(variable.to())
                        + " turns it.";
    }

    private String share(double share) {
        return numbers.show(Measure.SHARE, share);
    }

    /** One row for each place on a line, then those simulated all over the map and the roof itself. */
    static Table csv(RoofMap map, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        add(rows, "same heat", map.even());
        add(rows, "flat leads by 2 %", map.flatLeads());
        add(rows, "racks lead by 2 %", map.racksLead());
        add(rows, "simulated", List.of(new Line(map.scanned())));
        add(rows, "as described", List.of(new Line(List.of(map.here()))));
        return new TableBuilder<Row>(units)
                .words("line", row -> row.line)
                .count("branch", "branch", row -> row.branch)
                .number("albedo", Measure.FACTOR, row -> row.place.albedo())
                .number("inner_wind", Measure.FACTOR, row -> row.place.innerWind())
                .number("season_flat", Measure.HEAT_PER_AREA, row -> row.place
                        .heats()
                        .flat())
                .number("season_racks", Measure.HEAT_PER_AREA, row -> row.place
                        .heats()
                        .racks())
                .build(rows);
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
