package dev.warmlane.hydraulics;

/**
 * The friction factor of Darcy and Weisbach for a full round pipe, dimensionless: the pressure drop is f L/d ρ v²/2.
 *
 * <p>Laminar up to Re 2300: 64/Re, exact (Hagen and Poiseuille). Turbulent from Re 4000: the equation of Colebrook (J. Inst.
 * Civil Engineers 11, 1939, 133-156), 1/√f = −2 log10(k/(3.7 d) + 2.51/(Re √f)), solved. Between them, where a flow is now
 * the one and now the other, straight from the one to the other over Re: our own choice, which makes the drop of pressure
 * rise with the flow throughout. The two bounds are those of the chart of Moody (Trans. ASME 66, 1944), from memory.
 */
public final class Friction {

    /** Up to here a flow is laminar. */
    public static final double LAMINAR_UP_TO = 2300;

    /** From here on it is turbulent. */
    public static final double TURBULENT_FROM = 4000;

    /** From within 2 % of the root each step squares what is left: after four nothing is, to rounding. */
    private static final int STEPS = 4;

    private Friction() {}

    /**
     * The factor.
     *
     * @param reynolds Reynolds number on the inner diameter, above 0 and up to 1e8
     * @param relativeRoughness roughness of the wall over the inner diameter, 0 to 0.05
     */
    public static double factor(double reynolds, double relativeRoughness) {
        if (reynolds <= LAMINAR_UP_TO) {
            return 64 / reynolds;
        }
        if (reynolds >= TURBULENT_FROM) {
            return colebrook(reynolds, relativeRoughness);
        }
        double turbulent = (reynolds - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO);
        return (1 - turbulent) * 64 / LAMINAR_UP_TO + turbulent * colebrook(TURBULENT_FROM, relativeRoughness);
    }

    /**
     * By Newton's method for x = 1/√f, from x = −1.8 log10((k/3.7 d)^1.11 + 6.9/Re), Haaland, J. Fluids Engineering 105, 1983
     * (from memory), which is within 2 %. A layout asks for it many thousand times, so that no general solver is used.
     */
    private static double colebrook(double reynolds, double relativeRoughness) {
        double x = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        double rough = relativeRoughness / 3.7;
        double smoothPerX = 2.51 / reynolds;
        for (int step = 0; step < STEPS; step++) {
            double inside = rough + smoothPerX * x;
            x -= (x + 2 * Math.log10(inside)) / (1 + 2 * smoothPerX / (Math.log(10) * inside));
        }
        return 1 / (x * x);
    }
}
