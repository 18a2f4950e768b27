package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import dev.warmlane.weather.HourlyWeather;
import java.util.Arrays;
import java.util.function.Function;

/** How warm the water of a {@link ThroughFlow} comes. */
public sealed interface InflowTemperature {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Given, T> given, Function<MeanAir, T> meanAir);

    /** In every hour of the weather, °C. */
    double[] hourlyC(HourlyWeather weather);

    /**
     * The same always.
     *
     * @param temperatureC °C
     */
    record Given(double temperatureC) implements InflowTemperature {

        /** Range of {@link #temperatureC}. */
        public static final Range TEMPERATURE =
                Range.of("temperature of the through-flow", Dimension.TEMPERATURE, 0, 60);

        /** Checks the range. */
        public Given {
            TEMPERATURE.check(temperatureC);
        }

        @Override
        public <T> T match(Function<Given, T> given, Function<MeanAir, T> meanAir) {
            return given.apply(this);
        }

        @Override
        public double[] hourlyC(HourlyWeather weather) {
            double[] all = new double[weather.hours()];
            Arrays.fill(all, temperatureC);
            return all;
        }
    }

    /**
     * The mean of the air over the days before, never below 0 °C: water that stood in the open or in a shallow pipe. A year
     * goes before itself; where a record has fewer hours before, the mean of those it has.
     *
     * @param days over how many days
     */
    record MeanAir(double days) implements InflowTemperature {

        /** Range of {@link #days}. */
        public static final Range DAYS =
                Range.of("days of air that the through-flow follows", Dimension.DURATION, "days", 0.05, 60);

        /** Usual {@link #days}. */
        public static final Usual USUAL_DAYS = DAYS.usually(1, "own choice, no source");

        /** Checks the range. */
        public MeanAir {
            DAYS.check(days);
        }

        @Override
        public <T> T match(Function<Given, T> given, Function<MeanAir, T> meanAir) {
            return meanAir.apply(this);
        }

        @Override
        public double[] hourlyC(HourlyWeather weather) {
            int hours = weather.hours();
            boolean closed = weather.match(year -> true, record -> false);
            int length = (int) Math.min(hours, Math.max(1, Math.round(days * 24)));
            double[] mean = new double[hours];
            double sum = 0;
            int held = 0;
            for (int hour = closed ? 1 - length : 0; hour < hours; hour++) {
                sum += weather.airTemperatureC(Math.floorMod(hour, hours));
                held++;
                if (held > length) {
                    sum -= weather.airTemperatureC(Math.floorMod(hour - length, hours));
                    held--;
                }
                if (hour >= 0) {
                    mean[hour] = Math.max(0, sum / held);
                }
            }
            return mean;
        }
    }
}
