package dev.warmlane.physics;

/**
 * Liquid water at atmospheric pressure.
 *
 * <p>All three equations are those of Popiel and Wojtkowiak, "Simple formulas for thermophysical properties of liquid
 * water for heat transfer calculations (from 0 °C to 150 °C)", Heat Transfer Engineering 19(3), 1998, 87-101, for pure
 * water. Between 20 and 30 °C the tests hold density to standard tables within 0.05 %, specific heat and latent heat
 * within 0.2 %. Below 0 °C each function returns its value at 0 °C, since liquid water
 * ends there.
 */
public final class Water {

    /**
     * Heat of fusion at 0 °C and atmospheric pressure, J/kg: 333.4 kJ/kg from the equation of state of ice Ih of Feistel and
     * Wagner, J. Phys. Chem. Ref. Data 35, 2006 (from memory); handbooks round it to 334.
     */
    public static final double FUSION_J_KG = 333_400;

    private Water() {}

    /**
     * Density, kg/m³.
     *
     * @param temperatureC water temperature, °C, 0 to 150
     */
    public static double densityKgM3(double temperatureC) {
        double t = Math.max(temperatureC, 0);
        double root = Math.sqrt(t);
        return 999.79684 + t * (0.068317355 + t * (-0.010740248 + 0.00082140905 * root - 2.3030988e-5 * t));
    }

    /**
     * Specific heat at constant pressure, J/kgK.
     *
     * @param temperatureC water temperature, °C, 0 to 150
     */
    public static double specificHeatJKgK(double temperatureC) {
        double t = Math.max(temperatureC, 0);
        double root = Math.sqrt(t);
        return 1000
                * (4.2174356 + t * (-0.0056181625 + 0.0012992528 * root + t * (-0.00011535353 + 4.14964e-6 * root)));
    }

    /**
     * Latent heat of evaporation at saturation, J/kg.
     *
     * @param temperatureC water temperature, °C, 0 to 150
     */
    public static double latentHeatJKg(double temperatureC) {
        double t = Math.max(temperatureC, 0);
        double root = Math.sqrt(t);
        return 1000 * (2500.304 + t * (-2.2521025 - 0.021465847 * root + t * (3.1750136e-4 * root - 2.8607959e-5 * t)));
    }
}
