package dev.warmlane.physics;

/**
 * Air as a boundary layer meets it: dry, ideal gas. For a film take the mean of surface and air temperature.
 *
 * <p>Equations and constants of the U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF): viscosity by Sutherland's law
 * (equation 51), conductivity (equation 53), molar mass 28.9644 g/mol, ratio of specific heats 1.4. Stated for 100 to
 * 1900 K (from memory). Vapour is neglected: saturated air of 30 °C is 1.6 % lighter than dry air.
 */
public final class Air {

    /** Specific gas constant of dry air, J/kgK: 8314.32 / 28.9644. */
    public static final double GAS_CONSTANT = 8314.32 / 28.9644;

    /** Specific heat at constant pressure, J/kgK: 7/2 of the gas constant, from the ratio of specific heats 1.4. */
    public static final double SPECIFIC_HEAT = 3.5 * GAS_CONSTANT;

    private Air() {}

    /**
     * Thermal conductivity, W/mK: 2.64638e-3 T^1.5 / (T + 245.4 · 10^(-12/T)), T in K.
     *
     * @param temperatureC temperature, °C, -100 to 1000
     */
    public static double conductivityWmK(double temperatureC) {
        double t = temperatureC + Constants.KELVIN;
        return 2.64638e-3 * t * Math.sqrt(t) / (t + 245.4 * Math.pow(10, -12 / t));
    }

    /**
     * Dynamic viscosity, Pa·s: 1.458e-6 T^1.5 / (T + 110.4), T in K.
     *
     * @param temperatureC temperature, °C, -100 to 1000
     */
    public static double dynamicViscosityPaS(double temperatureC) {
        double t = temperatureC + Constants.KELVIN;
        return 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
    }

    /**
     * Density, kg/m³: p / (R T).
     *
     * @param temperatureC temperature, °C, above -273.15
     * @param pressureKpa pressure of the air, kPa
     */
    public static double densityKgM3(double temperatureC, double pressureKpa) {
        return 1000 * pressureKpa / (GAS_CONSTANT * (temperatureC + Constants.KELVIN));
    }

    /**
     * Kinematic viscosity, m²/s: dynamic viscosity over density.
     *
     * @param temperatureC temperature, °C, -100 to 1000
     * @param pressureKpa pressure of the air, kPa
     */
    public static double kinematicViscosityM2S(double temperatureC, double pressureKpa) {
        return dynamicViscosityPaS(temperatureC) / densityKgM3(temperatureC, pressureKpa);
    }

    /**
     * Prandtl number, dimensionless: viscosity times specific heat over conductivity; 0.72 at -20 °C, 0.70 at 60 °C.
     *
     * @param temperatureC temperature, °C, -100 to 1000
     */
    public static double prandtl(double temperatureC) {
        return dynamicViscosityPaS(temperatureC) * SPECIFIC_HEAT / conductivityWmK(temperatureC);
    }

    /**
     * Coefficient of thermal expansion of an ideal gas, 1/K: 1 / T.
     *
     * @param temperatureC temperature, °C, above -273.15
     */
    public static double expansionPerK(double temperatureC) {
        return 1 / (temperatureC + Constants.KELVIN);
    }
}
