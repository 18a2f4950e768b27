package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Rows of racks at one distance from each other, of which only the place of the first is free: it is tried so that some
 * row begins or ends where the edge turns or an obstacle begins or ends, and in even steps besides.
 */
final class RackLines {

    /** Even steps over a pitch; own choice. */
    private static final int STEPS = 24;

    /** The most turns that are tried; own choice. */
    private static final int MOST_TURNS = 60;

    private RackLines() {}

    /** The best rows, from front to back; those without room for a panel are left out. */
    static List<Row> best(FreeArea area, PanelRules rules, Laying.Racks racks, boolean even) {
        if (area.isEmpty()) {
            return List.of();
        }
        double lowest = area.lowest();
        double depth = racks.depthM(rules);
        Set<Double> offsets = new TreeSet<>();
        for (double turn : MatRows.some(area.turns(), MOST_TURNS)) {
            offsets.add(offset(turn - lowest, racks.pitchM()));
            offsets.add(offset(turn - depth - lowest, racks.pitchM()));
        }
        for (int step = 0; step < STEPS; step++) {
            offsets.add(Frame.whole(step * racks.pitchM() / STEPS));
        }
        List<Row> best = List.of();
        double most = 0;
        for (double offset : offsets) {
            List<Row> rows = new ArrayList<>();
            double worth = 0;
            for (double from = lowest + offset;
                    from + depth <= area.highest() + Blocked.ROUNDING_M;
                    from += racks.pitchM()) {
                Row row = Row.of(area, rules, from, depth, racks.chordM(), even, false);
                if (!row.banks().isEmpty()) {
                    rows.add(row);
                    worth += row.worth(rules);
                }
            }
            if (worth > most + Blocked.ROUNDING_M) {
                best = rows;
                most = worth;
            }
        }
        return best;
    }

    private static double offset(double from, double pitch) {
        double rest = from % pitch;
        return Frame.whole(rest < 0 ? rest + pitch : rest);
    }
}
