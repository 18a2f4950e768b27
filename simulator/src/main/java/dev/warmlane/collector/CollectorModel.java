package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import java.util.Optional;
import java.util.function.Function;

/**
 * How a collector turns irradiance and warmth into useful heat: from its build, from a test certificate, or by a curve of
 * one's own.
 */
public sealed interface CollectorModel permits Absorber, CertificateCurve, MeasuredCurve {

    /** How much less it absorbs of light that does not come straight on. */
    IncidenceModifier incidence();

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(
            Function<Absorber, T> absorber,
            Function<CertificateCurve, T> certificate,
            Function<MeasuredCurve, T> curve);

    /** The absorber that it is known by; nothing for any other. */
    default Optional<Absorber> absorber() {
        return match(Optional::of, certificate -> Optional.empty(), curve -> Optional.empty());
    }

    /** The certificate that it is known by; nothing for any other. */
    default Optional<CertificateCurve> certificate() {
        return match(absorber -> Optional.empty(), Optional::of, curve -> Optional.empty());
    }

    /** The curve of one's own that it is known by; nothing for any other. */
    default Optional<MeasuredCurve> curve() {
        return match(absorber -> Optional.empty(), certificate -> Optional.empty(), Optional::of);
    }
}
