package dev.warmlane.irradiance;

import dev.warmlane.units.Range;
import java.util.function.Function;

/**
 * How much less a surface absorbs of light that does not come straight on: K, the ratio to normal incidence, for beam by
 * its angle and for light from the sky and the ground by one number for a mounting.
 *
 * <p>The back of a plate of tilt β is the mirror image of its front: it looks at the ground as the front looks at the
 * sky. So K for the back is {@link #skyDiffuse} of β for light from the ground and {@link #groundReflected} of β for
 * light from the sky.
 */
public sealed interface IncidenceModifier permits MatteBlack, AngleTable, AngleCoefficient {

    /** Range of K for beam at an angle, as a certificate gives it. */
    Range BEAM = Range.number("incidence modifier", 0, 1.5);

    /** Range of K for all diffuse light, as a certificate gives it. */
    Range DIFFUSE = Range.number("diffuse incidence modifier", 0, 1.5);

    /**
     * K for beam and circumsolar light.
     *
     * @param incidenceDeg angle to the normal, degrees; 0 comes back from 90 on
     */
    double beam(double incidenceDeg);

    /**
     * K for diffuse light from the sky.
     *
     * @param tiltDeg tilt of the plane, degrees, 0 to 90
     */
    double skyDiffuse(double tiltDeg);

    /**
     * K for light reflected by the ground or roof.
     *
     * @param tiltDeg tilt of the plane, degrees, 0 to 90
     */
    double groundReflected(double tiltDeg);

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(
            Function<MatteBlack, T> black, Function<AngleTable, T> table, Function<AngleCoefficient, T> coefficient);
}
