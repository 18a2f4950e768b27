package dev.warmlane.roof;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What lies on one surface.
 *
 * @param surface the surface
 * @param alongDeg the direction that rows of banks run along, degrees anticlockwise from the surface's x axis
 * @param banks its banks, row by row; none where nothing fits
 * @param firstBank the number of the first of them on the surface, where they are counted through over all collectors
 */
public record SurfaceLayout(Surface surface, double alongDeg, List<Bank> banks, int firstBank) {

    /** Keeps its own copy of the list. */
    public SurfaceLayout {
        banks = List.copyOf(banks);
    }

    /** What lies on a surface that nothing else lies on. */
    public SurfaceLayout(Surface surface, double alongDeg, List<Bank> banks) {
        this(surface, alongDeg, banks, 1);
    }

    /** The number of one of its banks on the surface. */
    public int number(Bank bank) {
        return firstBank + banks.indexOf(bank);
    }

    /** Collector area, m². */
    public double areaM2() {
        return banks.stream().mapToDouble(Bank::areaM2).sum();
    }

    /** Number of panels. */
    public int panels() {
        return banks.stream().mapToInt(Bank::panels).sum();
    }

    /** Number of rows of banks. */
    public int rows() {
        return (int) banks.stream().mapToInt(Bank::row).distinct().count();
    }

    /** Length of the longest row from the beginning of its first bank to the end of its last, m; 0 without banks. */
    public double longestRowM() {
        Frame frame = new Frame(alongDeg);
        return byRow().values().stream()
                .mapToDouble(row ->
                        row.stream().mapToDouble(bank -> end(frame, bank)).max().orElse(0)
                                - row.stream()
                                        .mapToDouble(bank -> start(frame, bank))
                                        .min()
                                        .orElse(0))
                .max()
                .orElse(0);
    }

    /**
     * A place as it is set out on the roof: along the rows and across them, from the corner of the rectangle around the
     * surface at which both are least, m.
     */
    public RoofPoint fromCorner(RoofPoint point) {
        Frame frame = new Frame(alongDeg);
        return new RoofPoint(frame.u(point) - extent()[0], frame.v(point) - extent()[2]);
    }

    /** How long the surface is along the rows, m. */
    public double lengthM() {
        return extent()[1] - extent()[0];
    }

    /** How deep the surface is across the rows, m. */
    public double depthM() {
        return extent()[3] - extent()[2];
    }

    /** Least and greatest u, least and greatest v. */
    private double[] extent() {
        Frame frame = new Frame(alongDeg);
        DoubleSummaryStatistics u =
                surface.outline().corners().stream().mapToDouble(frame::u).summaryStatistics();
        DoubleSummaryStatistics v =
                surface.outline().corners().stream().mapToDouble(frame::v).summaryStatistics();
        return new double[] {u.getMin(), u.getMax(), v.getMin(), v.getMax()};
    }

    /**
     * Length of supply and return together, m. Rule: the pipes come up where the first row begins on the side on which
     * banks begin; each of the two runs from there across the rows to the last one, and from that line along every row to
     * the beginning of its last bank. What leads up to the roof is not counted, nor is a balanced (reversed) return.
     */
    public double pipesM() {
        List<RowPipes> rows = rowPipes();
        return rows.isEmpty()
                ? 0
                : 2
                        * (rows.get(rows.size() - 1).acrossM
                                + rows.stream().mapToDouble(RowPipes::endsM).sum());
    }

    /**
     * Where the pipes to a row leave those across the rows, and where its banks hang on them; by the rule of {@link #pipesM}.
     *
     * @param acrossM from the corner across the rows, m
     * @param alongM to each bank along the row, from the side on which banks begin, m
     * @param banks the banks, in that order
     */
    public record RowPipes(double acrossM, List<Double> alongM, List<Bank> banks) {

        /** Keeps its own copies. */
        public RowPipes {
            alongM = List.copyOf(alongM);
            banks = List.copyOf(banks);
        }

        /** Where the pipes end, m. */
        public double endsM() {
            return alongM.get(alongM.size() - 1);
        }
    }

    /** The pipes of all rows, from the first row on; none without banks. */
    public List<RowPipes> rowPipes() {
        Frame frame = new Frame(alongDeg);
        double side =
                banks.stream().mapToDouble(bank -> start(frame, bank)).min().orElse(0);
        double near = banks.stream()
                .mapToDouble(bank -> frame.v(bank.place().corner()))
                .min()
                .orElse(0);
        return byRow().values().stream()
                .map(row -> row.stream()
                        .sorted(Comparator.comparingDouble(bank -> start(frame, bank)))
                        .toList())
                .map(row -> new RowPipes(
                        frame.v(row.get(0).place().corner()) - near,
                        row.stream().map(bank -> start(frame, bank) - side).toList(),
                        row))
                .sorted(Comparator.comparingDouble(RowPipes::acrossM))
                .toList();
    }

    private Map<Integer, List<Bank>> byRow() {
        return banks.stream().collect(Collectors.groupingBy(Bank::row, TreeMap::new, Collectors.toList()));
    }

    private static double start(Frame frame, Bank bank) {
        return frame.u(bank.place().corner());
    }

    private static double end(Frame frame, Bank bank) {
        return start(frame, bank) + bank.place().lengthM();
    }

    /** One of its banks with at least so many panels, and no end of it at an obstacle that its mats are split around. */
    Bank cut(Bank bank, int panels) {
        Frame frame = new Frame(alongDeg);
        double u = frame.u(bank.place().corner());
        double v = frame.v(bank.place().corner());
        List<Blocked> within = surface.obstacles().stream()
                .map(obstacle -> Blocked.of(obstacle, frame))
                .filter(one -> one.reaches(v, v + bank.place().depthM()))
                .toList();
        for (int fewer = panels; fewer < bank.panels(); fewer++) {
            double end = u + fewer * bank.panelWidthM();
            if (within.stream().noneMatch(one -> one.straddles(u, end))) {
                return bank.withPanels(fewer);
            }
        }
        return bank;
    }

    /** The same with other banks. */
    SurfaceLayout withBanks(List<Bank> value) {
        return new SurfaceLayout(surface, alongDeg, value, firstBank);
    }

    /** The same with its banks counted from another number. */
    SurfaceLayout withFirstBank(int value) {
        return new SurfaceLayout(surface, alongDeg, banks, value);
    }
}
