package dev.warmlane.study;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.FlowSplit;
import dev.warmlane.hydraulics.Liquid;
import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.physics.Constants;
import dev.warmlane.roof.Bank;
import dev.warmlane.roof.SurfaceLayout;
import dev.warmlane.season.Installation;
import dev.warmlane.study.FieldFlow.Flowing;
import dev.warmlane.study.FieldFlow.Hung;
import dev.warmlane.study.FieldFlow.HungRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The water of an installation's collectors: what pressure its flow takes, how it divides among the banks, what the pump
 * draws and what the pipes lose. Follows {@link Hydraulics}, on a roof that is drawn by the banks and pipes of its layout,
 * else with banks end to end in one row. Several arrays hang side by side on the pipe that comes up; the one that takes most
 * pressure decides, and valves throttle the others, so that each has its own flow. An array that does not fit its roof has
 * the pressures of the most that does, at the same flow for each m²; one of which not a panel fits has none.
 */
public final class WaterCircuit {

    private static final Liquid WATER = Hydraulics.WATER;

    /**
     * An array with its water.
     *
     * @param array the array
     * @param flowing its banks with what flows through them
     * @param dropPa pressure used up on the roof, Pa
     * @param pipesM length of pipes on the roof beside the banks, m
     */
    record Watered(CollectorArray array, FieldFlow field, List<Flowing> flowing, double dropPa, double pipesM) {

        double laidM2() {
            return flowing.stream().mapToDouble(one -> one.bank().areaM2()).sum();
        }

        double laidKgS() {
            return laidM2() * array.flowKgSM2();
        }
    }

    /**
     * A bank with its water.
     *
     * @param array what its collectors are called
     * @param surface the surface that it lies on; empty where no roof is drawn
     * @param number its number there
     * @param row its row there
     * @param panels number of panels
     * @param flowM3h flow, m³/h
     * @param overMean flow for each m² over that of the array
     * @param leastPanel flow of its panel that has least, over the same mean
     * @param headerMs greatest speed in its headers, m/s
     */
    public record BankFlow(
            String array,
            String surface,
            int number,
            int row,
            int panels,
            double flowM3h,
            double overMean,
            double leastPanel,
            double headerMs) {}

    /** Where pressure is used up. */
    public enum Part {
        /** The height that is pumped for good. */
        LIFT,
        /** The pipe between pool and roof, there and back. */
        RUN,
        /** Pipes on the roof beside the banks, and valves that throttle one array for another. */
        ROOF_PIPES,
        /** Headers of the banks and what connects them. */
        HEADERS,
        /** Tubes of the panels. */
        TUBES
    }

    /**
     * What one part uses up.
     *
     * @param part the part
     * @param headM the mean over the water, m
     */
    public record PartHead(Part part, double headM) {}

    private final Installation built;
    private final Hydraulics hydraulics;
    private final List<Watered> arrays;
    private final double flowKgS;

    private WaterCircuit(Installation built, Hydraulics hydraulics, List<Watered> arrays) {
        this.built = built;
        this.hydraulics = hydraulics;
        this.arrays = arrays;
        this.flowKgS = built.arrays().stream()
                .mapToDouble(array -> array.areaM2() * array.flowKgSM2())
                .sum();
    }

    /** The circuit of an installation at its flow; nothing where its hydraulics are not told, or it has no collectors. */
    public static Optional<WaterCircuit> of(Installation installation) {
        if (installation.arrays().isEmpty() || installation.hydraulics().isEmpty()) {
            return Optional.empty();
        }
        Hydraulics hydraulics = installation.hydraulics().get();
        List<Watered> arrays = installation.plan().isPresent()
                ? ArrayLayout.of(installation).stream()
                        .filter(one -> one.layout().banks() > 0)
                        .map(one -> watered(hydraulics, one.array(), hung(one)))
                        .toList()
                : installation.arrays().stream()
                        .map(array -> watered(hydraulics, array, hung(hydraulics.panel(), array)))
                        .toList();
        return Optional.of(new WaterCircuit(installation, hydraulics, arrays));
    }

