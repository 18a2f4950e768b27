package dev.warmlane.study;

import dev.warmlane.units.Checks;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Quantiles of a few years' values, and how well so few know them.
 *
 * <p>The definition is number 6 of Hyndman and Fan 1996, Sample quantiles in statistical packages, The American
 * Statistician 50:361-365: the value at the place {@code p (n + 1)} of the {@code n} values in their order, straight
 * between two places; that of Weibull. It is taken because of what it says of the next year: if years are exchangeable, the
 * next one falls below the {@code k}-th of {@code n} with probability {@code k / (n + 1)}, whatever their distribution.
 * Below the place 1 and above the place n it says nothing, and nothing is returned: nine years are needed for a value that
 * nine of ten years exceed.
 *
 * <p>The interval is that of order statistics, free of any distribution: how many of n years lie below the quantile is
 * binomial, so that two of the values enclose it with a confidence that only depends on n and p (David and Nagaraja, Order
 * Statistics, 3rd edition 2003, section 7.1; from memory). At few years one end may not exist.
 */
public final class SampleQuantile {

    /** Confidence of {@link #interval}: 5 % are left at either end. */
    public static final double CONFIDENCE = 0.90;

    private final double[] sorted;

    /** Of values in any order, at least one, none of them NaN. */
    public SampleQuantile(double... values) {
        this.sorted = values.clone();
        Arrays.sort(sorted);
        if (sorted.length == 0 || Double.isNaN(sorted[sorted.length - 1])) {
            throw new IllegalArgumentException("a quantile needs at least one value, and none that is not a number");
        }
    }

    /**
     * The ends of an interval; an end is missing where so few values do not bound the quantile.
     *
     * @param low the lower end
     * @param high the upper end
     */
    public record Interval(OptionalDouble low, OptionalDouble high) {}

    /**
     * The quantile.
     *
     * @param p share of years below it, 0 to 1, ends excluded
     * @return nothing where the values are too few
     */
    public OptionalDouble at(double p) {
        double place = checked(p) * (sorted.length + 1);
        int k = (int) Math.floor(place + ROUNDING);
        double part = Math.max(0, place - k);
        if (k < 1 || k > sorted.length || (k == sorted.length && part > ROUNDING)) {
            return OptionalDouble.empty();
        }
        double low = sorted[k - 1];
        return OptionalDouble.of(part <= ROUNDING ? low : low + part * (sorted[k] - low));
    }

    /** Keeps a place such as 0.1 times 10 whole. */
    private static final double ROUNDING = 1e-9;

    /** Half of the years lie below it. Of one value or more. */
    public double median() {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** The values that enclose the true quantile with at least {@link #CONFIDENCE}, each end with half of the rest. */
    public Interval interval(double p) {
        checked(p);
        int n = sorted.length;
        double outside = (1 - CONFIDENCE) / 2;
        OptionalDouble low = OptionalDouble.empty();
        OptionalDouble high = OptionalDouble.empty();
        double atMost = 0;
        for (int below = 0; below < n; below++) {
            atMost += probability(n, below, p);
            // the quantile lies under the value number below + 1 if no more than below years do
            if (atMost <= outside) {
                low = OptionalDouble.of(sorted[below]);
            }
            if (high.isEmpty() && atMost >= 1 - outside) {
                high = OptionalDouble.of(sorted[below]);
            }
        }
        return new Interval(low, high);
    }

    private static double checked(double p) {
        return Checks.within("share of years below a quantile", p, 1e-6, 1 - 1e-6, "");
    }

    /** Of exactly k years of n below, binomial. */
    private static double probability(int n, int k, double p) {
        double log = k * Math.log(p) + (n - k) * Math.log1p(-p);
        for (int i = 1; i <= k; i++) {
            log += Math.log((double) (n - k + i) / i);
        }
        return Math.exp(log);
    }
}
