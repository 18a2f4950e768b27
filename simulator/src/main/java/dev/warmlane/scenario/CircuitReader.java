package dev.warmlane.scenario;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelInside;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.PipeRun;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.circuit.PumpChoice;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.hydraulics.MeasuredDrop;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.scenario.CircuitKeys.BanksKind;
import dev.warmlane.scenario.CircuitKeys.ConnectionKind;
import dev.warmlane.scenario.CircuitKeys.ReturnKind;
import dev.warmlane.season.Installation;
import dev.warmlane.study.WaterCircuit;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads pipes, panel and pump. */
final class CircuitReader {

    /** Twice what is usual; own choice. */
    private static final double HARDLY_MEANT_MS = 3;

    /** Water of 40 °C boils at 7.4 kPa (IAPWS-IF97), this much below the air at sea level. */
    private static final double BOILS_KPA = 7.4 - 101.3;

    /** Share of the head that meets it. */
    private static final double MEETS = 0.98;

    private final Section pipes;
    private final Section panel;
    private final Section pump;

    CircuitReader(Section pipes, Section panel, Section pump) {
        this.pipes = pipes;
        this.panel = panel;
        this.pump = pump;
    }

    /** Whether the flow is that at which the pump meets the circuit, for collectors that do not say theirs. */
    boolean flowIsThePumps() {
        return panel.present() && pump.has(CircuitKeys.CURVE);
    }

    /** Heat loss and power as they are given; what follows from the circuit comes later. */
    @Nullable
    Pipes pipes() {
        if (pipes.has(CircuitKeys.OUTER_DIAMETER)) {
            pipes.refuse("not allowed with outer_diameter, from which it follows", CircuitKeys.HEAT_LOSS);
        }
        if (panel.present()) {
            pipes.refuse("not allowed with [panel], from which it follows", CircuitKeys.PUMP_POWER);
        }
        double loss = pipes.has(CircuitKeys.OUTER_DIAMETER) ? 0 : pipes.get(CircuitKeys.HEAT_LOSS);
        double power = panel.present() ? 0 : pipes.get(CircuitKeys.PUMP_POWER);
        return pipes.build(() -> new Pipes(loss, power));
    }

    /**
     * What the water has to pass; nothing where it is not told, or anything about it is wrong.
     *
     * @param drawn whether the roof is drawn
     * @param roofHeightM height of the roof, which stands for the lift
     */
    @Nullable
    Hydraulics hydraulics(boolean drawn, double roofHeightM) {
        if (!panel.present()) {
            pipes.refuse(
                    "is for the pressure of the circuit, which asks for [panel] too",
                    CircuitKeys.INNER_DIAMETER,
                    CircuitKeys.LENGTH,
                    CircuitKeys.ROUGHNESS,
                    CircuitKeys.FITTINGS,
                    CircuitKeys.LIFT,
                    CircuitKeys.RETURN,
                    CircuitKeys.BANKS,
                    CircuitKeys.OUTER_DIAMETER,
                    CircuitKeys.WALL_CONDUCTIVITY,
                    CircuitKeys.INSULATION,
                    CircuitKeys.INSULATION_CONDUCTIVITY,
                    CircuitKeys.BURIED,
                    CircuitKeys.DEPTH);
            if (pump.present()) {
                pump.error("asks for [panel], which says what the pump has to press through");
            }
            return null;
        }
        PanelTubes tubes = tubes(drawn);
        PipeRun run = run();
        Manifold.Outlet banks =
                pipes.get(CircuitKeys.BANKS) == BanksKind.REVERSED ? Manifold.Outlet.FAR_END : Manifold.Outlet.SAME_END;
        double height = pipes.get(CircuitKeys.LIFT, roofHeightM, "as high as the roof");
        boolean full = pipes.get(CircuitKeys.RETURN) == ReturnKind.FULL;
        double efficiency = pump.get(CircuitKeys.EFFICIENCY);
        Optional<PumpCurve> curve =
                pump.has(CircuitKeys.CURVE) ? Optional.of(pump.get(CircuitKeys.CURVE)) : Optional.empty();
        PumpChoice choice = pump.build(() -> new PumpChoice(efficiency, curve));
        return tubes == null || run == null || choice == null
                ? null
                : pipes.build(() -> new Hydraulics(tubes, run, banks, new Hydraulics.Lift(height, full), choice));
    }

