package dev.warmlane.weather;

import java.util.Arrays;

/** The statistic of Finkelstein and Schafer 1971, Improved goodness-of-fit tests, Biometrika 58:641-645, as typical years use it. */
final class FinkelsteinSchafer {

    private FinkelsteinSchafer() {}

    /**
     * The mean over a month's days of how far apart two distributions are at that day's value: the share of the month's own
     * days, and that of all days, that are not above it. 0 to 1; 0 where they agree on every day.
     *
     * @param days the month's days in any order
     * @param all the days of that month in all years, sorted, the month's own among them
     */
    static double statistic(double[] days, double[] all) {
        double[] own = days.clone();
        Arrays.sort(own);
        double sum = 0;
        for (double day : own) {
            sum += Math.abs(shareUpTo(own, day) - shareUpTo(all, day));
        }
        return sum / own.length;
    }

    private static double shareUpTo(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return (double) low / sorted.length;
    }
}
