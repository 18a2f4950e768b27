package dev.warmlane.scenario;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelInside;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.circuit.PipeRun;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.circuit.PumpChoice;
import dev.warmlane.hydraulics.MeasuredDrop;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.roof.PanelRules;

/** Keys of the sections pipes, panel and pump. */
final class CircuitKeys {

    private static final String WITH_PANEL = "required with [panel]";
    private static final String UNMEASURED = "required without pressure_drop";
    private static final String UNDRAWN = "required with [panel] where no roof is drawn";

    static final Key<Double> HEAT_LOSS = Key.assumed(
            "heat_loss",
            Pipes.HEAT_LOSS,
            "heat loss of supply and return pipe to the air while running; follows from outer_diameter where that is given",
            0.0,
            "not counted; about 1 % of heat on a large job, 4 % on a small one");
    static final Key<Double> PUMP_POWER = Key.assumed(
            "pump_power",
            Pipes.PUMP_POWER,
            "electrical power that the collectors need on top of what the pool's filter needs; follows from the pressure"
                    + " with [panel]",
            0.0,
            "the filter pump does it");
    static final Key<Double> INNER_DIAMETER = Key.optional(
            "inner_diameter",
            PipeRun.INNER,
            "inner diameter of the pipe between pool and collectors and along the banks",
            WITH_PANEL);
    static final Key<Double> LENGTH = Key.optional(
            "length",
            PipeRun.LENGTH,
            "length of supply and return together between pump, collectors and pool, without what the layout puts beside the"
                    + " banks",
            WITH_PANEL);
    static final Key<Double> ROUGHNESS =
            Key.assumed("roughness", PipeRun.USUAL_ROUGHNESS, "roughness of the pipe's wall");
    static final Key<Double> FITTINGS = Key.assumed(
            "fittings", PipeRun.USUAL_LOSS_FACTOR, "sum of the loss factors of bends, tees and valves on that length");
    static final Key<Double> LIFT = Key.optional(
            "lift",
            Hydraulics.Lift.HEIGHT,
            "height of the collectors' highest point above the pool's water",
            "the height of [roof]");
    static final Key<ReturnKind> RETURN = Key.assumed(
            "return",
            WordKinds.choice(ReturnKind.class),
            "whether the return runs full down into the pool, so that what falls pulls up what rises, or air stands in it"
                    + " and the whole lift is pumped",
            ReturnKind.FULL,
            "it ends below the pool's water; common practice, no source");
    static final Key<BanksKind> BANKS = Key.assumed(
            "banks",
            WordKinds.choice(BanksKind.class),
            "return of the banks: direct beside the supply, or reversed, so that the way through each bank is as long",
            BanksKind.DIRECT,
            "it takes less pipe");
    static final Key<Double> OUTER_DIAMETER = Key.optional(
            "outer_diameter",
            PipeRun.Coat.OUTER,
            "outer diameter of the pipe; its heat loss then follows from its length",
            "heat_loss counts");
    static final Key<Double> WALL_CONDUCTIVITY =
            Key.assumed("wall_conductivity", PipeRun.Coat.USUAL_WALL, "conductivity of the pipe's wall");
    static final Key<Double> INSULATION = Key.convention(
            "insulation", PipeRun.Coat.INSULATION, "thickness of the insulation around all of the pipe", 0.0);
    static final Key<Double> INSULATION_CONDUCTIVITY =
            Key.assumed("insulation_conductivity", PipeRun.Coat.USUAL_INSULATION, "conductivity of the insulation");
    static final Key<Double> BURIED = Key.convention(
            "buried", PipeRun.LENGTH, "how much of length lies in the ground, supply and return together", 0.0);
    static final Key<Double> DEPTH =
            Key.assumed("depth", PipeRun.Coat.USUAL_DEPTH, "how deep the pipe lies in the ground");

