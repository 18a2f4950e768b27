package dev.warmlane.study;

import dev.warmlane.season.Installation;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/** One thing of an installation that may be otherwise than described. */
public interface Parameter {

    /** What it is called. */
    String name();

    /** Why it is varied as far as it is: the source, or that there is none. */
    String why();

    /** Its two ends in an installation. */
    Variation in(Installation installation);

    /** A way to read numbers of an installation, none where it has nothing of the kind, and to change all of them. */
    record Lens(
            Function<Installation, List<Double>> get,
            BiFunction<Installation, DoubleUnaryOperator, Installation> change) {}

    /** How far a number is varied; each end may depend on the number described. */
    record Ends(DoubleUnaryOperator low, DoubleUnaryOperator high) {

        /** Two numbers, whatever is described. */
        static Ends at(double low, double high) {
            return new Ends(described -> low, described -> high);
        }

        /** The described number times one factor and times another. */
        static Ends times(double low, double high) {
            return new Ends(described -> described * low, described -> described * high);
        }

        /** The described number less and more a difference, kept within the range that it may have. */
        static Ends around(double difference, double lowest, double highest) {
            return new Ends(
                    described -> Math.max(lowest, described - difference),
                    described -> Math.min(highest, described + difference));
        }
    }
}
