package dev.warmlane.report;

import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Measure;
import java.util.Optional;

/** How warm the pool is on its first morning: often the lowest temperature of the season, which nobody would guess. */
final class Start {

    /** Below the set point by more than this a swimmer calls the water cold, K; own choice. */
    private static final double COLD_K = 2;

    private Start() {}

    /** In words after "it"; nothing for a pool that never closes and stood filled. */
    static Optional<String> of(Numbers numbers, SeasonForecast forecast) {
        String date = " on " + numbers.show(forecast.installation().season().first());
        if (forecast.opening().early()) {
            return Optional.of(early(numbers, forecast.opening(), date));
        }
        return forecast.installation()
                .startWater()
                .match(
                        given -> Optional.of("starts at the given "
                                + numbers.show(Measure.TEMPERATURE, given.temperatureC()) + date),
                        standing -> unheated(numbers, forecast, date));
    }

    private static String early(Numbers numbers, OpeningSummary opening, String date) {
        return "opens at " + numbers.show(Measure.TEMPERATURE, opening.waterC()) + date + ", without collectors at "
                + numbers.show(Measure.TEMPERATURE, opening.waterWithoutC());
    }

    /** The mean of the first hour, as the lowest temperature is of hours. */
    private static Optional<String> unheated(Numbers numbers, SeasonForecast forecast, String date) {
        if (forecast.installation().season().days() == HourOfYear.DAYS) {
            return Optional.empty();
        }
        String water = numbers.show(Measure.TEMPERATURE, forecast.with().waterC(0)) + date;
        return Optional.of(
                isCold(forecast)
                        ? "opens cold, at " + water + ", because its heater starts on that day"
                        : "starts at " + water + ", unheated until then");
    }

    /** Whether a heated pool opens far below what its heater holds, because nothing was said of heating before. */
    static boolean isCold(SeasonForecast forecast) {
        return forecast.installation().startWater().match(given -> false, standing -> true)
                && !forecast.opening().early()
                && forecast.installation()
                        .heater()
                        .filter(heater -> forecast.with().waterC(0) < heater.setPointC() - COLD_K)
                        .isPresent();
    }
}