    private static Watered watered(Hydraulics hydraulics, CollectorArray array, List<List<HungRow>> rows) {
        FieldFlow field = new FieldFlow(hydraulics, rows, array.flowKgSM2());
        double kgS = array.flowKgSM2()
                * rows.stream()
                        .flatMap(List::stream)
                        .mapToDouble(HungRow::areaM2)
                        .sum();
        return new Watered(array, field, field.divide(kgS), field.dropPa(kgS), field.pipesM());
    }

    private static List<List<HungRow>> hung(ArrayLayout layout) {
        List<List<HungRow>> surfaces = new ArrayList<>();
        for (SurfaceLayout surface : layout.layout().surfaces()) {
            if (!surface.banks().isEmpty()) {
                surfaces.add(surface.rowPipes().stream()
                        .map(row -> new HungRow(
                                row.acrossM(),
                                row.alongM(),
                                row.banks().stream()
                                        .map(bank -> hung(surface, bank))
                                        .toList()))
                        .toList());
            }
        }
        return surfaces;
    }

    private static Hung hung(SurfaceLayout surface, Bank bank) {
        return new Hung(
                surface.surface().name(),
                surface.number(bank),
                bank.row(),
                bank.panels(),
                bank.panelLengthM(),
                bank.panelWidthM());
    }

    /** Banks end to end, as even as whole panels allow. */
    private static List<List<HungRow>> hung(PanelTubes tubes, CollectorArray array) {
        PanelTubes.Shape shape = tubes.shape()
                .orElseThrow(() -> new IllegalArgumentException(
                        "hydraulics without a drawn roof need length, width and number of the panels of a bank"));
        int panels = (int) Math.max(1, Math.rint(array.areaM2() / (shape.lengthM() * shape.widthM())));
        int banks = (panels + shape.perBank() - 1) / shape.perBank();
        List<Hung> hung = new ArrayList<>();
        List<Double> at = new ArrayList<>();
        double along = 0;
        for (int bank = 0; bank < banks; bank++) {
            int some = panels / banks + (bank < panels % banks ? 1 : 0);
            hung.add(new Hung("", bank + 1, 1, some, shape.lengthM(), shape.widthM()));
            at.add(along);
            along += some * shape.widthM();
        }
        return List.of(List.of(new HungRow(0, at, hung)));
    }

    /**
     * An installation as its hydraulics make it: pump power, heat loss of its pipes, and how the flow of every array divides.
     * As it is where they are not told.
     */
    public static Installation applied(Installation installation) {
        return of(installation).map(WaterCircuit::applied).orElse(installation);
    }

    /**
     * The circuit at the flow at which its pump's curve meets it, in place of that of the arrays, the same for each m² of all
     * of them.
     *
     * @throws IllegalArgumentException if there is no such flow, or no collector takes it
     */
    public static WaterCircuit atPumpsFlow(Installation installation) {
        WaterCircuit circuit = of(installation)
                .orElseThrow(
                        () -> new IllegalArgumentException("the flow of a pump asks for a circuit, which is not told"));
        double kgSM2 = circuit.pumpsFlowM3S().orElseThrow(() -> new IllegalArgumentException(circuit.noFlow()))
                * WATER.densityKgM3()
                / installation.collectorAreaM2();
        if (!CollectorArray.FLOW.holds(kgSM2)) {
            throw new IllegalArgumentException("the pump would drive " + CollectorArray.FLOW.write(kgSM2)
                    + " through the collectors; allowed: " + CollectorArray.FLOW.ends());
        }
        return of(installation.toBuilder()
                        .arrays(installation.arrays().stream()
                                .map(array -> array.withFlowKgSM2(kgSM2))
                                .toList())
                        .build())
                .orElseThrow();
    }

