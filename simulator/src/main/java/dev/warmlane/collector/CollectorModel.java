package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;

/** How a collector turns irradiance and warmth into useful heat: from its build, or from a test certificate. */
public sealed interface CollectorModel permits Absorber, CertificateCurve {

    /** How much less it absorbs of light that does not come straight on. */
    IncidenceModifier incidence();
}
