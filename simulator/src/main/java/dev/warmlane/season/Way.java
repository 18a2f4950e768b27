package dev.warmlane.season;

/** The way of the water's temperature in a piece of an hour, and what lies on it. */
final class Way {

    private Way() {}

    /** Whether a temperature lies on the way from start to end; the start itself does not, the end does. */
    static boolean crosses(double start, double end, double at) {
        return start < end ? at > start && at <= end : at < start && at >= end;
    }

    /**
     * The first of two temperatures on the way from start to end.
     *
     * @param found what was found so far, NaN for nothing
     * @param at another that may lie on the way or not; NaN lies nowhere
     */
    static double first(double start, double end, double found, double at) {
        return crosses(start, Double.isNaN(found) ? end : found, at) ? at : found;
    }
}
