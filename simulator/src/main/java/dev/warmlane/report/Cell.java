package dev.warmlane.report;

import java.util.OptionalDouble;
import java.util.function.Function;

/** What stands in one place of a table. */
public sealed interface Cell {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Words, T> words, Function<Value, T> number, Function<Empty, T> empty);

    /**
     * Words.
     *
     * @param text the words
     */
    record Words(String text) implements Cell {
        @Override
        public <T> T match(Function<Words, T> words, Function<Value, T> number, Function<Empty, T> empty) {
            return words.apply(this);
        }
    }

    /**
     * A number in the unit of its column.
     *
     * @param value the number, finite
     */
    record Value(double value) implements Cell {
        @Override
        public <T> T match(Function<Words, T> words, Function<Value, T> number, Function<Empty, T> empty) {
            return number.apply(this);
        }
    }

    /** Nothing: there is no such number. */
    record Empty() implements Cell {
        @Override
        public <T> T match(Function<Words, T> words, Function<Value, T> number, Function<Empty, T> empty) {
            return empty.apply(this);
        }
    }

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
