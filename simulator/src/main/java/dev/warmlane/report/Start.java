package dev.warmlane.report;

import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Measure;
import java.util.Optional;

/** How warm the pool is on its first morning: often the lowest temperature of the season, which nobody would guess. */
final class Start {

    private Start() {}

    /** In words after "it"; nothing for a pool that never closes and stood filled. */
    static Optional<String> of(Numbers numbers, SeasonForecast forecast) {
        String date = " on " + Numbers.show(forecast.installation().season().first());
        return forecast.installation()
                .startWater()
                .match(
                        given -> Optional.of("starts at the given "
                                + numbers.show(Measure.TEMPERATURE, given.temperatureC()) + date),
                        standing -> unheated(numbers, forecast, date));
    }

    /** The mean of the first hour, as the lowest temperature is of hours. */
    private static Optional<String> unheated(Numbers numbers, SeasonForecast forecast, String date) {
        return forecast.installation().season().days() == HourOfYear.DAYS
                ? Optional.empty()
                : Optional.of("starts at "
                        + numbers.show(Measure.TEMPERATURE, forecast.with().waterC(0)) + date
                        + ", unheated until then");
    }
}