    private String noFlow() {
        PumpCurve curve = hydraulics.pump().curve().orElseThrow();
        PumpCurve.Point weakest = curve.points().get(curve.points().size() - 1);
        PumpCurve.Point strongest = curve.points().get(0);
        double atEnd = headM(curve.largestM3S());
        return weakest.headM() > atEnd
                ? String.format(
                        Locale.ROOT,
                        "the pump runs beyond its curve: at %.1f m3/h it gives %.1f m and the circuit takes only %.1f m; give"
                                + " more points, or the flow of the collectors, to which a valve throttles it",
                        3600 * weakest.flowM3S(),
                        weakest.headM(),
                        atEnd)
                : String.format(
                        Locale.ROOT,
                        "the pump does not reach the collectors: it gives at most %.1f m and the circuit takes %.1f m before"
                                + " anything flows; take another pump, or a return that stays full",
                        strongest.headM(),
                        headM(Math.max(strongest.flowM3S(), curve.largestM3S() / 1000)));
    }

    /** Pump power and heat loss of its pipes; the loss that is given where it does not follow. */
    Pipes pipes() {
        Pipes pipes = built.pipes().withPumpPowerW(powerW());
        OptionalDouble loss = heatLossWK();
        return loss.isPresent() ? pipes.withHeatLossWK(loss.getAsDouble()) : pipes;
    }

    /** Its installation with the pump power, heat loss and division of the flow that it makes. */
    public Installation applied() {
        List<CollectorArray> divided = new ArrayList<>();
        int next = 0;
        for (CollectorArray array : built.arrays()) {
            // those of which nothing is laid have no water here; of two that are alike each has its own
            boolean hasWater = next < arrays.size() && arrays.get(next).array.equals(array);
            divided.add(array.withSplit(hasWater ? split(arrays.get(next++)) : FlowSplit.EVEN));
        }
        return built.toBuilder().pipes(pipes()).arrays(divided).build();
    }

    private static FlowSplit split(Watered one) {
        double area = one.laidM2();
        List<FlowSplit.Part> parts = new ArrayList<>();
        for (Flowing flowing : one.flowing) {
            double panel = flowing.bank().areaM2() / flowing.bank().panels();
            flowing.panels()
                    .kgS()
                    .forEach(kgS -> parts.add(new FlowSplit.Part(panel / area, kgS / panel / (one.laidKgS() / area))));
        }
        return new FlowSplit(parts);
    }

    /** Flow of volume, m³/s. */
    public double flowM3S() {
        return flowKgS / WATER.densityKgM3();
    }

    /** The same, m³/h. */
    public double flowM3h() {
        return 3600 * flowM3S();
    }

    /** Head that the circuit takes at its flow, m. */
    public double headM() {
        return headM(flowM3S());
    }

    /** Head that it takes at another flow, m³/s above 0, in the same proportions among its arrays. */
    public double headM(double flowM3S) {
        double share = flowM3S / flowM3S();
        return hydraulics.lift().pumpedM()
                + metres(run().dropPa(share * flowKgS, WATER)
                        + arrays.stream()
                                .mapToDouble(one -> one.field.dropPa(share * one.laidKgS()))
                                .max()
                                .orElse(0));
    }

    /** Head that the pump gives at the circuit's flow, m; what the circuit does not take of it a valve throttles. */
    public double pumpHeadM() {
        return hydraulics.pump().headM(flowM3S(), headM());
    }

    /** Electric power of the pump, W. */
    public double powerW() {
        return hydraulics.pump().powerW(flowM3S(), WATER.densityKgM3(), pumpHeadM());
    }

    /** Flow at which the pump's curve meets the circuit, m³/s; nothing without a curve, or where they do not meet. */
    public OptionalDouble pumpsFlowM3S() {
        return hydraulics
                .pump()
                .curve()
                .map(curve -> curve.meets(flow -> headM(Math.max(flow, curve.largestM3S() / 1000))))
                .orElse(OptionalDouble.empty());
    }

