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
    private final double stableToFourth;

    /**
     * Works out the geometry.
     *
     * @param face the face
     * @param prandtl Prandtl number of the air, {@link Air#prandtl} at a typical film temperature, 0.6 to 0.8
     * @throws IllegalArgumentException if the number lies outside its range
     */
    public NaturalFace(PlateFace face, double prandtl) {
        Checks.within("Prandtl number of air", prandtl, 0.6, 0.8, "");
        this.facesUp = face.facesUp();
        this.alongStill = 0.825 / Math.sqrt(face.lengthM());
        this.alongFlow = 0.387 * Film.prandtlTerm(prandtl) * Math.sqrt(Math.cbrt(face.sine()));
        this.unstable = Film.unstableNusselt(face.cosine());
        this.stable = Film.stableNusselt(face.cosine() / face.areaToPerimeterM());
        this.stableToFourth = stable * stable * stable * stable;
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
        return coefficient(differenceK, drive(differenceK), Math.sqrt(buoyancy), Math.sqrt(airConductivity));
    }

    /** What the temperature difference contributes, K^(1/3): |ΔT|^(1/3), the same for every face of a plate. */
    public static double drive(double differenceK) {
        return Roots.cube(Math.abs(differenceK));
    }

    /**
     * The same coefficient where the roots are at hand: √(h along) = a √k + b √B √(ΔT^(1/3)). The fourth root of the stable
     * flow is drawn only where that flow, compared by fourth powers, is the larger one.
     *
     * @param differenceK surface minus air temperature, K
     * @param drive {@link #drive} of the difference
     * @param rootBuoyancy root of {@link #buoyancy}
     * @param rootConductivity root of the conductivity of the air
     */
    public double coefficient(double differenceK, double drive, double rootBuoyancy, double rootConductivity) {
        double root = alongStill * rootConductivity + alongFlow * rootBuoyancy * Math.sqrt(drive);
        double along = root * root;
        double buoyancy = rootBuoyancy * rootBuoyancy;
        if (facesUp == differenceK > 0) {
            return Math.max(along, unstable * buoyancy * drive);
        }
        double conductivity = rootConductivity * rootConductivity;
        double toFourth = buoyancy * buoyancy * buoyancy * conductivity * Math.abs(differenceK);
        double alongSquare = along * along;
        return alongSquare * alongSquare >= stableToFourth * toFourth ? along : stable * Math.sqrt(Math.sqrt(toFourth));
    }
}
