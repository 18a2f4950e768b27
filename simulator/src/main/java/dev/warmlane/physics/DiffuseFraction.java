package dev.warmlane.physics;

/** The diffuse part of the global horizontal irradiance of an hour, from the hour's clearness: published correlations. */
public final class DiffuseFraction {

    private DiffuseFraction() {}

    /**
     * Diffuse fraction from the hourly clearness index k: Erbs, Klein and Duffie 1982, Solar Energy 28:293-302,
     * equation 1; coefficients from memory, compared with independent public implementations, the paper not read again.
     *
     * <ul>
     *   <li>1 - 0.09k up to 0.22,
     *   <li>0.9511 - 0.1604k + 4.388k² - 16.638k³ + 12.336k⁴ up to 0.80,
     *   <li>0.165 above.
     * </ul>
     *
     * @param clearness hourly clearness index, 0 or more
     */
    public static double erbs(double clearness) {
        if (clearness <= 0.22) {
            return 1 - 0.09 * clearness;
        }
        if (clearness <= 0.80) {
            return 0.9511 + clearness * (-0.1604 + clearness * (4.388 + clearness * (-16.638 + clearness * 12.336)));
        }
        return 0.165;
    }

    /**
     * Diffuse fraction from the hourly clearness index k: Orgill and Hollands 1977, Solar Energy 19:357-359; coefficients
     * from memory, compared with independent public implementations, of which one takes them from Duffie and Beckman 2006,
     * Solar Engineering of Thermal Processes; neither was read again. From another place and with other instruments than {@link #erbs}, so that the difference of the two
     * says something of the doubt in either.
     *
     * <ul>
     *   <li>1 - 0.249k below 0.35,
     *   <li>1.557 - 1.84k up to 0.75,
     *   <li>0.177 above.
     * </ul>
     *
     * @param clearness hourly clearness index, 0 or more
     */
    public static double orgillHollands(double clearness) {
        if (clearness < 0.35) {
            return 1 - 0.249 * clearness;
        }
        return clearness <= 0.75 ? 1.557 - 1.84 * clearness : 0.177;
    }
}
