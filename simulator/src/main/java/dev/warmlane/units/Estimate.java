package dev.warmlane.units;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A number that is not known exactly: its likely value, and the values between which it is expected, all in one unit. The
 * bounds are a judgement about inputs carried through the model, not a statistic: no probability stands behind them.
 *
 * @param low lower bound
 * @param likely likely value, at least {@code low}
 * @param high upper bound, at least {@code likely}
 */
public record Estimate(double low, double likely, double high) {

    /** Refuses what is no number, and bounds that do not hold the likely value. */
    public Estimate {
        if (!Double.isFinite(low) || !Double.isFinite(high) || !(low <= likely && likely <= high)) {
            throw new IllegalArgumentException(
                    "an estimate runs from low over likely to high, was " + low + ", " + likely + ", " + high);
        }
    }

    /** A number without doubt. */
    public static Estimate exactly(double value) {
        return new Estimate(value, value, value);
    }

    /**
     * A number that one cause moves, both ends perhaps to one side.
     *
     * @param likely the number as it is described
     * @param one what the one end of the cause makes of it
     * @param other what the other end does
     */
    public static Estimate around(double likely, double one, double other) {
        return new Estimate(Math.min(likely, Math.min(one, other)), likely, Math.max(likely, Math.max(one, other)));
    }

    /**
     * What several causes, each tried by itself, make of a number together. Deviations downwards and upwards are each added
     * as the root of the sum of their squares, as independent small ones are (JCGM 100:2008, 5.1.2, from memory); that this
     * is done for either side by itself, because causes are seldom even, is our own choice.
     *
     * @param likely the number as it is described
     * @param eachAlone what each cause alone makes of it: its lowest, {@code likely}, its highest
     */
    public static Estimate combined(double likely, List<Estimate> eachAlone) {
        double down = 0;
        double up = 0;
        for (Estimate alone : eachAlone) {
            down = Math.hypot(down, likely - alone.low);
            up = Math.hypot(up, alone.high - likely);
        }
        return new Estimate(likely - down, likely, likely + up);
    }

    /**
     * The same number where it cannot be outside of two bounds, such as days of a season that has only so many.
     *
     * @param lowest at most {@link #likely}
     * @param highest at least {@link #likely}
     */
    public Estimate within(double lowest, double highest) {
        return new Estimate(Math.max(low, lowest), likely, Math.min(high, highest));
    }

    /**
     * The same number measured otherwise.
     *
     * @param toOther from this unit to the other, growing
     */
    public Estimate map(DoubleUnaryOperator toOther) {
        return new Estimate(toOther.applyAsDouble(low), toOther.applyAsDouble(likely), toOther.applyAsDouble(high));
    }

    /** How far it may be from the likely value, on the side where that is more. */
    public double doubt() {
        return Math.max(likely - low, high - likely);
    }
}
