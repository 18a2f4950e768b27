package dev.warmlane.pool;

/**
 * Steady heat conductance from a basin to the ground, after the form for heated basements in ISO 13370 (from memory):
 * floor and walls in ground of conductivity 2.0 W/mK (sand or gravel).
 */
public final class GroundLoss {

    /** Conductivity of the ground, W/mK: ISO 13370 category sand or gravel, from memory. */
    private static final double GROUND_CONDUCTIVITY = 2.0;

    /** Thickness of concrete floor and walls, m; common practice, no source. */
    private static final double SHELL_THICKNESS = 0.2;

    /** Conductivity of reinforced concrete, W/mK; ISO 10456, from memory. */
    private static final double SHELL_CONDUCTIVITY = 2.3;

    /** Length over width assumed for the perimeter of a basin given by its area alone. */
    private static final double LENGTH_OVER_WIDTH = 2;

    private GroundLoss() {}

    /**
     * Conductance, W/K, of a basin twice as long as wide. The equivalent thickness of the ground is that of the shell,
     * d_t = λ·R_shell; with B′ = A/(P/2) and the depth z, floor (d_t + z/2 &lt; B′): U = 2λ/(πB′ + d_t + z/2) ·
     * ln(πB′/(d_t + z/2) + 1), otherwise U = λ/(0.457B′ + d_t + z/2); walls: U = 2λ/(πz) · (1 + d_t/2/(d_t + z)) ·
     * ln(z/d_w + 1) with d_w = d_t.
     *
     * @param areaM2 water surface, m²
     * @param depthM depth, m
     */
    public static double conductanceWK(double areaM2, double depthM) {
        double width = Math.sqrt(areaM2 / LENGTH_OVER_WIDTH);
        double perimeter = 2 * width * (1 + LENGTH_OVER_WIDTH);
        double b = areaM2 / (perimeter / 2);
        double shell = GROUND_CONDUCTIVITY * SHELL_THICKNESS / SHELL_CONDUCTIVITY;
        double equivalent = shell + depthM / 2;
        double floor = equivalent < b
                ? 2 * GROUND_CONDUCTIVITY / (Math.PI * b + equivalent) * Math.log(Math.PI * b / equivalent + 1)
                : GROUND_CONDUCTIVITY / (0.457 * b + equivalent);
        double walls = 2
                * GROUND_CONDUCTIVITY
                / (Math.PI * depthM)
                * (1 + 0.5 * shell / (shell + depthM))
                * Math.log(depthM / shell + 1);
        return areaM2 * floor + perimeter * depthM * walls;
    }
}
