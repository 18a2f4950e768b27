package dev.warmlane.wind;

import dev.warmlane.units.Checks;
import org.apache.commons.math3.special.Beta;

/** The run of the wind over a flat rectangular roof. */
public final class RoofRun {

    /** The mean turbulent film coefficient of a run is proportional to run^-0.2. */
    private static final double FILM_EXPONENT = -0.2;

    private RoofRun() {}

    /**
     * The run, m, that gives the turbulent film coefficient averaged over the whole roof and all wind directions.
     *
     * <p>Wind in the direction θ divides the roof into strips, each with its own run c from edge to edge and a mean
     * coefficient in proportion to c^-0.2. Weighted by the area of the strips, and averaged over the directions, c^-0.2
     * gives L^-0.2. For a rectangle a x b and tan θ up to b/a the longest strip is c = a / cos θ, the strips of that
     * run take b cos θ - a sin θ of the width, and those cut off by the corners run from 0 to c on a sin θ at each
     * side, so
     *
     * <p>∫ c^0.8 dy = (a / cos θ)^0.8 (b cos θ + a sin θ / 9),
     *
     * <p>the other directions follow by exchanging a and b. Over θ from 0 to δ, the direction of
     * the diagonal, that makes a^0.8 [b/2 B(sin² δ; 1/2, 0.6) + a/9 (1 - cos^0.2 δ) / 0.2], B the incomplete beta function. A
     * roof of 30 m x 14 m has 16.9 m, a square 0.88 of its side, a long narrow roof 1.86 of its width. (The plain mean of the
     * runs, 18.7 m for the first, would give a coefficient 2 % lower and grows without limit as the roof gets longer.)
     *
     * @param lengthM one side of the roof, m, 0.1 to 1000
     * @param widthM the other side, m, 0.1 to 1000
     * @throws IllegalArgumentException if a side lies outside its range
     */
    public static double effectiveRunM(double lengthM, double widthM) {
        Checks.within("roof length", lengthM, 0.1, 1000, "m");
        Checks.within("roof width", widthM, 0.1, 1000, "m");
        double sum = overDirections(lengthM, widthM) + overDirections(widthM, lengthM);
        double mean = sum / (lengthM * widthM * Math.PI / 2);
        return Math.pow(mean, 1 / FILM_EXPONENT);
    }

    /** The integral of c^0.8 over the strips, over the directions from the side a up to the diagonal. */
    private static double overDirections(double a, double b) {
        double diagonal = Math.hypot(a, b);
        double sine = b / diagonal;
        double second = (1 - FILM_EXPONENT) / 2;
        double whole = Math.exp(Beta.logBeta(0.5, second));
        double acrossWhole = b / 2 * whole * Beta.regularizedBeta(sine * sine, 0.5, second);
        double acrossCorners = a / 9 * (1 - Math.pow(a / diagonal, -FILM_EXPONENT)) / -FILM_EXPONENT;
        return Math.pow(a, 1 + FILM_EXPONENT) * (acrossWhole + acrossCorners);
    }
}
