package dev.warmlane.units;

/** Range checks that say what was found and what is allowed, for the constructors of validated records. */
public final class Checks {

    private Checks() {}

    /**
     * Returns the value if it lies in the range, ends included.
     *
     * @throws IllegalArgumentException naming the quantity, the value and the range otherwise, or for NaN
     */
    public static double within(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(what + " must be " + plain(lowest) + " to " + plain(highest)
                    + (unit.isEmpty() ? "" : " " + unit) + ", was " + plain(value));
        }
        return value;
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
