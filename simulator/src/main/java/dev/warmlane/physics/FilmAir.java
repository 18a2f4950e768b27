package dev.warmlane.physics;

/**
 * What a film asks of its air, at the mean temperature of surface and air.
 *
 * @param conductivityWmK thermal conductivity, W/mK
 * @param viscosityM2S kinematic viscosity, m²/s
 * @param prandtl Prandtl number, dimensionless
 */
public record FilmAir(double conductivityWmK, double viscosityM2S, double prandtl) {

    /**
     * The properties by {@link Air}.
     *
     * @param filmC mean temperature of surface and air, °C, -100 to 1000
     * @param pressureKpa pressure of the air, kPa
     */
    public static FilmAir at(double filmC, double pressureKpa) {
        return new FilmAir(
                Air.conductivityWmK(filmC), Air.kinematicViscosityM2S(filmC, pressureKpa), Air.prandtl(filmC));
    }
}
