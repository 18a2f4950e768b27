package dev.warmlane.irradiance;

/**
 * The sky of Perez, Ineichen, Seals, Michalsky and Stewart 1990, "Modeling daylight availability and irradiance
 * components from direct and global irradiance", Solar Energy 44:271-289.
 */
final class PerezSky {

    /** The factor of the cubed zenith angle (in radians) that frees the clearness of it, equation 1 of the paper. */
    private static final double KAPPA = 1.041;

    /** Upper ends of the first seven classes of clearness, table 1 of the paper. */
    private static final double[] CLASS_END = {1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2};

    /**
     * F11, F12, F13, F21, F22, F23 by class of clearness, overcast first: table 6 of the paper, all sites. From memory,
     * checked against several independent reprints of the table.
     */
    private static final double[][] COEFFICIENTS = {
        {-0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
        {0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
        {0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
        {0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
        {0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
        {1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
        {1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
        {0.678, -0.327, -0.250, 0.156, -1.377, 0.251},
    };

    private PerezSky() {}

    /**
     * The sky's clearness ε, 1 (overcast) to 10 and more: {@code [(D + I)/D + κz³]/(1 + κz³)}.
     *
     * @param diffuseWm2 diffuse irradiance D of the horizontal, W/m², above 0
     * @param directNormalWm2 direct normal irradiance I, W/m²
     * @param zenithRad zenith angle z of the sun, radians
     */
    static double clearness(double diffuseWm2, double directNormalWm2, double zenithRad) {
        double kz3 = KAPPA * zenithRad * zenithRad * zenithRad;
        return ((diffuseWm2 + directNormalWm2) / diffuseWm2 + kz3) / (1 + kz3);
    }

    /** The sky's brightness Δ: diffuse irradiance times relative air mass over extraterrestrial normal irradiance. */
    static double brightness(double diffuseWm2, double zenithDeg, double extraterrestrialNormalWm2) {
        return diffuseWm2 * airMass(zenithDeg) / extraterrestrialNormalWm2;
    }

    /** The class of a clearness, 0 (overcast) to 7 (clear). */
    static int classOf(double clearness) {
        int c = 0;
        while (c < CLASS_END.length && clearness >= CLASS_END[c]) {
            c++;
        }
        return c;
    }

    /** F1, the share of the diffuse light that comes from the direction of the sun, held within 0 to 1. */
    static double circumsolarShare(int clearnessClass, double brightness, double zenithRad) {
        double[] f = COEFFICIENTS[clearnessClass];
        return Math.min(1, Math.max(0, f[0] + f[1] * brightness + f[2] * zenithRad));
    }

    /** F2, the brightening of the horizon; below 0 where the zenith is brighter. */
    static double horizonShare(int clearnessClass, double brightness, double zenithRad) {
        double[] f = COEFFICIENTS[clearnessClass];
        return f[3] + f[4] * brightness + f[5] * zenithRad;
    }

    /**
     * Relative optical air mass, Kasten and Young 1989 (Applied Optics 28:4735; from memory), 1 to 38; beyond a zenith
     * angle of 90 degrees the value of 90.
     */
    static double airMass(double zenithDeg) {
        double z = Math.min(90, zenithDeg);
        return 1 / (Math.cos(Math.toRadians(z)) + 0.50572 * Math.pow(96.07995 - z, -1.6364));
    }
}
