package dev.warmlane.scenario;

import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.irradiance.IncidenceModifier;
import java.util.List;

/** Keys of the section collectors.incidence. */
final class IncidenceKeys {

    static final Key<Surface> SURFACE = Key.assumed(
            "surface",
            WordKinds.choice(Surface.class),
            "a surface with modifiers of its own; or give those of a certificate instead",
            Surface.MATTE_BLACK,
            "Duffie and Beckman equation 4.11.1, from memory");
    static final Key<List<Double>> BEAM = Key.optional(
            "beam",
            new TenNumbersKind(),
            "modifiers for beam at 0, 10, 20 ... 90 degrees from the normal",
            "from surface; not with surface or b0");
    static final Key<Double> B0 = Key.optional(
            "b0",
            AngleCoefficient.B0,
            "coefficient of the modifier for beam, K = 1 - b0 (1/cos - 1)",
            "from surface; not with surface or beam");
    static final Key<Double> DIFFUSE = Key.optional(
            "diffuse", IncidenceModifier.DIFFUSE, "modifier for all diffuse light", "required with beam or b0");

    static final SectionSchema INCIDENCE = SectionSchema.optional(
            "incidence",
            "how much less the collectors take of slanting light, for an absorber or a certificate",
            SURFACE,
            BEAM,
            B0,
            DIFFUSE);

    private IncidenceKeys() {}

    /** Surfaces with modifiers of their own. */
    enum Surface {
        MATTE_BLACK
    }
}
