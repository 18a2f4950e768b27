package dev.warmlane.units;

import java.util.Optional;

/**
 * What an input may be: the least and the greatest value, both allowed, and the unit they are in. It stands beside the
 * value that it bounds, which asks it in its constructor; a scenario's key refers to the same range, so that kind, unit,
 * spelling and message of the key follow from here.
 *
 * @param what what the number is, as a message calls it
 * @param dimension the kind of quantity
 * @param unit the unit that the value is held in, a symbol of the dimension
 * @param written the unit that people write it in, where another is handier
 * @param lowest the least value, in {@code unit}
 * @param highest the greatest value, in {@code unit}
 */
public record Range(String what, Dimension dimension, String unit, String written, double lowest, double highest) {

    /** Checks that the dimension has both units and that the ends are in order. */
    public Range {
        Quantity.in(unit, 0, dimension);
        Quantity.in(written, 0, dimension);
        if (!(lowest <= highest)) {
            throw new IllegalArgumentException(
                    "the range of " + what + " ends at " + highest + ", before it begins, at " + lowest);
        }
    }

    /** A quantity in the base unit of its dimension. */
    public static Range of(String what, Dimension dimension, double lowest, double highest) {
        return of(what, dimension, dimension.baseUnit(), lowest, highest);
    }

    /** A quantity in one of the units of its dimension. */
    public static Range of(String what, Dimension dimension, String unit, double lowest, double highest) {
        return new Range(what, dimension, unit, unit, lowest, highest);
    }

    /** A share of a whole, which may be written as a percentage. */
    public static Range share(String what, double lowest, double highest) {
        return of(what, Dimension.FRACTION, lowest, highest);
    }

    /** A plain number, whole or not. */
    public static Range number(String what, double lowest, double highest) {
        return of(what, Dimension.NUMBER, lowest, highest);
    }

    /** The same range, written by people in another unit than the value is held in. */
    public Range writtenIn(String symbol) {
        return new Range(what, dimension, unit, symbol, lowest, highest);
    }

    /** The same range of one of several values, which a message calls by a name of its own. */
    public Range named(String name) {
        return new Range(name, dimension, unit, written, lowest, highest);
    }

    /** The same range of a value that has another at its lower end. */
    public Range from(double otherLowest) {
        return new Range(what, dimension, unit, written, otherLowest, highest);
    }

    /** The same range of a value that has another at its upper end. */
    public Range upTo(double otherHighest) {
        return new Range(what, dimension, unit, written, lowest, otherHighest);
    }

    /** The value itself where it lies within, else the end that is nearer; for values of the model's own, never for input. */
    public double nearest(double value) {
        return Math.max(lowest, Math.min(highest, value));
    }

    /** A usual value of the range, and where it comes from. */
    public Usual usually(double value, String source) {
        return new Usual(this, value, source);
    }

    /** Whether a value lies in the range; NaN does not. */
    public boolean holds(double value) {
        return value >= lowest && value <= highest;
    }

    /**
     * Returns the value if it lies in the range.
     *
     * @throws IllegalArgumentException naming the quantity, the value and the range otherwise, or for NaN
     */
    public double check(double value) {
        return Checks.within(what, value, lowest, highest, unit);
    }

    /**
     * The value of a text, in the unit that it is held in, whether it lies in the range or not. A mark that may part
     * thousands or decimals, "1.250 m2" and "1,250 m2", is asked back where both readings lie in the range; where one does,
     * a comma may part thousands and a point decimals. With a US unit nobody doubts it.
     *
     * @throws QuantityException if the text is not a number with a unit of the dimension, or not clear
     */
    public double read(String text) {
        Optional<LoneMark> mark = Quantity.isUs(text, dimension) ? Optional.empty() : Quantity.mark(text, dimension);
        if (mark.isEmpty()) {
            return Quantity.parse(text, dimension, unit);
        }
        double thousands = Quantity.parse(mark.get().thousands(), dimension, unit);
        double decimals = Quantity.parse(mark.get().decimals(), dimension, unit);
        if (holds(thousands) && holds(decimals)) {
            throw QuantityTrouble.doubtful(text);
        }
        if (holds(decimals) && !mark.get().point()) {
            throw QuantityTrouble.decimalComma(text, mark.get().decimals());
        }
        return mark.get().point() ? decimals : thousands;
    }

    /** A text with a point, without it, where it lies in the range if the point parts thousands; else empty. */
    public Optional<String> inThousands(String text) {
        return Quantity.mark(text, dimension)
                .map(LoneMark::thousands)
                .filter(thousands -> holds(Quantity.parse(thousands, dimension, unit)));
    }

    /**
     * The value with the unit that people write, or with the one it is held in where only that gives exactly the same
     * value back to {@link #read}.
     */
    public String write(double value) {
        String text = text(inWritten(value), written);
        return Quantity.parse(text, dimension, unit) == value ? clear(text) : clear(text(value, unit));
    }

    /** A number that is read as it is meant. */
    private String clear(String text) {
        return inThousands(text).isPresent()
                ? Quantity.mark(text, dimension).map(LoneMark::decimals).orElse(text)
                : text;
    }

    /** A held value as a number of the unit that people write. */
    public double inWritten(double value) {
        return unit.equals(written) ? value : Quantity.in(written, Quantity.base(value, unit, dimension), dimension);
    }

    /** Both ends and the unit that people write: {@code 0.5 to 100 mm}. */
    public String ends() {
        return Quantity.plain(inWritten(lowest)) + " to " + text(inWritten(highest), written);
    }

    private static String text(double number, String symbol) {
        return (Quantity.plain(number) + " " + symbol).strip();
    }
}
