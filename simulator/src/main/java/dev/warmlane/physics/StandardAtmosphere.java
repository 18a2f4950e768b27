package dev.warmlane.physics;

/** The standard atmosphere, for weather without pressure and for refraction. */
public final class StandardAtmosphere {

    /** Air temperature for refraction, °C: a mean of the inhabited earth; its effect is below 0.01 degrees. */
    public static final double REFRACTION_AIR_C = 12;

    private StandardAtmosphere() {}

    /**
     * Pressure at a height, kPa: ISO 2533, troposphere.
     *
     * @param elevationM height above sea level, m, -500 to 6000
     */
    public static double pressureKpa(double elevationM) {
        return Constants.STANDARD_PRESSURE_KPA * StrictMath.pow(1 - 2.25577e-5 * elevationM, 5.25588);
    }
}
