package dev.warmlane.physics;

/**
 * Long-wave radiation of the sky on a horizontal plane, where the weather file does not bring it.
 *
 * <p>Clear sky by Berdahl and Martin, "Emissivity of clear skies", Solar Energy 32(5), 1984, 663-664; cloud by Martin
 * and Berdahl, "Characteristics of infrared sky radiation in the United States", Solar Energy 33(3/4), 1984, 321-336.
 */
public final class SkyLongWave {

    /** Height of the cloud base where it is not known, km (from memory of Martin and Berdahl 1984). */
    public static final double CLOUD_BASE_KM = 2;

    /** Height over which the effect of a cloud falls to 1/e, km (from memory of Martin and Berdahl 1984). */
    public static final double CLOUD_SCALE_KM = 8.2;

    /** exp(-base/scale): how much of the window of a clear sky an opaque layer at the assumed base closes. */
    private static final double CLOUD_FACTOR = Math.exp(-CLOUD_BASE_KM / CLOUD_SCALE_KM);

    private SkyLongWave() {}

    /**
     * Emissivity of a clear sky, mean over day and night, at sea level, dimensionless: 0.711 + 0.56 (Tdp/100) + 0.73
     * (Tdp/100)². Measured for dew points of about -20 to 30 °C (range from memory); not above 1.
     *
     * @param dewPointC dew point near the ground, °C; below -38 °C, where the parabola turns, its lowest value is kept
     */
    public static double clearSkyEmissivity(double dewPointC) {
        double x = Math.max(dewPointC / 100, -0.56 / (2 * 0.73));
        return Math.min(1, 0.711 + x * (0.56 + 0.73 * x));
    }

    /**
     * Emissivity of a clear sky with the terms for the time of day, 0.013 cos(2πt/24), and for the pressure, 0.00012 (P
     * - 1000 hPa); both terms from memory of the same papers. Dimensionless, not above 1.
     *
     * @param dewPointC dew point near the ground, °C
     * @param hourOfDay hours since midnight, solar or standard time (a difference of an hour changes 0.003 at most)
     * @param pressureKpa pressure at the site, kPa
     */
    public static double clearSkyEmissivity(double dewPointC, double hourOfDay, double pressureKpa) {
        double hour = 0.013 * Math.cos(2 * Math.PI * hourOfDay / 24);
        double pressure = 0.00012 * (10 * pressureKpa - 1000);
        return Math.min(1, clearSkyEmissivity(dewPointC) + hour + pressure);
    }

    /**
     * Long-wave irradiance of the sky on a horizontal plane, W/m²: σ Ta⁴ [ε0 + (1 - ε0) n exp(-h/8.2 km)], one opaque
     * layer of cloud with its base at 2 km. The layer's own emissivity of 1 and its base are from memory; thin high
     * cloud is overstated.
     *
     * @param airC air temperature near the ground, °C
     * @param clearSkyEmissivity ε0, 0 to 1
     * @param cloudCover n, share of the sky that clouds cover, 0 to 1
     */
    public static double allSkyIrradianceWm2(double airC, double clearSkyEmissivity, double cloudCover) {
        double emissivity = clearSkyEmissivity + (1 - clearSkyEmissivity) * cloudCover * CLOUD_FACTOR;
        return emissivity * Constants.blackBody(airC);
    }

    /**
     * Temperature of the black body that radiates the same, °C: (L/σ)^(1/4).
     *
     * @param longWaveWm2 long-wave irradiance, W/m², 0 or more
     */
    public static double skyTemperatureC(double longWaveWm2) {
        return Math.sqrt(Math.sqrt(longWaveWm2 / Constants.STEFAN_BOLTZMANN)) - Constants.KELVIN;
    }
}
