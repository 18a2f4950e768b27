package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import java.util.Optional;
import java.util.function.Function;

/** How a collector turns irradiance and warmth into useful heat: from its build, or from a test certificate. */
public sealed interface CollectorModel permits Absorber, CertificateCurve {

    /** How much less it absorbs of light that does not come straight on. */
    IncidenceModifier incidence();

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Absorber, T> absorber, Function<CertificateCurve, T> certificate);

    /** The absorber that it is known by; nothing for a certificate. */
    default Optional<Absorber> absorber() {
        return match(Optional::of, certificate -> Optional.empty());
    }

    /** The certificate that it is known by; nothing for an absorber. */
    default Optional<CertificateCurve> certificate() {
        return match(absorber -> Optional.empty(), Optional::of);
    }
}
