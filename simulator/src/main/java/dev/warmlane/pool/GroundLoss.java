package dev.warmlane.pool;

/**
 * Heat conductance from a basin to the ground after the form for heated basements in ISO 13370 (from memory), steady and
 * periodic by the year: floor and walls in ground of sand or gravel.
 *
 * <p>Two equivalent thicknesses of ground stand for what lies between water and ground: for the floor d_t = w + λ(R_si +
 * R_shell + R_se), for the walls d_w = λ(R_si + R_shell + R_se), with the thickness w of the walls and the surface
 * resistances R_si inside and R_se outside. Inside there is water, not air: its film of some hundred W/m²K leaves R_si
 * below 0.01 m²K/W, which is taken as 0 (derived), where the standard has 0.13 to 0.17 for the air of a room. R_se is the
 * standard's, since it belongs to the open ground beside the pool.
 */
public final class GroundLoss {

    /** Conductivity of the ground, W/mK: ISO 13370 category sand or gravel, from memory. */
    private static final double GROUND_CONDUCTIVITY = 2.0;

    /** Heat capacity of the ground by volume, J/m³K: ISO 13370 category sand or gravel, from memory. */
    private static final double GROUND_HEAT_JM3K = 2.0e6;

    /** Thickness of concrete floor and walls, m; common practice, no source. */
    private static final double SHELL_THICKNESS = 0.2;

    /** Conductivity of reinforced concrete, W/mK; ISO 10456, from memory. */
    private static final double SHELL_CONDUCTIVITY = 2.3;

    /** Resistance between ground and air, m²K/W; ISO 6946, from memory. */
    private static final double OUTSIDE_RESISTANCE = 0.04;

    /** Length over width assumed for the perimeter of a basin given by its area alone. */
    private static final double LENGTH_OVER_WIDTH = 2;

    private static final double SECONDS_PER_YEAR = 365 * 86_400.0;

    /** Depth to which the year's swing comes into the ground, m: √(λ·year/(π·ρc)), 3.17 m. */
    private static final double YEARLY_DEPTH =
            Math.sqrt(GROUND_CONDUCTIVITY * SECONDS_PER_YEAR / (Math.PI * GROUND_HEAT_JM3K));

    /** Equivalent thickness d_w of the walls, m. */
    private static final double WALLS =
            GROUND_CONDUCTIVITY * (SHELL_THICKNESS / SHELL_CONDUCTIVITY + OUTSIDE_RESISTANCE);

    /** Equivalent thickness d_t of the floor, m. */
    private static final double FLOOR = SHELL_THICKNESS + WALLS;

    private GroundLoss() {}

    /**
     * Steady conductance, W/K, of a basin twice as long as wide. With B′ = A/(P/2) and the depth z, floor (d_t + z/2
     * &lt; B′): U = 2λ/(πB′ + d_t + z/2) · ln(πB′/(d_t + z/2) + 1), otherwise U = λ/(0.457B′ + d_t + z/2); walls: U =
     * 2λ/(πz) · (1 + d/2/(d + z)) · ln(z/d_w + 1), where d is the smaller of d_t and d_w, here always d_w.
     *
     * @param areaM2 water surface, m²
     * @param depthM depth, m
     */
    public static double conductanceWK(double areaM2, double depthM) {
        double perimeter = perimeterM(areaM2);
        double b = areaM2 / (perimeter / 2);
        double equivalent = FLOOR + depthM / 2;
        double floor = equivalent < b
                ? 2 * GROUND_CONDUCTIVITY / (Math.PI * b + equivalent) * Math.log(Math.PI * b / equivalent + 1)
                : GROUND_CONDUCTIVITY / (0.457 * b + equivalent);
        double walls = 2
                * GROUND_CONDUCTIVITY
                / (Math.PI * depthM)
                * (1 + 0.5 * WALLS / (WALLS + depthM))
                * Math.log(depthM / WALLS + 1);
        return areaM2 * floor + perimeter * depthM * walls;
    }

    /**
     * Periodic conductance, W/K: the yearly swing of heat to the ground for each kelvin that the air swings over the
     * year. With the depth δ to which the year's swing comes, 0.37·P·λ·(e^(−z/δ)·ln(δ/d_t + 1) + 2(1 − e^(−z/δ))·ln(δ/d_w
     * + 1)).
     *
     * @param areaM2 water surface, m²
     * @param depthM depth, m
     */
    public static double periodicConductanceWK(double areaM2, double depthM) {
        double above = Math.exp(-depthM / YEARLY_DEPTH);
        return 0.37
                * perimeterM(areaM2)
                * GROUND_CONDUCTIVITY
                * (above * Math.log(YEARLY_DEPTH / FLOOR + 1) + 2 * (1 - above) * Math.log(YEARLY_DEPTH / WALLS + 1));
    }

    /** Perimeter of a basin that is given by its area alone, m. */
    static double perimeterM(double areaM2) {
        return 2 * Math.sqrt(areaM2 / LENGTH_OVER_WIDTH) * (1 + LENGTH_OVER_WIDTH);
    }
}
