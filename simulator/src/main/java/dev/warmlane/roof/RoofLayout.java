package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Whole panels in banks on the surfaces of a roof.
 *
 * <p>Banks stand in rows that run right through a surface, along one of two directions: that of its longest edge or
 * square to it, on a pitched roof along the eaves or up the slope. Both are tried. Rows of mats may have different panel
 * lengths and may be anywhere as long as a walkway stays between them; rows of racks are equally far apart, and run
 * across the direction they face, whichever way the roof lies. Every bank keeps the distance from edges and the clearance
 * from obstacles, and a walkway from the next bank in its row.
 *
 * <p>"The most" is the most of layouts of this kind. Rows that begin elsewhere in two wings of a roof are not tried: draw
 * the wings as two surfaces.
 *
 * @param surfaces what lies on each surface
 * @param rules the rules it keeps
 * @param laying whether mats lie or racks stand
 */
public record RoofLayout(List<SurfaceLayout> surfaces, PanelRules rules, Laying laying) {

    /** An area that is missed by less is reached, m². */
    private static final double ROUNDING_M2 = 1e-6;

    private static final double SQUARE_DEG = 90;

    /** Keeps its own copy of the list. */
    public RoofLayout {
        surfaces = List.copyOf(surfaces);
    }

    /**
     * The most that fits; of as much, that with fewer banks. Where a gap takes several banks they are as even as can be.
     *
     * @param surfaces the surfaces that may be used
     * @param rules how panels are made and put together
     * @param laying whether mats lie or racks stand
     */
    public static RoofLayout most(List<Surface> surfaces, PanelRules rules, Laying laying) {
        return most(surfaces, rules, laying, List.of());
    }

    /** The same beside what has been laid before. */
    static RoofLayout most(List<Surface> surfaces, PanelRules rules, Laying laying, List<RoofLayout> before) {
        List<SurfaceLayout> best = surfaces.stream()
                .map(surface -> most(directions(surface, laying).stream()
                        .flatMap(along -> lengthByLength(rules, laying).stream()
                                .map(some -> laid(surface, along, some, laying, true, before)))
                        .toList()))
                .toList();
        return new RoofLayout(best, rules, laying);
    }

    /**
     * At least an area in the fewest banks; of as few, the least area, then the most even banks. Looked for among the
     * largest banks of every layout tried, the last of them cut down to what is wanted, in whole panels: each direction,
     * with all panel lengths together and with each alone, the banks of a gap as full as can be; and {@link #most}.
     *
     * @return nothing where so much does not fit
     */
    public static Optional<RoofLayout> ofArea(List<Surface> surfaces, PanelRules rules, Laying laying, double areaM2) {
        return ofArea(surfaces, rules, laying, areaM2, List.of());
    }

    /** The same beside what has been laid before. */
    static Optional<RoofLayout> ofArea(
            List<Surface> surfaces, PanelRules rules, Laying laying, double areaM2, List<RoofLayout> before) {
        List<RoofLayout> found = new ArrayList<>();
        for (PanelRules some : lengthByLength(rules, laying)) {
            List<List<SurfaceLayout>> ways = surfaces.stream()
                    .map(surface -> directions(surface, laying).stream()
                            .map(along -> laid(surface, along, some, laying, false, before))
                            .toList())
                    .toList();
            for (int turn = 0; turn < laying.match(mats -> 2, racks -> 1); turn++) {
                int way = turn;
                found.add(
                        new RoofLayout(ways.stream().map(each -> each.get(way)).toList(), rules, laying));
            }
            found.add(new RoofLayout(ways.stream().map(RoofLayout::most).toList(), rules, laying));
        }
        found.add(most(surfaces, rules, laying, before));
        return found.stream()
                .flatMap(layout -> layout.fewest(areaM2).stream())
                .min(Comparator.comparingInt(RoofLayout::banks)
                        .thenComparingDouble(layout -> Frame.whole(layout.areaM2()))
                        .thenComparingInt(RoofLayout::unevenness));
    }

    /** The more alike the banks of an area are, the less. */
    private int unevenness() {
        return allBanks().mapToInt(bank -> bank.panels() * bank.panels()).sum();
    }

    private static SurfaceLayout most(List<SurfaceLayout> ways) {
        return ways.stream()
                .reduce((one, other) -> isMore(other, one) ? other : one)
                .orElseThrow();
    }

    /** The rules, and for mats the same with each of several lengths alone. */
    private static List<PanelRules> lengthByLength(PanelRules rules, Laying laying) {
        List<Double> lengths = laying.match(
                mats -> rules.lengths().match(PanelRules.Fixed::lengthsM, cut -> List.of()), racks -> List.of());
        List<PanelRules> all = new ArrayList<>(List.of(rules));
        if (lengths.size() > 1) {
            lengths.forEach(one -> all.add(rules.withLengths(new PanelRules.Fixed(List.of(one)))));
        }
        return all;
    }

    private static List<Double> directions(Surface surface, Laying laying) {
        double along = surface.alongDeg();
        return laying.match(
                mats -> List.of(along, along + SQUARE_DEG), racks -> List.of(surface.rowsAlongDeg(racks.facingDeg())));
    }

