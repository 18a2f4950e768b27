package dev.warmlane.weather;

import dev.warmlane.physics.Constants;

/** The standard atmosphere, for files without pressure and for refraction. */
final class Atmosphere {

    /** Air temperature for refraction, °C: a mean of the inhabited earth; its effect is below 0.01 degrees. */
    static final double STANDARD_AIR_C = 12;

    private Atmosphere() {}

    /** Pressure at a height, kPa: standard atmosphere, ISO 2533, -500 to 6000 m. */
    static double standardPressureKpa(double elevationM) {
        return Constants.STANDARD_PRESSURE_KPA * Math.pow(1 - 2.25577e-5 * elevationM, 5.25588);
    }
}
