package dev.warmlane.report;

import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Measure;
import java.util.Optional;

/** How warm the pool is on its first morning: often the lowest temperature of the season, which nobody would guess. */
final class Start {

    /** Below the set point by more than this a swimmer calls the water cold, K; own choice. */
    private static final double COLD_K = 2;

    /** So near its set point a heater has done its work, K. */
    private static final double REACHED_K = 0.1;

    private static final int HOURS_A_DAY = 24;

    private Start() {}

    /** In words after "it"; nothing for a pool that never closes and stood filled. */
    static Optional<String> of(Numbers numbers, SeasonForecast forecast, FuelWords fuel) {
        String date = " on " + numbers.show(forecast.installation().season().first());
        if (forecast.opening().early()) {
            return Optional.of(early(numbers, forecast.opening(), fuel, date));
        }
        return forecast.installation()
                .startWater()
                .match(
                        given -> Optional.of("starts at the given "
                                + numbers.show(Measure.TEMPERATURE, given.temperatureC()) + date),
                        standing -> unheated(numbers, forecast, date));
    }

    private static String early(Numbers numbers, OpeningSummary opening, FuelWords fuel, String date) {
        String water = numbers.show(Measure.TEMPERATURE, opening.waterC());
        String without = numbers.show(Measure.TEMPERATURE, opening.waterWithoutC());
        return "opens at " + water + date
                + (water.equals(without) ? ", with collectors and without" : ", without collectors at " + without)
                + (opening.boughtKwh() < opening.boughtWithoutKwh()
                        ? "; until then the heater " + fuel.uses() + " "
                                + numbers.roughly(Measure.HEAT, opening.boughtKwh()) + " of " + fuel.word()
                                + ", without them " + numbers.roughly(Measure.HEAT, opening.boughtWithoutKwh())
                        : "");
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
                                + warm(numbers, forecast)
                        : "starts at " + water + ", unheated until then");
    }

    /** What would open it warm: as many days before as the heater takes from the opening on without the collectors' help. */
    private static String warm(Numbers numbers, SeasonForecast forecast) {
        double setPointC = forecast.installation().heater().orElseThrow().setPointC();
        SeasonLedger alone = forecast.without();
        int hour = 0;
        while (hour < alone.hours() && alone.waterC(hour) < setPointC - REACHED_K) {
            hour++;
        }
        int days = hour / HOURS_A_DAY + 1;
        return hour == alone.hours()
                ? ""
                : "; to open at " + numbers.show(Measure.TEMPERATURE, setPointC) + " it would have to start "
                        + (days == 1 ? "a day" : "some " + days + " days") + " before";
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
