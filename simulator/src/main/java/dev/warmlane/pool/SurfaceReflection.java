package dev.warmlane.pool;

import dev.warmlane.physics.WaterSurface;

/** How the light that the water's surface reflects goes with the height of the sun. */
public enum SurfaceReflection {
    /** The same share of all light: a pool's absorptance is that of beam and sky alike. */
    EVEN,
    /**
     * The beam by Fresnel's equations at its angle, {@link WaterSurface#reflectance}. The pool's absorptance is that of a sky
     * that is evenly bright, of which {@link WaterSurface#EVEN_SKY_REFLECTANCE} is reflected: from a high sun more stays, from
     * a low one less.
     */
    BY_ANGLE;

    /** How much of a beam stays in the water, over what stays of an even sky's light. */
    double beamOverSky(double cosZenith) {
        return this == EVEN ? 1 : (1 - WaterSurface.reflectance(cosZenith)) / (1 - WaterSurface.EVEN_SKY_REFLECTANCE);
    }
}
