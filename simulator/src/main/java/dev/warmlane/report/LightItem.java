package dev.warmlane.report;

import dev.warmlane.collector.PlateFlow;
import dev.warmlane.study.LightBudget;

/** The ways that light on a collector takes, as tables show them: heat gained positive, heat lost negative. */
@SuppressWarnings("ImmutableEnumChecker") // method references without state
public enum LightItem {
    ABSORBED_FRONT(PlateFlow.ABSORBED_FRONT),
    ABSORBED_BACK(PlateFlow.ABSORBED_BACK),
    CONVECTION_FRONT(PlateFlow.CONVECTION_FRONT),
    CONVECTION_BACK(PlateFlow.CONVECTION_BACK),
    LONG_WAVE_FRONT(PlateFlow.LONG_WAVE_FRONT),
    LONG_WAVE_BACK(PlateFlow.LONG_WAVE_BACK),
    THROUGH_BACK(PlateFlow.THROUGH_BACK),
    USEFUL(PlateFlow.USEFUL);

    private final PlateFlow flow;

    LightItem(PlateFlow flow) {
        this.flow = flow;
    }

    /** The words for it. */
    public String label() {
        return flow.label();
    }

    /** What it adds to useful heat, kWh/m²; losses below 0. */
    public double gained(LightBudget light) {
        return flow.side() == PlateFlow.Side.LOST ? -1 * light.kwhM2(flow) : light.kwhM2(flow);
    }
}
