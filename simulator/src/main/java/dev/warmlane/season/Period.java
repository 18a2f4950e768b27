package dev.warmlane.season;

/**
 * A stretch of a season: the hours of its ledger from one index to before another.
 *
 * @param label what a person calls it
 * @param from first index, 0 or above
 * @param to the index after the last, above {@code from}
 * @param heatFrom the index from which heat, and all that is bought, is counted: {@code from}, or for a whole season the
 *     first hour before opening in which anything may run. Temperatures and comfort are of the hours from {@code from} on
 */
public record Period(String label, int from, int to, int heatFrom) {

    /** A stretch whose heat is that of its own hours. */
    public Period(String label, int from, int to) {
        this(label, from, to, from);
    }

    /** Checks that it holds at least one hour. */
    public Period {
        if (heatFrom < 0 || from < heatFrom || to <= from) {
            throw new IllegalArgumentException(
                    "period " + label + " must hold at least one hour, was from " + from + " to before " + to);
        }
    }

    /** How many hours it has, those before opening not counted. */
    public int hours() {
        return to - from;
    }
}
