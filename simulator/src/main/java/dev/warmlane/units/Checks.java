package dev.warmlane.units;

/**
 * Range checks that say what was found and what is allowed, for arguments that nobody writes into a file; those that
 * somebody does have a {@link Range}.
 */
public final class Checks {

    private Checks() {}

    /**
     * Returns the value if it lies in the range, ends included.
     *
     * @throws IllegalArgumentException naming the quantity, the value and the range otherwise, or for NaN
     */
    public static double within(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(what + " must be " + Quantity.plain(lowest) + " to "
                    + Quantity.plain(highest) + (unit.isEmpty() ? "" : " " + unit) + ", was " + Quantity.plain(value));
        }
        return value;
    }
}
