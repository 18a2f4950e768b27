package dev.warmlane.fit;

import dev.warmlane.units.Checks;

/**
 * What is taken to be known of an unknown before the log is looked at: a normal distribution, cut off at the ends of what
 * is possible.
 *
 * @param of the unknown
 * @param likely its middle
 * @param standardDeviation its width, above 0
 * @param lowest the least possible value
 * @param highest the greatest possible value
 * @param why where it comes from, or that it is an own choice
 */
public record Prior(Unknown of, double likely, double standardDeviation, double lowest, double highest, String why) {

    /** Checks that the middle lies between the ends and that there is some width. */
    public Prior {
        Checks.within("likely " + of.label(), likely, lowest, highest, "");
        Checks.within("standard deviation of " + of.label(), standardDeviation, Double.MIN_NORMAL, 1e9, "");
    }

    /** The value so many standard deviations from the middle, within the ends. */
    double value(double deviations) {
        return Math.max(lowest, Math.min(highest, likely + deviations * standardDeviation));
    }

    /** Its width, no more than of a value that may lie evenly anywhere between the ends. */
    double widthBetweenEnds() {
        return Math.min(standardDeviation, (highest - lowest) / Math.sqrt(12));
    }

    /** How many standard deviations a value lies from the middle. */
    double deviations(double value) {
        return (value - likely) / standardDeviation;
    }
}
