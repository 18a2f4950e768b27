package dev.warmlane.study;

import dev.warmlane.units.Dimension;
import java.util.List;

/** What something of an installation is set to. */
public sealed interface Setting {

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
    }

    /**
     * One of several kinds.
     *
     * @param text its words
     */
    record Words(String text) implements Setting {}
}
