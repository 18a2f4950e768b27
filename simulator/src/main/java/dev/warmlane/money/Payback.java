package dev.warmlane.money;

import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/** After how long something has paid for itself, if it ever does. */
public sealed interface Payback {

    /** Beyond this nobody waits, years; own choice, twice what collectors last. */
    int LONGEST_YEARS = 40;

    /** One answer for each kind. */
    <T> T match(DoubleFunction<T> after, Supplier<T> notWithin);

    /**
     * It has.
     *
     * @param years after so many, 0 where nothing was paid
     */
    record After(double years) implements Payback {
        @Override
        public <T> T match(DoubleFunction<T> after, Supplier<T> notWithin) {
            return after.apply(years);
        }
    }

    /** It has not within {@link #LONGEST_YEARS}. */
    record NotWithin() implements Payback {
        @Override
        public <T> T match(DoubleFunction<T> after, Supplier<T> notWithin) {
            return notWithin.get();
        }
    }
}
