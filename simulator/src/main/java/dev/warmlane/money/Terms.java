package dev.warmlane.money;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * How money of later years is counted. Interest and growth are real, without inflation: what grows like all prices does
 * not grow here.
 *
 * @param interest what money could earn elsewhere, or costs to borrow, a year, as a share
 * @param energyPriceGrowth by how much energy becomes dearer than everything else, a year, as a share
 * @param years how long it is looked at, whole years; no longer than what is bought will last
 */
public record Terms(double interest, double energyPriceGrowth, int years) {

    /** Range of {@link #interest}. */
    public static final Range INTEREST = Range.share("real interest", 0, 0.3);

    /** Range of {@link #energyPriceGrowth}. */
    public static final Range GROWTH = Range.share("real growth of energy prices", -0.1, 0.2);

    /** Range of {@link #years}. */
    public static final Range YEARS = Range.of("years looked at", Dimension.NUMBER, 1, 40);

    /** Interest where none is given: the least that United States federal energy projects count (10 CFR 436, from memory). */
    public static final Usual USUAL_INTEREST =
            new Usual(INTEREST, 0.03, "3 % a year above inflation, the least of 10 CFR 436, from memory");

    /** Growth where none is given. */
    public static final Usual USUAL_GROWTH =
            new Usual(GROWTH, 0.0, "energy grows dearer like everything else, own choice");

    /** Years where none are given: about what unglazed plastic collectors are expected to last. */
    public static final Usual USUAL_YEARS =
            new Usual(YEARS, 20, "about what plastic collectors last, common practice, no source");

    /** Terms where none are given. */
    public static final Terms USUAL =
            new Terms(USUAL_INTEREST.value(), USUAL_GROWTH.value(), (int) USUAL_YEARS.value());

    /** Checks every range. */
    public Terms {
        INTEREST.check(interest);
        GROWTH.check(energyPriceGrowth);
        YEARS.check(years);
    }

    /** What a sum that is paid at the end of every year up to one is worth today: its present value over the sum. */
    public double factor(int upTo) {
        return sumOfPowers(1 / (1 + interest), upTo);
    }

    /**
     * The same for a sum that is 1 at the prices of today and grows with them: the modified uniform present value of NIST
     * Handbook 135.
     */
    public double factorOfEnergy(int upTo) {
        return sumOfPowers((1 + energyPriceGrowth) / (1 + interest), upTo);
    }

    /** What 1 that is paid at the end of a year is worth today. */
    public double today(int year) {
        return Math.pow(1 + interest, -year);
    }

    private static double sumOfPowers(double ratio, int upTo) {
        double sum = 0;
        double power = 1;
        for (int year = 1; year <= upTo; year++) {
            power *= ratio;
            sum += power;
        }
        return sum;
    }
}