    static final SectionSchema PIPES = SectionSchema.optional(
            "pipes",
            "pipes and pump of the collectors; with [panel] pressure, pump and division of the flow follow from what is"
                    + " described",
            HEAT_LOSS,
            PUMP_POWER,
            INNER_DIAMETER,
            LENGTH,
            ROUGHNESS,
            FITTINGS,
            LIFT,
            RETURN,
            BANKS,
            OUTER_DIAMETER,
            WALL_CONDUCTIVITY,
            INSULATION,
            INSULATION_CONDUCTIVITY,
            BURIED,
            DEPTH);

    static final Key<Integer> TUBES =
            Key.optional("tubes", Kinds.count(PanelInside.Tubes.NUMBER), "tubes of a panel, side by side", UNMEASURED);
    static final Key<Double> TUBE_DIAMETER =
            Key.optional("tube_diameter", PanelInside.Tubes.INNER, "inner diameter of a tube", UNMEASURED);
    static final Key<MeasuredDrop> PRESSURE_DROP = Key.optional(
            "pressure_drop",
            new PanelDropKind(),
            "what one panel takes between its headers as its maker measured it, instead of tubes and tube_diameter",
            "its tubes tell it");
    static final Key<Double> MEASURED_LENGTH = Key.optional(
            "pressure_drop_length",
            PanelRules.LENGTH,
            "length of the panel that was measured; what others take is in proportion to theirs",
            "required with pressure_drop where the roof is drawn, else length");
    static final Key<Double> HEADER_DIAMETER =
            Key.required("header_diameter", PanelTubes.HEADER, "inner diameter of a header");
    static final Key<Double> END_LOSSES = Key.assumed(
            "tube_end_losses",
            PanelInside.Tubes.USUAL_END_LOSSES,
            "loss factors at both ends of a tube together; more where they are throttled so that panels share evenly");
    static final Key<ConnectionKind> CONNECTION = Key.assumed(
            "connection",
            WordKinds.choice(ConnectionKind.class),
            "where water leaves a bank: at the corner across from where it comes in, or at the same end",
            ConnectionKind.DIAGONAL,
            "common practice, no source");
    static final Key<Double> PANEL_LENGTH =
            Key.optional("length", PanelRules.LENGTH, "length of a panel along its tubes", UNDRAWN);
    static final Key<Double> PANEL_WIDTH = Key.optional("width", PanelRules.WIDTH, "width of a panel", UNDRAWN);
    static final Key<Integer> PER_BANK = Key.optional(
            "per_bank",
            Kinds.count(PanelRules.PER_BANK),
            "the most panels of a bank; the banks are taken to lie end to end in one row",
            UNDRAWN);

    static final SectionSchema PANEL = SectionSchema.optional(
            "panel",
            "how water goes through the collectors; with it pressure, division of the flow and the pump's power are computed",
            TUBES,
            TUBE_DIAMETER,
            PRESSURE_DROP,
            MEASURED_LENGTH,
            HEADER_DIAMETER,
            END_LOSSES,
            CONNECTION,
            PANEL_LENGTH,
            PANEL_WIDTH,
            PER_BANK);

    static final Key<Double> EFFICIENCY = Key.assumed(
            "efficiency",
            PumpChoice.USUAL_EFFICIENCY,
            "hydraulic power over electric power of what drives the collectors' water, motor and pump together");
    static final Key<PumpCurve> CURVE = Key.optional(
            "curve",
            new PumpCurveKind(),
            "the pump's head over its flow; where no collectors say their flow it is the one at which the pump meets the"
                    + " circuit, else a valve throttles the rest",
            "a pump is chosen for what the circuit takes");

    static final SectionSchema PUMP =
            SectionSchema.optional("pump", "the pump of the collectors, only with [panel]", EFFICIENCY, CURVE);

    private CircuitKeys() {}

    /** What the return is full of. */
    enum ReturnKind {
        FULL,
        OPEN
    }

    /** The return of the banks. */
    enum BanksKind {
        DIRECT,
        REVERSED
    }

    /** Where water leaves a bank. */
    enum ConnectionKind {
        DIAGONAL,
        SAME_END
    }
}
