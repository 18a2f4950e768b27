package dev.warmlane.roof;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The rows of mats that cover the most of a surface, with the tubes across the rows. Every row runs right through the
 * surface. Where rows may begin and end is listed first: where the edge turns or an obstacle begins or ends, from there a
 * row and a walkway at a time upwards and downwards, and in even steps besides, for slanting edges. On a roof on which
 * that would be too many places rows of one length follow each other, and fewer turns are begun at. The best choice among
 * those that leave a walkway between them is then found exactly, from the last to the first.
 */
final class MatRows {

    /** Even steps over the depth of a surface, besides the places that its shape gives; own choice. */
    private static final int STEPS = 40;

    /** The most places that are tried; own choice, so that no drawing takes long. */
    private static final int MOST_PLACES = 1500;

    private static final int MOST_ROWS = 8000;

    /** Panels are cut to whole centimetres, m; own choice. */
    private static final double CUT_M = 0.01;

    private static final double MICROMETRES = 1e6;

    private final FreeArea area;
    private final PanelRules rules;
    private final boolean even;
    private final double lowest;
    private final double highest;

    private MatRows(FreeArea area, PanelRules rules, boolean even) {
        this.area = area;
        this.rules = rules;
        this.even = even;
        this.lowest = area.lowest();
        this.highest = area.highest();
    }

    /** The best rows, from near to far. */
    static List<Row> best(FreeArea area, PanelRules rules, boolean even) {
        if (area.isEmpty()) {
            return List.of();
        }
        MatRows rows = new MatRows(area, rules, even);
        return rows.choose(rules.lengths().match(rows::ofFixed, rows::ofCut));
    }

    private List<Row> ofFixed(PanelRules.Fixed lengths) {
        List<Row> rows = new ArrayList<>();
        Optional<double[]> starts = starts(lengths.lengthsM());
        if (starts.isPresent()) {
            for (double start : starts.get()) {
                lengths.lengthsM().forEach(length -> add(rows, start, length));
            }
        } else {
            lengths.lengthsM()
                    .forEach(length ->
                            chains(rows, length, MOST_ROWS / lengths.lengthsM().size()));
        }
        return rows;
    }

    private List<Row> ofCut(PanelRules.Cut lengths) {
        List<Row> rows = new ArrayList<>();
        chains(rows, lengths.longestM(), MOST_ROWS / 2);
        double deep = Math.max(1, (highest - lowest) / stepM(lengths.longestM()));
        double[] turns = some(area.turns(), (int) Math.max(2, Math.sqrt(MOST_ROWS / deep)));
        for (int low = 0; low < turns.length; low++) {
            for (int high = low + 1; high < turns.length; high++) {
                shared(rows, lengths, turns[low], turns[high]);
            }
        }
        return rows;
    }

    /** Rows of one length, a walkway between each and the next, upwards and downwards from turns and from even steps. */
    private void chains(List<Row> rows, double length, int most) {
        double step = stepM(length);
        double depth = length + rules.headersM();
        int rowsOfOne = (int) Math.max(1, (highest - lowest) / step + 1);
        double[] turns = some(area.turns(), Math.max(2, most / rowsOfOne / 2 - 1));
        Map<Long, Double> starts = new TreeMap<>();
        for (double turn : turns) {
            for (double start = turn; start + depth <= highest + Blocked.ROUNDING_M; start += step) {
                starts.putIfAbsent(micrometres(start), Frame.whole(start));
            }
            for (double start = turn - depth; start >= lowest - Blocked.ROUNDING_M; start -= step) {
                starts.putIfAbsent(micrometres(start), Frame.whole(start));
            }
        }
        for (int even = 1; even < STEPS; even++) {
            double start = Frame.whole(lowest + even * (highest - lowest) / STEPS);
            starts.putIfAbsent(micrometres(start), start);
        }
        starts.values().forEach(start -> add(rows, start, length));
    }

    private double stepM(double length) {
        return length + rules.headersM() + rules.walkwayM();
    }

