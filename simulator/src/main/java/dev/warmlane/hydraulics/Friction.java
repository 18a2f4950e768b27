package dev.warmlane.hydraulics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

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

    /** The explicit equation of Haaland is within 2 % of the root that is looked for; so far around it is looked. */
    private static final double AROUND = 0.1;

    private static final double SETTLED = 1e-11;

    private static final int MOST_STEPS = 200;

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

    /** Looked for around 1/√f = −1.8 log10((k/3.7 d)^1.11 + 6.9/Re), Haaland, J. Fluids Engineering 105, 1983 (from memory). */
    private static double colebrook(double reynolds, double relativeRoughness) {
        double near = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        double root = new BrentSolver(SETTLED)
                .solve(
                        MOST_STEPS,
                        x -> x + 2 * Math.log10(relativeRoughness / 3.7 + 2.51 * x / reynolds),
                        (1 - AROUND) * near,
                        (1 + AROUND) * near,
                        near);
        return 1 / (root * root);
    }
}