    private static SurfaceLayout laid(
            Surface surface, double alongDeg, PanelRules rules, Laying laying, boolean even, List<RoofLayout> before) {
        Frame frame = new Frame(alongDeg);
        FreeArea area = new FreeArea(surface, frame, Taken.of(before, surface, rules, laying, frame));
        List<Row> rows = laying.match(
                mats -> MatRows.best(area, rules, even), racks -> RackLines.best(area, rules, racks, even));
        double foreshortening = laying.match(mats -> 1.0, racks -> Math.cos(Math.toRadians(racks.tiltDeg())));
        int sides = laying.sides();
        List<Bank> banks = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            banks.addAll(rows.get(row).drawn(sides * row + 1, frame, rules, foreshortening, sides));
        }
        return new SurfaceLayout(surface, alongDeg, banks);
    }

    private static boolean isMore(SurfaceLayout one, SurfaceLayout than) {
        double more = one.areaM2() - than.areaM2();
        return Math.abs(more) > ROUNDING_M2
                ? more > 0
                : one.banks().size() < than.banks().size();
    }

    /** The fewest of its banks that have an area, the last of them no larger than it takes; nothing where all are less. */
    private Optional<RoofLayout> fewest(double wantedM2) {
        record Place(SurfaceLayout on, List<Bank> banks) {
            double areaM2() {
                return banks.get(0).areaM2();
            }
        }
        int sides = laying.sides();
        List<Place> largestFirst = surfaces.stream()
                .flatMap(on -> IntStream.range(0, on.banks().size() / sides)
                        .mapToObj(i -> new Place(on, on.banks().subList(i * sides, (i + 1) * sides))))
                .sorted(Comparator.comparingDouble(Place::areaM2).reversed())
                .toList();
        IdentityHashMap<Bank, Bank> taken = new IdentityHashMap<>();
        double area = 0;
        for (Place place : largestFirst) {
            if (area >= wantedM2 - ROUNDING_M2) {
                break;
            }
            Bank first = place.banks.get(0);
            double missing = wantedM2 - area - ROUNDING_M2;
            int panels = (int) Math.max(1, Math.ceil(missing / (sides * first.panelAreaM2())));
            int laid = place.on.cut(first, panels).panels();
            for (Bank bank : place.banks) {
                Bank cut = bank.withPanels(laid);
                taken.put(bank, cut);
                area += cut.areaM2();
            }
        }
        if (area < wantedM2 - ROUNDING_M2) {
            return Optional.empty();
        }
        List<SurfaceLayout> some = surfaces.stream()
                .map(surface -> surface.withBanks(surface.banks().stream()
                        .flatMap(bank -> Stream.ofNullable(taken.get(bank)))
                        .toList()))
                .toList();
        return Optional.of(new RoofLayout(some, rules, laying));
    }

    /** Collector area, m². */
    public double areaM2() {
        return surfaces.stream().mapToDouble(SurfaceLayout::areaM2).sum();
    }

    /** Number of panels. */
    public int panels() {
        return surfaces.stream().mapToInt(SurfaceLayout::panels).sum();
    }

    /** Number of banks. */
    public int banks() {
        return surfaces.stream().mapToInt(surface -> surface.banks().size()).sum();
    }

    /** Number of rows of banks, over all surfaces. */
    public int rows() {
        return surfaces.stream().mapToInt(SurfaceLayout::rows).sum();
    }

    /** Rows one behind the other, on the surface that has most of them; a tent is one. 1 where nothing is laid. */
    public int rowsDeep() {
        return surfaces.stream().mapToInt(SurfaceLayout::rows).max().orElse(laying.sides()) / laying.sides();
    }

    /** Length of all headers, two to each bank, m. */
    public double headersM() {
        return allBanks().mapToDouble(Bank::headersM).sum();
    }

    /** Length of supply and return on the roof together, m; by the rule of {@link SurfaceLayout#pipesM}. */
    public double pipesM() {
        return surfaces.stream().mapToDouble(SurfaceLayout::pipesM).sum();
    }

    /** Area of the surfaces within their edges, m². */
    public double roofAreaM2() {
        return surfaces.stream()
                .mapToDouble(layout -> layout.surface().outline().areaM2())
                .sum();
    }

    /** What the collectors weigh, kg, without pipes and racks, at a weight of a square metre of collector, kg/m². */
    public double weightKg(double collectorKgM2) {
        return areaM2() * collectorKgM2;
    }

    /** The same over the whole area of the roof, kg/m². */
    public double weightPerRoofKgM2(double collectorKgM2) {
        return weightKg(collectorKgM2) / roofAreaM2();
    }

    /** Water in the collectors, L, without headers and pipes, at a content of a square metre of collector, L/m². */
    public double waterL(double collectorLM2) {
        return areaM2() * collectorLM2;
    }

    /** The list of pieces: panels from long to short, then what joins them. */
    public List<Piece> pieces() {
        Map<Double, Integer> byLength = new TreeMap<>(Comparator.reverseOrder());
        allBanks().forEach(bank -> byLength.merge(bank.panelLengthM(), bank.panels(), Integer::sum));
        List<Piece> pieces = new ArrayList<>();
        byLength.forEach((length, count) -> pieces.add(new Piece(Piece.Kind.PANEL, count, length, rules.widthM())));
        int banks = banks();
        if (banks > 0) {
            pieces.add(new Piece(Piece.Kind.HEADER_JOINT, 2 * (panels() - banks), 0, 0));
            pieces.add(new Piece(Piece.Kind.HEADER_CAP, 2 * banks, 0, 0));
            pieces.add(new Piece(Piece.Kind.CONNECTION, 2 * banks, 0, 0));
            pieces.add(new Piece(Piece.Kind.PIPE, 1, pipesM(), 0));
        }
        return pieces;
    }

    private Stream<Bank> allBanks() {
        return surfaces.stream().flatMap(surface -> surface.banks().stream());
    }
}
