package dev.warmlane.report;

import java.util.OptionalDouble;

/** What stands in one place of a table. */
public sealed interface Cell {

    /**
     * Words.
     *
     * @param text the words
     */
    record Words(String text) implements Cell {}

    /**
     * A number in the unit of its column.
     *
     * @param value the number, finite
     */
    record Value(double value) implements Cell {}

    /** Nothing: there is no such number. */
    record Empty() implements Cell {}

    /** Words. */
    static Cell of(String text) {
        return new Words(text);
    }

    /** A number, or nothing where it is not finite. */
    static Cell of(double value) {
        return Double.isFinite(value) ? new Value(value) : new Empty();
    }

    /** A number or nothing. */
    static Cell of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : new Empty();
    }
}
