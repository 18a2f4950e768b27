package dev.warmlane.plant;

import dev.warmlane.units.Checks;

/** How warm the pool is on the morning it opens. */
public sealed interface StartWater {

    /**
     * A given temperature.
     *
     * @param temperatureC °C, 0.5 to 40
     */
    record Given(double temperatureC) implements StartWater {

        /** Checks the range. */
        public Given {
            Checks.within("start temperature", temperatureC, 0.5, 40, "degC");
        }
    }

    /**
     * The temperature that the filled pool takes by itself in the days before opening, with its cover as scheduled but
     * neither collectors nor heater nor bathers. A pool that never closes has no such days: it comes into the year as it
     * goes out of it, with everything running.
     *
     * @param days days before opening, 1 to 365
     */
    record StandingFilled(int days) implements StartWater {

        /** Long enough for a pool of usual depth to forget what it was filled at (common practice, no source). */
        public static final StandingFilled USUAL = new StandingFilled(30);

        /** Checks the range. */
        public StandingFilled {
            Checks.within("days before opening", days, 1, 365, "days");
        }
    }
}
