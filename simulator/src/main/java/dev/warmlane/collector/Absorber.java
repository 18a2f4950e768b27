package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.physics.SurfaceRoughness;
import dev.warmlane.units.Range;
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

    /**
     * A usual black plastic mat of tubes. From memory and of low certainty: absorptance 0.94, emittance 0.92,
     * plate-to-fluid conductance 250 W/m²K (efficiency factor about 0.93 at a loss coefficient of 20 W/m²K, the middle
     * of what mats of small tubes side by side reach); medium smooth.
     */
    public static final Absorber USUAL_MAT =
            new Absorber(0.94, 0.92, SurfaceRoughness.MEDIUM_SMOOTH.factor(), new PlateToFluid.Conductance(250));

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