    private @Nullable PanelTubes tubes(boolean drawn) {
        PanelInside inside = inside(drawn);
        double header = panel.get(CircuitKeys.HEADER_DIAMETER);
        Manifold.Outlet outlet = panel.get(CircuitKeys.CONNECTION) == ConnectionKind.DIAGONAL
                ? Manifold.Outlet.FAR_END
                : Manifold.Outlet.SAME_END;
        Optional<PanelTubes.Shape> shape = Optional.empty();
        if (drawn) {
            panel.refuse(
                    "not allowed where the roof is drawn: [layout] has it",
                    CircuitKeys.PANEL_LENGTH,
                    CircuitKeys.PANEL_WIDTH,
                    CircuitKeys.PER_BANK);
        } else {
            shape = Optional.of(new PanelTubes.Shape(
                    panel.get(CircuitKeys.PANEL_LENGTH),
                    panel.get(CircuitKeys.PANEL_WIDTH),
                    panel.get(CircuitKeys.PER_BANK)));
        }
        Optional<PanelTubes.Shape> known = shape;
        return panel.build(() -> new PanelTubes(Objects.requireNonNull(inside), header, outlet, known));
    }

    private @Nullable PanelInside inside(boolean drawn) {
        if (panel.has(CircuitKeys.PRESSURE_DROP)) {
            panel.refuse(
                    "not allowed with pressure_drop; give what was measured, or tubes and tube_diameter",
                    CircuitKeys.TUBES,
                    CircuitKeys.TUBE_DIAMETER,
                    CircuitKeys.END_LOSSES);
            MeasuredDrop drop = panel.get(CircuitKeys.PRESSURE_DROP);
            double length = drawn || panel.has(CircuitKeys.MEASURED_LENGTH)
                    ? panel.get(CircuitKeys.MEASURED_LENGTH)
                    : panel.get(CircuitKeys.PANEL_LENGTH);
            return panel.build(() -> new PanelInside.Measured(drop, length));
        }
        panel.refuse("is for pressure_drop", CircuitKeys.MEASURED_LENGTH);
        int number = panel.get(CircuitKeys.TUBES);
        double tube = panel.get(CircuitKeys.TUBE_DIAMETER);
        double ends = panel.get(CircuitKeys.END_LOSSES);
        return panel.build(() -> new PanelInside.Tubes(number, tube, ends));
    }

    private @Nullable PipeRun run() {
        double inner = pipes.get(CircuitKeys.INNER_DIAMETER);
        double length = pipes.get(CircuitKeys.LENGTH);
        double roughness = pipes.get(CircuitKeys.ROUGHNESS);
        double fittings = pipes.get(CircuitKeys.FITTINGS);
        if (!pipes.has(CircuitKeys.OUTER_DIAMETER)) {
            pipes.refuse(
                    "is for the heat loss of the pipe, which asks for outer_diameter too",
                    CircuitKeys.WALL_CONDUCTIVITY,
                    CircuitKeys.INSULATION,
                    CircuitKeys.INSULATION_CONDUCTIVITY,
                    CircuitKeys.BURIED,
                    CircuitKeys.DEPTH);
            return pipes.build(() -> new PipeRun(inner, length, roughness, fittings, Optional.empty()));
        }
        double outer = pipes.get(CircuitKeys.OUTER_DIAMETER);
        double wall = pipes.get(CircuitKeys.WALL_CONDUCTIVITY);
        double thick = pipes.get(CircuitKeys.INSULATION);
        double foam = thick > 0 || pipes.has(CircuitKeys.INSULATION_CONDUCTIVITY)
                ? pipes.get(CircuitKeys.INSULATION_CONDUCTIVITY)
                : PipeRun.Coat.USUAL_INSULATION.value();
        double buried = pipes.get(CircuitKeys.BURIED);
        double depth = buried > 0 || pipes.has(CircuitKeys.DEPTH)
                ? pipes.get(CircuitKeys.DEPTH)
                : PipeRun.Coat.USUAL_DEPTH.value();
        if (pipes.sound(CircuitKeys.OUTER_DIAMETER) && pipes.sound(CircuitKeys.INNER_DIAMETER) && outer <= inner) {
            pipes.error(
                    CircuitKeys.OUTER_DIAMETER,
                    "must be above inner_diameter, "
                            + CircuitKeys.INNER_DIAMETER.kind().show(inner));
        }
        if (pipes.sound(CircuitKeys.LENGTH) && buried > length) {
            pipes.error(
                    CircuitKeys.BURIED,
                    "is more than length, " + CircuitKeys.LENGTH.kind().show(length)
                            + "; what lies on the roof beside the banks is not in it");
        }
        if (buried > 0 && depth <= outer / 2 + thick) {
            pipes.error(CircuitKeys.DEPTH, "is less than half of what the pipe is thick with its insulation");
        }
        return pipes.build(() -> new PipeRun(
                inner,
                length,
                roughness,
                fittings,
                Optional.of(new PipeRun.Coat(outer, wall, thick, foam, buried, depth))));
    }

