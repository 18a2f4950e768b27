package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.money.Worth;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import java.util.List;
import java.util.Optional;

/**
 * A season with one mounting.
 *
 * @param option the mounting
 * @param fit its area and rows
 * @param forecast the season with and without collectors
 * @param season the numbers of the season
 * @param months those of its months
 * @param light where the light went; nothing where the collector is described by a certificate
 * @param lightByMonth the same by month, in the order of {@code months}; empty with a certificate
 */
public record MountingResult(
        MountingOption option,
        RoofFit fit,
        SeasonForecast forecast,
        PeriodSummary season,
        List<PeriodSummary> months,
        Optional<LightBudget> light,
        List<LightBudget> lightByMonth) {

    /** Keeps its own copies of the lists. */
    public MountingResult {
        months = List.copyOf(months);
        lightByMonth = List.copyOf(lightByMonth);
    }

    /** Sums up a forecast whose installation has one array. */
    static MountingResult of(MountingOption option, RoofFit fit, SeasonForecast forecast) {
        Period season = Periods.season(forecast.with());
        return new MountingResult(
                option,
                fit,
                forecast,
                PeriodSummary.of(forecast, season),
                forecast.months(),
                light(forecast, season),
                Periods.months(forecast.with()).stream()
                        .flatMap(month -> light(forecast, month).stream())
                        .toList());
    }

    /** Heat delivered to the pool in the season, kWh. */
    public double deliveredKwh() {
        return season.balance().deliveredKwh();
    }

    /** The same per collector area, kWh/m². */
    public double deliveredKwhPerM2() {
        return deliveredKwh() / fit.areaM2();
    }

    /**
     * Heat delivered per roof that the collectors take, kWh/m²: mats and what lies on a pitched roof take their area, racks
     * their rows, all of one length, and the ways between them.
     */
    public double deliveredKwhPerRoofM2() {
        CollectorArray array = forecast.installation().arrays().get(0);
        return deliveredKwh()
                / array.mounting()
                        .match(flat -> array.areaM2(), racks -> array.flatRoofTakenM2(), pitched -> array.areaM2());
    }

    /** What the collectors are worth over the years; nothing where their price is not known or there is no heater. */
    public Optional<Worth> worth() {
        return CollectorsWorth.of(forecast.installation(), season);
    }

    private static Optional<LightBudget> light(SeasonForecast forecast, Period period) {
        return LightBudget.of(forecast.with(), forecast.forcing(), forecast.weather(), 0, period);
    }
}
