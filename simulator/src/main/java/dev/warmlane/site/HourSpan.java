package dev.warmlane.site;

import java.util.stream.IntStream;

/**
 * Hours of the year one after another, over New Year where they reach it.
 *
 * @param first the first of them, 0 to 8759
 * @param hours how many, 1 to 8760
 */
public record HourSpan(int first, int hours) {

    /** All of them. */
    public static final HourSpan YEAR = new HourSpan(0, HourOfYear.HOURS);

    /** Checks both; the whole year begins with its first hour. */
    public HourSpan {
        if (first < 0 || first >= HourOfYear.HOURS || hours < 1 || hours > HourOfYear.HOURS) {
            throw new IllegalArgumentException("hours " + first + " and on, " + hours
                    + " in all, are not hours of one year of " + HourOfYear.HOURS);
        }
        first = hours == HourOfYear.HOURS ? 0 : first;
    }

    /** The same and so many hours before them, the whole year at most. */
    public HourSpan from(int before) {
        return new HourSpan(
                Math.floorMod(first - before, HourOfYear.HOURS), Math.min(HourOfYear.HOURS, hours + before));
    }

    /** Whether all hours of another lie in it. */
    public boolean covers(HourSpan other) {
        return hours == HourOfYear.HOURS || Math.floorMod(other.first - first, HourOfYear.HOURS) + other.hours <= hours;
    }

    /** Their numbers, rising: after New Year's first. */
    public int[] rising() {
        return IntStream.range(0, hours)
                .map(i -> (first + i) % HourOfYear.HOURS)
                .sorted()
                .toArray();
    }
}
