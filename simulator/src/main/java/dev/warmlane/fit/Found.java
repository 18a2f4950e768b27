package dev.warmlane.fit;

/**
 * What a fit found of an unknown, beside what was taken to be known of it.
 *
 * @param prior what was known before
 * @param likely the most likely value, the posterior's mode
 * @param standardDeviation width of the posterior by Laplace's method
 * @param low below it lies one in twenty draws of the chain
 * @param high above it lies one in twenty draws of the chain
 * @param chainMean mean of the chain's draws
 * @param chainStandardDeviation standard deviation of the chain's draws
 */
public record Found(
        Prior prior,
        double likely,
        double standardDeviation,
        double low,
        double high,
        double chainMean,
        double chainStandardDeviation) {

    /** The unknown. */
    public Unknown of() {
        return prior.of();
    }

    /** How much of the prior's width the log left: near 1 it said nothing. */
    public double shareOfPrior() {
        return chainStandardDeviation / prior.standardDeviation();
    }
}
