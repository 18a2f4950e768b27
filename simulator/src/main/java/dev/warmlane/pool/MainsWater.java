package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** Temperature of the water from the mains. */
public sealed interface MainsWater {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<FromAir, T> fromAir, Function<Monthly, T> monthly);

    /**
     * Estimated from the year's air temperature by the rule of Burch and Christensen 2007 (Towards Development of an
     * Algorithm for Mains Water Temperature, NREL; from memory), in °F: T = (A + 6) + r·(D/2)·sin(0.986·(day − 15 − lag)
     * − 90), with A the yearly mean, D the span between the warmest and coldest monthly means, r = 0.4 + 0.01·(A − 44)
     * and lag = 35 − 1.0·(A − 44) days. South of the equator the year is turned by half.
     */
    record FromAir() implements MainsWater {
        @Override
        public <T> T match(Function<FromAir, T> fromAir, Function<Monthly, T> monthly) {
            return fromAir.apply(this);
        }
    }

    /**
     * One temperature a month.
     *
     * @param temperaturesC twelve temperatures from January, °C
     */
    record Monthly(List<Double> temperaturesC) implements MainsWater {

        /** Range of {@link #temperaturesC}. */
        public static final Range TEMPERATURE = Range.of("mains temperature", Dimension.TEMPERATURE, 0, 40);

        /** Checks number and ranges. */
        public Monthly {
            temperaturesC = List.copyOf(temperaturesC);
            if (temperaturesC.size() != 12) {
                throw new IllegalArgumentException(
                        "mains water needs 12 temperatures, January first, got " + temperaturesC.size());
            }
            temperaturesC.forEach(t -> TEMPERATURE.check(t));
        }

        /** The same temperature all year, °C. */
        public static Monthly constant(double temperatureC) {
            Double[] all = new Double[12];
            Arrays.fill(all, temperatureC);
            return new Monthly(List.of(all));
        }

        @Override
        public <T> T match(Function<FromAir, T> fromAir, Function<Monthly, T> monthly) {
            return monthly.apply(this);
        }
    }
}
