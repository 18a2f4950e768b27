package dev.warmlane.physics;

/** Roots and logarithms as films need them millions of times: as exact as the JDK's for what a film asks, and quicker. */
final class Roots {

    /**
     * Four thirds of the bits of 1.0, moved so that the guess of {@link #cube} is off by 3.5 % at most, upwards as much as
     * downwards; a third of a number's bits is about a third of its logarithm.
     */
    private static final long GUESS = 0x553EF0FF289DD796L;

    private Roots() {}

    /**
     * Cube root, to four units in the last place, of 0 and of numbers from 1e-280 to 1e280; of smaller ones a small number.
     *
     * <p>The inverse root r is guessed and improved twice: with e = 1 - x r³, x^(-1/3) is r (1 - e)^(-1/3), whose series
     * to e³ leaves 0.144 e⁴, which is 2e-5 and then nothing. No step divides, so that many roots overlap in the processor.
     *
     * @param x 0 or more
     */
    static double cube(double x) {
        double guess = Double.longBitsToDouble(GUESS - Double.doubleToRawLongBits(x) / 3);
        double inverse = improved(improved(guess, x), x);
        return x * inverse * inverse;
    }

    private static double improved(double r, double x) {
        double e = 1 - (x * r) * (r * r);
        return r + (r * e) * ((1.0 / 3 + e * (2.0 / 9)) + (e * e) * (14.0 / 81));
    }

    /**
     * ln(1 + x) to a few units in the last place: what 1 + x loses of a small x in rounding, the quotient gives back (Higham,
     * Accuracy and Stability of Numerical Algorithms, section 1.14.1, from memory).
     *
     * @param x 0 or more
     */
    static double logOnePlus(double x) {
        double sum = 1 + x;
        return sum == 1 ? x : Math.log(sum) * x / (sum - 1);
    }
}
