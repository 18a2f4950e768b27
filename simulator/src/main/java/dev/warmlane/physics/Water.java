package dev.warmlane.physics;

/**
 * Liquid water at atmospheric pressure.
 *
 * <p>Density, specific heat and latent heat are those of Popiel and Wojtkowiak, "Simple formulas for thermophysical
 * properties of liquid water for heat transfer calculations (from 0 °C to 150 °C)", Heat Transfer Engineering 19(3), 1998,
 * 87-101, for pure water. Between 20 and 30 °C the tests hold density to standard tables within 0.05 %, specific heat and latent heat
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
     * Dynamic viscosity, Pa s: 1e-6 Σ a (T/300 K)^b, Pátek, Hrubý, Klomfar, Součková and Harvey, "Reference correlations for
     * thermophysical properties of liquid water at 0.1 MPa", J. Phys. Chem. Ref. Data 38, 2009, 21-29, which is the IAPWS
     * supplementary release SR6-08 (coefficients read in a program that cites the paper).
     *
     * @param temperatureC water temperature, °C, 0 to 110
     */
    public static double viscosityPaS(double temperatureC) {
        double t = (Math.max(temperatureC, 0) + Constants.KELVIN) / 300;
        return 1e-6
                * (280.68 * Math.pow(t, -1.9)
                        + 511.45 * Math.pow(t, -7.7)
                        + 61.131 * Math.pow(t, -19.6)
                        + 0.45903 * Math.pow(t, -40));
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
