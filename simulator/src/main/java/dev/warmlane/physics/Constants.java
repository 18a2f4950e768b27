package dev.warmlane.physics;

/** Constants of nature and of definition. */
public final class Constants {

    /** 0 °C in kelvin, exact by definition. */
    public static final double KELVIN = 273.15;

    /** Stefan-Boltzmann constant, W/m²K⁴, CODATA 2018 (exact since the SI of 2019, rounded). */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Standard atmosphere, kPa, exact by definition. */
    public static final double STANDARD_PRESSURE_KPA = 101.325;

    /** Standard acceleration of gravity, m/s², exact by definition. */
    public static final double GRAVITY = 9.80665;

    private Constants() {}

    /** Radiation of a black body, W/m². */
    public static double blackBody(double temperatureC) {
        double k = temperatureC + KELVIN;
        double k2 = k * k;
        return STEFAN_BOLTZMANN * k2 * k2;
    }
}
