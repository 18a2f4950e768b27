package dev.warmlane.plant;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;


/** How warm the pool is on the morning it opens. */
public sealed interface StartWater {

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
    }

    /**
     * The temperature that the filled pool takes by itself in the days before opening, with its cover as scheduled but
     * neither collectors nor heater nor bathers. A pool that never closes has no such days: it comes into the year as it
     * goes out of it, with everything running.
     *
     * @param days days before opening
     */
    record StandingFilled(int days) implements StartWater {

        /** Range of {@link #days}. */
        public static final Range DAYS = Range.number("days before opening", 1, 365);


        /** Long enough for a pool of usual depth to forget what it was filled at (common practice, no source). */
        public static final StandingFilled USUAL = new StandingFilled(30);

        /** Checks the range. */
        public StandingFilled {
            DAYS.check(days);
        }
    }
}
