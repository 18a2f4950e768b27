package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.function.Function;

/** How warm the pool is on the morning it opens, or on the first one before that on which anything may warm it. */
public sealed interface StartWater {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Given, T> given, Function<StandingFilled, T> standing);

    /**
     * A given temperature.
     *
     * @param temperatureC °C
     */
    record Given(double temperatureC) implements StartWater {

        /** Range of {@link #temperatureC}. */
        public static final Range TEMPERATURE = Range.of("start temperature", Dimension.TEMPERATURE, 0.5, 40);

        /** Checks the range. */
        public Given {
            TEMPERATURE.check(temperatureC);
        }

        @Override
        public <T> T match(Function<Given, T> given, Function<StandingFilled, T> standing) {
            return given.apply(this);
        }
    }

    /**
     * The temperature that the filled pool takes by itself in the days before opening or before anything warms it, with its cover as scheduled but
     * neither collectors nor heater nor bathers. A pool that never closes has no such days: it comes into the year as it
     * goes out of it, with everything running.
     *
     * @param days days before opening
     */
    record StandingFilled(int days) implements StartWater {

        /** Range of {@link #days}. */
        public static final Range DAYS = Range.number("days before opening", 1, 365);

        /** Usual {@link #days}. */
        public static final Usual USUAL_DAYS =
                DAYS.usually(30, "long enough to forget what it was filled at, common practice, no source");

        /** Standing as long as is usual. */
        public static final StandingFilled USUAL = new StandingFilled((int) USUAL_DAYS.value());

        /** Checks the range. */
        public StandingFilled {
            DAYS.check(days);
        }

        @Override
        public <T> T match(Function<Given, T> given, Function<StandingFilled, T> standing) {
            return standing.apply(this);
        }
    }
}
