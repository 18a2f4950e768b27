package dev.warmlane.season;

/**
 * A stretch of a season: the hours of its ledger from one index to before another.
 *
 * @param label what a person calls it
 * @param from first index, 0 or above
 * @param to the index after the last, above {@code from}
 */
public record Period(String label, int from, int to) {

    /** Checks that it holds at least one hour. */
    public Period {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException(
                    "period " + label + " must hold at least one hour, was from " + from + " to before " + to);
        }
    }

    /** How many hours it has. */
    public int hours() {
        return to - from;
    }
}
