package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A parameter that is a number.
 *
 * @param name what it is called
 * @param dimension what it measures
 * @param lens where it is found
 * @param ends how far it is varied
 * @param why why so far
 * @param absent the reason where an installation has nothing of the kind
 */
record NumberParameter(String name, Dimension dimension, Lens lens, Ends ends, String why, String absent)
        implements Parameter {

    @Override
    public Variation in(Installation installation) {
        List<Double> values = lens.get().apply(installation);
        if (values.isEmpty()) {
            return new Variation.NotHere(absent);
        }
        return new Variation.Range(
                new Setting.Numbers(values, dimension), end(installation, ends.low()), end(installation, ends.high()));
    }

    private Variation.End end(Installation installation, DoubleUnaryOperator change) {
        Installation changed = lens.change().apply(installation, change);
        return new Variation.End(new Setting.Numbers(lens.get().apply(changed), dimension), changed);
    }
}
