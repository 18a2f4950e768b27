package dev.warmlane.study;

import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.function.Function;

/** What something of an installation is set to. */
public sealed interface Setting {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Numbers, T> numbers, Function<Words, T> words);

    /**
     * Numbers with a unit.
     *
     * @param values the number in the base unit of the dimension; several where the collector arrays differ
     * @param dimension what they measure
     */
    record Numbers(List<Double> values, Dimension dimension) implements Setting {

        /** Keeps each number once, in the order given. */
        public Numbers {
            values = values.stream().distinct().toList();
        }

        @Override
        public <T> T match(Function<Numbers, T> numbers, Function<Words, T> words) {
            return numbers.apply(this);
        }
    }

    /**
     * One of several kinds.
     *
     * @param text its words
     */
    record Words(String text) implements Setting {
        @Override
        public <T> T match(Function<Numbers, T> numbers, Function<Words, T> words) {
            return words.apply(this);
        }
    }
}
