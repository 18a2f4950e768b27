package dev.warmlane.collector;

import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.physics.FilmCorrelation;

/**
 * Which published models the collector side stands on, for cross-checks.
 *
 * @param sky how diffuse light is spread over the sky
 * @param film how the film coefficient of a collector's face is found; the roof below racks always keeps the physical
 *     one
 */
public record CollectorPhysics(SkyModel sky, FilmCorrelation film) {

    /** Perez sky and physical films. */
    public static final CollectorPhysics USUAL = new CollectorPhysics(SkyModel.PEREZ, FilmCorrelation.PHYSICAL);
}
