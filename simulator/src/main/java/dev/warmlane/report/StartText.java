package dev.warmlane.report;

import dev.warmlane.plant.StartWater;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import java.util.Optional;

/** How warm the pool is on its first morning: often the lowest temperature of the season, which nobody would guess. */
final class StartText {

    private StartText() {}

    /** In words after "it"; nothing for a pool that never closes and stood filled. */
    static Optional<String> of(Numbers numbers, SeasonForecast forecast) {
        String start = numbers.show(Measure.TEMPERATURE, forecast.with().waterStartC(0)) + " on "
                + Numbers.show(forecast.installation().season().first());
        if (forecast.installation().startWater() instanceof StartWater.Given) {
            return Optional.of("starts at the given " + start);
        }
        return forecast.installation().season().days() == HourOfYear.DAYS
                ? Optional.empty()
                : Optional.of("starts at " + start + ", unheated until then");
    }
}
