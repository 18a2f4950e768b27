package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.physics.SurfaceRoughness;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.function.Function;

/**
 * An unglazed absorber described by its surface and its conductance from plate to fluid.
 *
 * @param absorptance short-wave absorptance at normal incidence
 * @param emittance long-wave emittance
 * @param roughnessFactor roughness of the surface for forced convection, 1 (very smooth) to 2.2 (very rough)
 * @param plateToFluid the way from plate to fluid
 * @param incidence how much less it absorbs of light that does not come straight on
 */
public record Absorber(
        double absorptance,
        double emittance,
        double roughnessFactor,
        PlateToFluid plateToFluid,
        IncidenceModifier incidence)
        implements CollectorModel {

    /** Range of {@link #absorptance}. */
    public static final Range ABSORPTANCE = Range.share("absorptance", 0.3, 1);

    /** Range of {@link #emittance}. */
    public static final Range EMITTANCE = Range.share("emittance", 0.05, 1);

    /** Range of {@link #roughnessFactor}. */
    public static final Range ROUGHNESS = SurfaceRoughness.FACTOR.named("collector roughness factor");

    private static final String MAT = "usual black plastic mat, from memory, low certainty";

    /** Usual {@link #absorptance}. */
    public static final Usual USUAL_ABSORPTANCE = ABSORPTANCE.usually(0.94, MAT);

    /** Usual {@link #emittance}. */
    public static final Usual USUAL_EMITTANCE = EMITTANCE.usually(0.92, MAT);

    /** Usual {@link #roughnessFactor}. */
    public static final Usual USUAL_ROUGHNESS = ROUGHNESS.usually(
            SurfaceRoughness.MEDIUM_SMOOTH.factor(), "medium smooth, ASHRAE after Walton, from memory");

    /**
     * Usual conductance from plate to fluid, W/m²K: an efficiency factor of about 0.93 at a loss coefficient of 20 W/m²K, the
     * middle of what mats of small tubes side by side reach.
     */
    public static final Usual USUAL_CONDUCTANCE = PlateToFluid.Conductance.CONDUCTANCE.usually(250, MAT);

    /** A usual black plastic mat of tubes. */
    public static final Absorber USUAL_MAT = new Absorber(
            USUAL_ABSORPTANCE.value(),
            USUAL_EMITTANCE.value(),
            USUAL_ROUGHNESS.value(),
            new PlateToFluid.Conductance(USUAL_CONDUCTANCE.value()));

    /** An absorber that takes slanting light as matte black paint does. */
    public Absorber(double absorptance, double emittance, double roughnessFactor, PlateToFluid plateToFluid) {
        this(absorptance, emittance, roughnessFactor, plateToFluid, new MatteBlack());
    }

    /** Checks every range. */
    public Absorber {
        ABSORPTANCE.check(absorptance);
        EMITTANCE.check(emittance);
        ROUGHNESS.check(roughnessFactor);
    }

    /** The same absorber with another absorptance. */
    public Absorber withAbsorptance(double value) {
        return new Absorber(value, emittance, roughnessFactor, plateToFluid, incidence);
    }

    /** The same absorber with another emittance. */
    public Absorber withEmittance(double value) {
        return new Absorber(absorptance, value, roughnessFactor, plateToFluid, incidence);
    }

    /** The same absorber with another roughness factor. */
    public Absorber withRoughnessFactor(double value) {
        return new Absorber(absorptance, emittance, value, plateToFluid, incidence);
    }

    /** The same absorber with another way from plate to fluid. */
    public Absorber withPlateToFluid(PlateToFluid value) {
        return new Absorber(absorptance, emittance, roughnessFactor, value, incidence);
    }

    @Override
    public <T> T match(
            Function<Absorber, T> absorber,
            Function<CertificateCurve, T> certificate,
            Function<MeasuredCurve, T> curve) {
        return absorber.apply(this);
    }
}
