package dev.warmlane.study;

import dev.warmlane.study.Parameter.Ends;
import dev.warmlane.study.Parameter.Lens;
import dev.warmlane.units.Dimension;
import java.util.List;

/** Parameters of pipes and control. */
final class PlantParameters {

    static final Parameter STOP = new NumberParameter(
            "stop difference",
            Dimension.TEMPERATURE_DIFFERENCE,
            new Lens(i -> List.of(i.control().offDifferenceK()), (i, to) -> i.toBuilder()
                    .control(i.control()
                            .withOffDifferenceK(to.applyAsDouble(i.control().offDifferenceK())))
                    .build()),
            Ends.at(0.1, 1),
            "from what sensors can just tell apart to what a control is often left at; common practice, no" + " source",
            "");

    static final List<Parameter> ALL = List.of(
            new NumberParameter(
                    "heat loss of the pipes",
                    Dimension.CONDUCTANCE,
                    new Lens(
                            i -> i.pipes().heatLossWK() > 0 ? List.of(i.pipes().heatLossWK()) : List.of(),
                            (i, to) -> i.toBuilder()
                                    .pipes(i.pipes()
                                            .withHeatLossWK(
                                                    to.applyAsDouble(i.pipes().heatLossWK())))
                                    .build()),
                    new Ends(loss -> loss / 2, loss -> Math.min(5000, loss * 2)),
                    "half and double, for runs and insulation other than drawn; common practice, no source",
                    "no heat loss of pipes is given"),
            STOP);

    private PlantParameters() {}
}
