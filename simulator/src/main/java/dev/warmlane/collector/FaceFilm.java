package dev.warmlane.collector;

import dev.warmlane.physics.Film;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.site.HourOfYear;

/**
 * The film coefficient of one face of a collector or of the roof in each hour: the one function that every mounting
 * uses, with its own run of the wind, tilt and blend.
 */
final class FaceFilm {

    /** How forced and natural convection join. */
    enum Blend {
        /** A face that is part of the roof's surface: Clear, Gartland and Winkelmann 2003. */
        ON_ROOF,
        /** A face that stands in the wind by itself: Churchill 1977. */
        IN_THE_OPEN
    }

    private final AirHours air;
    private final NaturalFace natural;
    private final boolean onRoof;
    private final double[] forced = new double[HourOfYear.HOURS];
    private final double[] richardsonPerK = new double[HourOfYear.HOURS];

    /**
     * Prepares a face.
     *
     * @param air the air of each hour
     * @param windMs wind along the face in each hour, m/s
     * @param runM run of the wind over the surface, m
     * @param roughnessFactor roughness of the surface
     * @param natural the geometry of the natural part
     * @param blend how the two join
     */
    FaceFilm(AirHours air, double[] windMs, double runM, double roughnessFactor, NaturalFace natural, Blend blend) {
        this.air = air;
        this.natural = natural;
        this.onRoof = blend == Blend.ON_ROOF;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double wind = Film.effectiveWindMs(windMs[hour]);
            forced[hour] = Film.forcedTurbulent(
                    wind, runM, roughnessFactor, air.conductivityWmK[hour], air.viscosityM2S[hour], AirHours.PRANDTL);
            richardsonPerK[hour] = Film.richardsonPerKelvin(air.expansionPerK[hour], wind, runM);
        }
    }

    /** Film coefficient at a temperature difference from surface to air, W/m²K. */
    double coefficient(int hour, double differenceK) {
        double still = natural.coefficient(differenceK, air.buoyancy[hour], air.conductivityWmK[hour]);
        return onRoof
                ? Film.flatRoof(forced[hour], still, richardsonPerK[hour] * Math.abs(differenceK))
                : Film.rack(forced[hour], still);
    }

    /** The natural part alone, W/m²K. */
    double naturalCoefficient(int hour, double differenceK) {
        return natural.coefficient(differenceK, air.buoyancy[hour], air.conductivityWmK[hour]);
    }

    /** The forced part alone, W/m²K. */
    double forcedCoefficient(int hour) {
        return forced[hour];
    }
}
