package dev.warmlane.report;

import dev.warmlane.study.LightBudget;
import java.util.function.ToDoubleFunction;

/** The ways that light on a collector takes, as tables show them: heat gained positive, heat lost negative. */
@SuppressWarnings("ImmutableEnumChecker") // method references without state
public enum LightItem {
    ABSORBED_FRONT("sun absorbed by the front", LightBudget::absorbedFront, 1),
    ABSORBED_BACK("sun absorbed by an open back", LightBudget::absorbedBack, 1),
    CONVECTION_FRONT("wind and air on the front", LightBudget::convectionFront, -1),
    CONVECTION_BACK("wind and air on an open back", LightBudget::convectionBack, -1),
    LONG_WAVE_FRONT("long-wave from the front", LightBudget::longWaveFront, -1),
    LONG_WAVE_BACK("long-wave from an open back", LightBudget::longWaveBack, -1),
    THROUGH_BACK("through a closed back", LightBudget::throughBack, -1),
    USEFUL("useful heat", LightBudget::useful, 1);

    private final String label;
    private final ToDoubleFunction<LightBudget> amount;
    private final int sign;

    LightItem(String label, ToDoubleFunction<LightBudget> amount, int sign) {
        this.label = label;
        this.amount = amount;
        this.sign = sign;
    }

    /** The words for it. */
    public String label() {
        return label;
    }

    /** What it adds to useful heat, kWh/m²; losses below 0. */
    public double gained(LightBudget light) {
        return sign * amount.applyAsDouble(light);
    }
}
