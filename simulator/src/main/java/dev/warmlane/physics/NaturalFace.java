package dev.warmlane.physics;

import dev.warmlane.units.Checks;

/**
 * The natural part of {@link Film#natural} for one face, split for the hourly loop: the geometry is worked out once
 * here, the air once an hour ({@link #buoyancy}), and what is left for each temperature is roots alone.
 *
 * <p>With B = k (g β Pr/ν²)^(1/3), in W/m²K^(4/3), the three flows become (h along)^(1/2) = a √k + b √(B ΔT^(1/3)),
 * unstable c B ΔT^(1/3), stable d (B³ k ΔT)^(1/4), where a to d hold nothing but the geometry and the Prandtl number.
 *
 * <p>The Prandtl number is frozen: over the weather of a year it moves between 0.70 and 0.72, which moves the along
 * flow by less than 0.5 % and the others not at all (they carry it in B).
 */
public final class NaturalFace {

    private final boolean facesUp;
    private final double alongStill;
    private final double alongFlow;
    private final double unstable;
    private final double stable;

    /**
     * Works out the geometry.
     *
     * @param tiltDeg tilt from the horizontal, degrees, 0 to 90
     * @param facesUp whether this is the upper face
     * @param lengthM length along the slope, m, above 0
     * @param areaToPerimeterM area over perimeter of the plate, m, above 0
     * @param prandtl Prandtl number of the air, {@link Air#prandtl} at a typical film temperature
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public NaturalFace(double tiltDeg, boolean facesUp, double lengthM, double areaToPerimeterM, double prandtl) {
        Checks.within("tilt", tiltDeg, 0, 90, "degrees");
        Checks.within("length along the slope", lengthM, Double.MIN_NORMAL, 1e4, "m");
        Checks.within("area over perimeter", areaToPerimeterM, Double.MIN_NORMAL, 1e4, "m");
        Checks.within("Prandtl number of air", prandtl, 0.6, 0.8, "");
        double sine = Math.sin(Math.toRadians(tiltDeg));
        double cosine = Math.max(0, Math.cos(Math.toRadians(tiltDeg)));
        this.facesUp = facesUp;
        this.alongStill = 0.825 / Math.sqrt(lengthM);
        this.alongFlow = 0.387 * Film.prandtlTerm(prandtl) * Math.sqrt(Math.cbrt(sine));
        this.unstable = Film.unstableNusselt(cosine);
        this.stable = Film.stableNusselt(cosine / areaToPerimeterM);
    }

    /**
     * What the air of an hour contributes, W/m²K^(4/3): B = k (g β Pr/ν²)^(1/3), about 11.8 at 27 °C.
     *
     * @param airConductivity W/mK
     * @param rayleighPerKelvin {@link Film#rayleighPerKelvin} of the film, 1/(K·m³)
     */
    public static double buoyancy(double airConductivity, double rayleighPerKelvin) {
        return airConductivity * Math.cbrt(rayleighPerKelvin);
    }

    /**
     * Natural film coefficient, W/m²K; equals {@link Film#natural} for the same air. Allocates nothing.
     *
     * @param differenceK surface minus air temperature, K
     * @param buoyancy {@link #buoyancy} of the hour, W/m²K^(4/3)
     * @param airConductivity W/mK, the one in {@code buoyancy}
     */
    public double coefficient(double differenceK, double buoyancy, double airConductivity) {
        double size = Math.abs(differenceK);
        double lift = buoyancy * Math.cbrt(size);
        double root = alongStill * Math.sqrt(airConductivity) + alongFlow * Math.sqrt(lift);
        double away = facesUp == differenceK > 0
                ? unstable * lift
                : stable * Math.sqrt(Math.sqrt(buoyancy * buoyancy * buoyancy * airConductivity * size));
        return Math.max(root * root, away);
    }
}
