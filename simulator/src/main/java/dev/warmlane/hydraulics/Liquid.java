package dev.warmlane.hydraulics;

import dev.warmlane.physics.Water;

/**
 * A liquid at one temperature.
 *
 * @param densityKgM3 density, kg/m³
 * @param viscosityPaS dynamic viscosity, Pa s
 */
public record Liquid(double densityKgM3, double viscosityPaS) {

    /** Water of a temperature, °C, 0 to 110. */
    public static Liquid water(double temperatureC) {
        return new Liquid(Water.densityKgM3(temperatureC), Water.viscosityPaS(temperatureC));
    }

    /** What a speed carries of pressure, Pa: ρ v²/2. */
    public double dynamicPa(double speedMs) {
        return densityKgM3 * speedMs * speedMs / 2;
    }
}