    /** Refuses a pump's curve where only some of the collectors say their flow. */
    void checkFlows(List<Section> collectors) {
        long told = collectors.stream().filter(s -> s.has(CollectorKeys.FLOW)).count();
        if (flowIsThePumps() && told > 0 && told < collectors.size()) {
            pump.error(
                    CircuitKeys.CURVE,
                    "drives all collectors: give the flow of each of them, or of none for the one at which pump and circuit"
                            + " meet");
        }
    }

    /**
     * What is built, with the pump power, heat loss and flows that its circuit makes.
     *
     * @param ownFlow whether the collectors say their flow
     */
    Installation applied(Installation built, boolean ownFlow) {
        if (built.hydraulics().isEmpty() || built.arrays().isEmpty()) {
            return built;
        }
        try {
            WaterCircuit circuit = flowIsThePumps() && !ownFlow
                    ? WaterCircuit.atPumpsFlow(built)
                    : WaterCircuit.of(built).orElseThrow();
            if (ownFlow) {
                checkReaches(circuit);
            }
            warn(circuit);
            return circuit.applied();
        } catch (IllegalArgumentException e) {
            String why = String.valueOf(e.getMessage());
            if (flowIsThePumps()) {
                pump.error(CircuitKeys.CURVE, why);
            } else {
                panel.error(CircuitKeys.HEADER_DIAMETER, why);
            }
            return built;
        }
    }

    /** Warns of pipes and lifts that are hardly meant. */
    private void warn(WaterCircuit circuit) {
        double lift = circuit.hydraulics().lift().heightM();
        circuit.hydraulics()
                .pump()
                .curve()
                .map(curve -> curve.points().get(0).headM())
                .filter(most -> most < lift)
                .ifPresent(most -> pump.warning(
                        CircuitKeys.CURVE,
                        String.format(
                                Locale.ROOT,
                                "gives at most %.1f m and cannot fill the pipes up to the lift of %.1f m when it starts",
                                most,
                                lift)));
        if (circuit.pipeMs() > HARDLY_MEANT_MS) {
            pipes.warning(
                    CircuitKeys.INNER_DIAMETER,
                    String.format(
                            Locale.ROOT,
                            "water would run at %.1f m/s in it; up to 1.5 is usual: check it and the flow",
                            circuit.pipeMs()));
        }
        if (circuit.topKpa() < BOILS_KPA) {
            pipes.warning(
                    CircuitKeys.RETURN,
                    String.format(
                            Locale.ROOT,
                            "the full return would pull with %.0f kPa at the top, where water boils and the return breaks:"
                                    + " write return = \"open\"",
                            -circuit.topKpa()));
        }
    }

    /** Refuses a flow that the pump cannot give. */
    private void checkReaches(WaterCircuit circuit) {
        circuit.hydraulics().pump().curve().ifPresent(curve -> {
            double gives = curve.headM(circuit.flowM3S()).orElse(0);
            // a flow that was written at which they meet is read again but for what networks are solved to
            if (gives < MEETS * circuit.headM()) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "the pump gives %.1f m at %.1f m3/h and the circuit takes %.1f m; leave out the flow of the"
                                + " collectors for what the pump can do, or take another pump or a wider pipe",
                        gives,
                        3600 * circuit.flowM3S(),
                        circuit.headM()));
            }
        });
    }
}