    /** What the pipes lose to the air, W/K; nothing where that is not told. */
    public OptionalDouble heatLossWK() {
        return hydraulics
                .pipe()
                .heatLossWK(pipesOnRoofM())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** Length of the pipes on the roof beside the banks, m. */
    public double pipesOnRoofM() {
        return arrays.stream().mapToDouble(Watered::pipesM).sum();
    }

    /** Water in pipes, headers and collectors, m³. */
    public double contentM3() {
        double headers = arrays.stream()
                .flatMap(one -> one.flowing.stream())
                .map(Flowing::bank)
                .mapToDouble(bank -> 2
                        * hydraulics
                                .panel()
                                .header(bank.panels() * bank.panelWidthM())
                                .contentM3())
                .sum();
        double panels = built.arrays().stream()
                .mapToDouble(array -> array.areaM2() * array.filling().waterLM2() / 1000)
                .sum();
        return run().contentM3() + hydraulics.pipe().straight(pipesOnRoofM()).contentM3() + headers + panels;
    }

    /** Greatest speed in the pipe, m/s. */
    public double pipeMs() {
        return run().speedMs(flowKgS, WATER);
    }

    /**
     * Pressure at the highest point where the return leaves it, over that of the air, kPa: what the way down still uses up,
     * less the height that the full return pulls at.
     */
    public double topKpa() {
        double down = run().dropPa(flowKgS, WATER) / 2;
        return (down
                        - (hydraulics.lift().heightM() - hydraulics.lift().pumpedM())
                                * WATER.densityKgM3()
                                * Constants.GRAVITY)
                / 1000;
    }

    /** Where its head goes, means over the water that runs; they sum up to it. */
    public List<PartHead> parts() {
        double run = run().dropPa(flowKgS, WATER);
        double most = arrays.stream().mapToDouble(Watered::dropPa).max().orElse(0);
        double laid = arrays.stream().mapToDouble(Watered::laidKgS).sum();
        double banks = 0;
        double tubes = 0;
        for (Watered one : arrays) {
            for (Flowing flowing : one.flowing) {
                double connection = hydraulics.panel().connection().dropPa(flowing.kgS(), WATER);
                banks += flowing.kgS() / laid * (flowing.panels().dropPa() + connection);
                for (double kgS : flowing.panels().kgS()) {
                    tubes += kgS
                            / laid
                            * hydraulics
                                    .panel()
                                    .inside()
                                    .panel(flowing.bank().panelLengthM(), WATER)
                                    .dropPa(kgS);
                }
            }
        }
        return List.of(
                new PartHead(Part.LIFT, hydraulics.lift().pumpedM()),
                new PartHead(Part.RUN, metres(run)),
                new PartHead(Part.ROOF_PIPES, metres(most - banks)),
                new PartHead(Part.HEADERS, metres(banks - tubes)),
                new PartHead(Part.TUBES, metres(tubes)));
    }

    /** Every bank with its water. */
    public List<BankFlow> banks() {
        return arrays.stream()
                .flatMap(one -> one.flowing.stream().map(flowing -> bank(one, flowing)))
                .toList();
    }

    private BankFlow bank(Watered one, Flowing flowing) {
        Hung bank = flowing.bank();
        double even = one.array.flowKgSM2();
        double panel = bank.areaM2() / bank.panels();
        double least =
                flowing.panels().kgS().stream().mapToDouble(kgS -> kgS).min().orElse(0);
        return new BankFlow(
                one.array.name(),
                bank.surface(),
                bank.number(),
                bank.row(),
                bank.panels(),
                3600 * flowing.kgS() / WATER.densityKgM3(),
                flowing.kgS() / bank.areaM2() / even,
                least / panel / even,
                hydraulics.panel().header(0).speedMs(flowing.kgS(), WATER));
    }

    /** The installation that it is of. */
    public Installation installation() {
        return built;
    }

    /** What it follows. */
    public Hydraulics hydraulics() {
        return hydraulics;
    }

    private Pipe run() {
        return hydraulics.pipe().run();
    }

    private static double metres(double pascal) {
        return pascal / (WATER.densityKgM3() * Constants.GRAVITY);
    }
}
