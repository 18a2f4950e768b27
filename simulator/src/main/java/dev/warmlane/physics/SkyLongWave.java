package dev.warmlane.physics;

/** Long-wave irradiance of the sky on a horizontal surface. */
public final class SkyLongWave {

    private SkyLongWave() {}

    /**
     * Emissivity of a clear sky, Berdahl and Martin 1984 (Solar Energy 32:663): 0.711 + 0.56 (Tdp/100) + 0.73
     * (Tdp/100)². From dew points of about -20 to 25 °C; outside the parabola is used as it is.
     */
    public static double clearSkyEmissivity(double dewPointC) {
        double d = dewPointC / 100;
        return 0.711 + 0.56 * d + 0.73 * d * d;
    }

    /**
     * The same with the terms for hour of day and pressure, + 0.013 cos(2πt/24) + 0.00012 (P - 1000 hPa); both from
     * memory of the same paper.
     */
    public static double clearSkyEmissivity(double dewPointC, double hourOfDay, double pressureKpa) {
        return clearSkyEmissivity(dewPointC)
                + 0.013 * Math.cos(2 * Math.PI * hourOfDay / 24)
                + 0.00012 * (10 * pressureKpa - 1000);
    }

    /**
     * Irradiance under cloud, W/m², Martin and Berdahl 1984 (Solar Energy 33:321; from memory): emissivity ε0 + (1 - ε0)
     * n exp(-h / 8.2 km) with one layer of cloud at 2 km and cloud emissivity 1.
     *
     * @param cloudCover cover, 0 to 1
     */
    public static double allSkyIrradianceWm2(double airC, double clearSkyEmissivity, double cloudCover) {
        double emissivity = clearSkyEmissivity + (1 - clearSkyEmissivity) * cloudCover * Math.exp(-2.0 / 8.2);
        return emissivity * Constants.blackBody(airC);
    }
}
