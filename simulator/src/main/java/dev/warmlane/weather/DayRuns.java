package dev.warmlane.weather;

import java.util.function.DoublePredicate;

/** Runs of consecutive days of some kind: how many, and the longest. Two days make a run; one alone is none (own choice). */
final class DayRuns {

    private static final int SHORTEST = 2;

    private int count;
    private int longest;

    /** Counts the runs of days of which something is true. */
    void add(double[] days, DoublePredicate is) {
        int run = 0;
        for (double day : days) {
            if (is.test(day)) {
                run++;
                count += run == SHORTEST ? 1 : 0;
                longest = run >= SHORTEST ? Math.max(longest, run) : longest;
            } else {
                run = 0;
            }
        }
    }

    int count() {
        return count;
    }

    int longest() {
        return longest;
    }
}
