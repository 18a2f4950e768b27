package dev.warmlane.physics;

import dev.warmlane.units.Range;

/**
 * How much a rough surface raises the forced film coefficient over that of a smooth plate: the multipliers that the
 * ASHRAE Handbook of Fundamentals and Walton (Thermal Analysis Research Program reference manual, NBSIR 83-2655, 1983)
 * give by kind of surface, with their examples; from memory. Which class a collector or a roof belongs to is a judgement.
 */
public enum SurfaceRoughness {
    /** Glass. */
    VERY_SMOOTH(1.00),
    /** Smooth plaster. */
    SMOOTH(1.11),
    /** Clear pine. */
    MEDIUM_SMOOTH(1.13),
    /** Concrete. */
    MEDIUM_ROUGH(1.52),
    /** Brick, rough plaster. */
    ROUGH(1.67),
    /** Stucco. */
    VERY_ROUGH(2.17);

    /** Range of the multiplier: a little beyond the roughest. */
    public static final Range FACTOR = Range.number("roughness factor", 1, 2.2);

    private final double factor;

    SurfaceRoughness(double factor) {
        this.factor = factor;
    }

    /** Multiplier of the forced film coefficient, dimensionless. */
    public double factor() {
        return factor;
    }
}
