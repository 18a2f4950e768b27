package dev.warmlane.physics;

/**
 * Convective film coefficients of one face of a plate in the open, W/m²K.
 *
 * <p>One set of equations serves every mounting, so that a rack laid down becomes the flat array: a forced part, a
 * natural part, and a blend of the two that depends on whether the plate lies on a roof or stands in the wind. Air
 * properties belong to the film temperature, the mean of surface and air. Wind enters no lower than
 * {@link #LOWEST_WIND_MS}: callers apply {@link #effectiveWindMs}.
 *
 * <p>For the hourly loop {@link NaturalFace} holds the same natural part split into what the geometry, the air and the
 * temperature difference contribute.
 */
public final class Film {

    /**
     * Lowest wind speed to evaluate, m/s. In still air the roof blend makes the coefficient fall as the wind rises; from
     * this speed up it rises with the wind. A reading of zero means an anemometer that does not turn, not still air.
     */
    public static final double LOWEST_WIND_MS = 0.05;

    private Film() {}

    /** The wind speed to use in this class, m/s: the given one, no lower than {@link #LOWEST_WIND_MS}. */
    public static double effectiveWindMs(double windMs) {
        return Math.max(windMs, LOWEST_WIND_MS);
    }

    /**
     * Forced part, W/m²K, mean over the run, boundary layer turbulent from the leading edge: R_f 0.037 Re^0.8 Pr^(1/3)
     * k/L (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, chapter 7, from memory; stated for Re of 5e5
     * to 1e7 and Pr of 0.6 to 60). Used below that range as well, because outdoor wind is turbulent by itself. Zero in
     * still air.
     *
     * @param windMs wind speed along the face, m/s, 0 or more
     * @param lengthM run of the wind over the surface, m, above 0
     * @param roughnessFactor {@link SurfaceRoughness#factor}
     * @param air the air of the film
     */
    public static double forcedTurbulent(double windMs, double lengthM, double roughnessFactor, FilmAir air) {
        double reynolds = reynolds(windMs, lengthM, air.viscosityM2S());
        double nusselt = 0.037 * Math.pow(reynolds, 0.8) * Math.cbrt(air.prandtl());
        return roughnessFactor * nusselt * air.conductivityWmK() / lengthM;
    }

    /**
     * Natural part, W/m²K, of a face at any tilt: the larger of the flow along the slope, {@link #alongNusselt} with Ra
     * sin β on the slope length, and the flow away from the plate, which is {@link #unstableNusselt} with Ra cos β for
     * a warm upper or a cool lower face and {@link #stableNusselt} with Ra cos β on the length area / perimeter for the
     * other two.
     *
     * <p>Taking the larger of the two components of gravity follows the treatment of inclined plates by Raithby and
     * Hollands (Handbook of Heat Transfer, from memory). It is never negative, and at zero difference both sides meet
     * in the small conduction term of Churchill and Chu, 0.68 k/L, so it is continuous there.
     *
     * @param face the face
     * @param surfaceC surface temperature, °C
     * @param airC air temperature, °C
     * @param air the air of the film
     */
    public static double natural(PlateFace face, double surfaceC, double airC, FilmAir air) {
        double expansion = Air.expansionPerK((surfaceC + airC) / 2);
        double rayleigh = rayleighPerKelvin(expansion, air.viscosityM2S(), air.prandtl())
                * Math.abs(surfaceC - airC); // of a length of 1 m
        double length = face.lengthM();
        double width = face.areaToPerimeterM();
        double along = alongNusselt(rayleigh * cube(length) * face.sine(), air.prandtl()) / length;
        double away = face.facesUp() == surfaceC > airC
                ? unstableNusselt(rayleigh * cube(length) * face.cosine()) / length
                : stableNusselt(rayleigh * cube(width) * face.cosine()) / width;
        return air.conductivityWmK() * Math.max(along, away);
    }

    /**
     * Nusselt number of natural flow along a vertical plate, dimensionless: {0.825 + 0.387 Ra^(1/6) / [1 +
     * (0.492/Pr)^(9/16)]^(8/27)}², Churchill and Chu, Int. J. Heat Mass Transfer 18, 1975, 1323-1329, for any Ra up to
     * 1e12.
     */
    public static double alongNusselt(double rayleigh, double prandtl) {
        double root = 0.825 + 0.387 * Math.sqrt(Math.cbrt(rayleigh)) * prandtlTerm(prandtl);
        return root * root;
    }