    /** Rows of one length that fill the depth between two turns. */
    private void shared(List<Row> rows, PanelRules.Cut lengths, double from, double to) {
        double most = lengths.longestM() + rules.headersM() + rules.walkwayM();
        int count = (int) Math.max(1, Math.ceil((to - from + rules.walkwayM() - Blocked.ROUNDING_M) / most));
        double step = (to - from + rules.walkwayM()) / count;
        double length = Math.floor((step - rules.walkwayM() - rules.headersM() + Blocked.ROUNDING_M) / CUT_M) * CUT_M;
        if (length >= lengths.shortestM() - Blocked.ROUNDING_M) {
            for (int row = 0; row < count; row++) {
                add(rows, from + row * step, Frame.whole(Math.min(length, lengths.longestM())));
            }
        }
    }

    private void add(List<Row> rows, double start, double length) {
        double from = Frame.whole(start);
        double depth = length + rules.headersM();
        if (from + depth <= highest + Blocked.ROUNDING_M && from >= lowest - Blocked.ROUNDING_M) {
            Row row = Row.of(area, rules, from, depth, length, even, true);
            if (!row.banks().isEmpty()) {
                rows.add(row);
            }
        }
    }

    /** At most so many of places in their order, evenly, the first and the last among them. */
    static double[] some(double[] places, int most) {
        if (places.length <= most) {
            return places;
        }
        double[] some = new double[most];
        Arrays.setAll(some, i -> places[(int) ((long) i * (places.length - 1) / (most - 1))]);
        return some;
    }

    /**
     * Where rows of several lengths may begin, from near to far, whatever lies before them; nothing where those are more
     * than can be tried.
     */
    private Optional<double[]> starts(List<Double> lengths) {
        int most = Math.min(MOST_PLACES, MOST_ROWS / lengths.size());
        Deque<Double> upwards = new ArrayDeque<>();
        Deque<Double> downwards = new ArrayDeque<>();
        for (double turn : area.turns()) {
            upwards.add(turn);
            downwards.add(turn);
        }
        for (int step = 1; step < STEPS; step++) {
            upwards.add(Frame.whole(lowest + step * (highest - lowest) / STEPS));
        }
        Map<Long, Double> starts = new TreeMap<>();
        while (!upwards.isEmpty()) {
            double start = upwards.remove();
            if (starts.putIfAbsent(micrometres(start), start) == null) {
                for (double length : lengths) {
                    double next = Frame.whole(start + stepM(length));
                    if (next < highest) {
                        upwards.add(next);
                    }
                }
            }
            if (starts.size() > most) {
                return Optional.empty();
            }
        }
        Map<Long, Double> ends = new TreeMap<>();
        while (!downwards.isEmpty()) {
            double end = downwards.remove();
            if (ends.putIfAbsent(micrometres(end), end) == null) {
                for (double length : lengths) {
                    double start = Frame.whole(end - length - rules.headersM());
                    if (start >= lowest) {
                        starts.putIfAbsent(micrometres(start), start);
                        downwards.add(Frame.whole(start - rules.walkwayM()));
                    }
                }
            }
            if (starts.size() > most || ends.size() > most) {
                return Optional.empty();
            }
        }
        return Optional.of(starts.values().stream().mapToDouble(v -> v).toArray());
    }

    private static long micrometres(double metres) {
        return Math.round(metres * MICROMETRES);
    }

    /** The rows of the greatest worth together, a walkway between each and the next. */
    private List<Row> choose(List<Row> candidates) {
        List<Row> rows = candidates.stream()
                .sorted(Comparator.comparingDouble(Row::from))
                .toList();
        double[] from = rows.stream().mapToDouble(Row::from).toArray();
        double[] best = new double[rows.size() + 1];
        int[] then = new int[rows.size()];
        boolean[] taken = new boolean[rows.size()];
        for (int i = rows.size() - 1; i >= 0; i--) {
            Row row = rows.get(i);
            then[i] = firstFrom(from, row.from() + row.depthM() + rules.walkwayM() - Blocked.ROUNDING_M);
            double with = row.worth(rules) + best[then[i]];
            taken[i] = with >= best[i + 1];
            best[i] = Math.max(with, best[i + 1]);
        }
        List<Row> chosen = new ArrayList<>();
        int i = 0;
        while (i < rows.size()) {
            if (taken[i]) {
                chosen.add(rows.get(i));
            }
            i = taken[i] ? then[i] : i + 1;
        }
        return chosen;
    }

    private static int firstFrom(double[] sorted, double least) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < least) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
