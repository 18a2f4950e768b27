package dev.warmlane.scenario;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.PipeRun;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.scenario.CircuitKeys.BanksKind;
import dev.warmlane.scenario.CircuitKeys.ConnectionKind;
import dev.warmlane.scenario.CircuitKeys.ReturnKind;
import java.util.Optional;

/** Writes pipes, panel and pump. */
final class CircuitWriter {

    private CircuitWriter() {}

    /** Writes what is told of them; what follows from it is left to be computed again. */
    static void write(TomlText out, Pipes pipes, Optional<Hydraulics> hydraulics) {
        out.section("[pipes]");
        if (hydraulics.flatMap(told -> told.pipe().coat()).isEmpty()) {
            out.key(CircuitKeys.HEAT_LOSS, pipes.heatLossWK());
        }
        hydraulics.ifPresentOrElse(
                told -> {
                    run(out, told);
                    panel(out, told.panel());
                    out.section("[pump]")
                            .key(CircuitKeys.EFFICIENCY, told.pump().efficiency());
                    told.pump().curve().ifPresent(curve -> out.key(CircuitKeys.CURVE, curve));
                },
                () -> out.key(CircuitKeys.PUMP_POWER, pipes.pumpPowerW()));
    }

    private static void run(TomlText out, Hydraulics told) {
        PipeRun run = told.pipe();
        out.key(CircuitKeys.INNER_DIAMETER, run.innerM())
                .key(CircuitKeys.LENGTH, run.lengthM())
                .key(CircuitKeys.ROUGHNESS, run.roughnessM())
                .key(CircuitKeys.FITTINGS, run.lossFactor())
                .key(CircuitKeys.LIFT, told.lift().heightM())
                .key(CircuitKeys.RETURN, told.lift().returnsFull() ? ReturnKind.FULL : ReturnKind.OPEN)
                .key(
                        CircuitKeys.BANKS,
                        told.banks() == Manifold.Outlet.FAR_END ? BanksKind.REVERSED : BanksKind.DIRECT);
        run.coat().ifPresent(coat -> out.key(CircuitKeys.OUTER_DIAMETER, coat.outerM())
                .key(CircuitKeys.WALL_CONDUCTIVITY, coat.wallWmK())
                .key(CircuitKeys.INSULATION, coat.insulationM())
                .key(CircuitKeys.INSULATION_CONDUCTIVITY, coat.insulationWmK())
                .key(CircuitKeys.BURIED, coat.buriedM())
                .key(CircuitKeys.DEPTH, coat.depthM()));
    }

    private static void panel(TomlText out, PanelTubes tubes) {
        out.section("[panel]");
        tubes.inside()
                .match(
                        inside -> out.key(CircuitKeys.TUBES, inside.number())
                                .key(CircuitKeys.TUBE_DIAMETER, inside.innerM())
                                .key(CircuitKeys.END_LOSSES, inside.endLosses()),
                        measured -> out.key(CircuitKeys.PRESSURE_DROP, measured.drop())
                                .key(CircuitKeys.MEASURED_LENGTH, measured.lengthM()));
        out.key(CircuitKeys.HEADER_DIAMETER, tubes.headerInnerM())
                .key(
                        CircuitKeys.CONNECTION,
                        tubes.outlet() == Manifold.Outlet.FAR_END ? ConnectionKind.DIAGONAL : ConnectionKind.SAME_END);
        tubes.shape().ifPresent(shape -> out.key(CircuitKeys.PANEL_LENGTH, shape.lengthM())
                .key(CircuitKeys.PANEL_WIDTH, shape.widthM())
                .key(CircuitKeys.PER_BANK, shape.perBank()));
    }
}