    /** The term 1 / [1 + (0.492/Pr)^(9/16)]^(8/27) of Churchill and Chu 1975, dimensionless. */
    static double prandtlTerm(double prandtl) {
        return Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), -8.0 / 27);
    }

    /**
     * Nusselt number of a horizontal plate whose air wants to leave it (warm upper, cool lower face), dimensionless:
     * 0.15 Ra^(1/3), Lloyd and Moran, J. Heat Transfer 96, 1974, 443-447 (from memory), for Ra of 1e7 to 1e11. The
     * coefficient does not depend on the length, so it is used beyond that range too.
     */
    public static double unstableNusselt(double rayleigh) {
        return 0.15 * Math.cbrt(rayleigh);
    }

    /**
     * Nusselt number of a horizontal plate whose air stays on it (cool upper, warm lower face), dimensionless: 0.27
     * Ra^(1/4), McAdams, Heat Transmission, 1954 (from memory), for Ra of 1e5 to 1e10 on the length area / perimeter.
     */
    public static double stableNusselt(double rayleigh) {
        return 0.27 * Math.sqrt(Math.sqrt(rayleigh));
    }

    /**
     * Rayleigh number per kelvin of difference and per cubic metre of length cubed, 1/(K·m³): g β Pr / ν².
     *
     * @param expansionPerK thermal expansion of the air, 1/K
     * @param kinViscosity m²/s
     * @param prandtl dimensionless
     */
    public static double rayleighPerKelvin(double expansionPerK, double kinViscosity, double prandtl) {
        return Constants.GRAVITY * expansionPerK * prandtl / (kinViscosity * kinViscosity);
    }

    /** Reynolds number of a run, dimensionless. */
    public static double reynolds(double windMs, double lengthM, double kinViscosity) {
        return windMs * lengthM / kinViscosity;
    }

    /** Grashof number of a length, dimensionless: g β |ΔT| L³ / ν². */
    public static double grashof(double expansionPerK, double differenceK, double lengthM, double kinViscosity) {
        return Constants.GRAVITY
                * expansionPerK
                * Math.abs(differenceK)
                * cube(lengthM)
                / (kinViscosity * kinViscosity);
    }

    /**
     * Blend on a flat roof, W/m²K: η natural + forced, η = ln(1+r) / (1 + ln(1+r)), r = Gr/Re² on the run of the wind;
     * Clear, Gartland and Winkelmann, "An empirical correlation for the outside convective air-film coefficient for
     * horizontal roofs", Energy and Buildings 35, 2003, 797-811 (equation from memory), measured on two flat commercial
     * roofs. In still air (Re = 0) natural alone.
     *
     * @param forced forced part, W/m²K
     * @param natural natural part, W/m²K
     * @param grashof on the run of the wind
     * @param reynolds on the run of the wind
     */
    public static double flatRoof(double forced, double natural, double grashof, double reynolds) {
        return reynolds == 0 ? natural + forced : flatRoof(forced, natural, grashof / (reynolds * reynolds));
    }

    /**
     * The same blend from r = Gr/Re² itself, for loops that keep {@link #richardsonPerKelvin}.
     *
     * @param forced forced part, W/m²K
     * @param natural natural part, W/m²K
     * @param richardson r, 0 or more
     */
    public static double flatRoof(double forced, double natural, double richardson) {
        double logarithm = Roots.logOnePlus(richardson);
        return forced + natural * logarithm / (1 + logarithm);
    }

    /**
     * Gr/Re² per kelvin of difference, 1/K: g β L / V², from which the viscosity drops out.
     *
     * @param expansionPerK thermal expansion of the air, 1/K
     * @param windMs wind speed, m/s, above 0
     * @param lengthM run of the wind, m
     */
    public static double richardsonPerKelvin(double expansionPerK, double windMs, double lengthM) {
        return Constants.GRAVITY * expansionPerK * lengthM / (windMs * windMs);
    }

    /**
     * Blend in the open, W/m²K: (forced³ + natural³)^(1/3), Churchill, "A comprehensive correlating equation for
     * laminar, assisting, forced and free convection", AIChE Journal 23, 1977, 10-16.
     */
    public static double rack(double forced, double natural) {
        return Roots.cube(cube(forced) + cube(natural));
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
