package dev.warmlane.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * All numbers of a season.
 *
 * @param season the whole season as one period
 * @param warmUpHours hours from opening until the water is at the comfort temperature for the first time, 0 where it
 *     opens there; nothing where it never is
 * @param warmUpHoursWithout the same without collectors
 * @param arrays what the arrays are made of
 * @param workingRange what collectors and pipes must stand; nothing where there are no collectors
 * @param nextSquareMetre what more area would add; nothing where there are no collectors
 * @param money money; nothing where no prices are given
 */
public record SeasonSummary(
        PeriodSummary season,
        OptionalInt warmUpHours,
        OptionalInt warmUpHoursWithout,
        List<ArraySummary> arrays,
        Optional<WorkingRange> workingRange,
        Optional<NextSquareMetre> nextSquareMetre,
        Optional<MoneySummary> money) {

    /** Keeps its own copy of the list. */
    public SeasonSummary {
        arrays = List.copyOf(arrays);
    }

    /**
     * Sums up a forecast.
     *
     * @param forecast the forecast
     * @param grown the same with a little more or less collector area; nothing where there are no collectors
     */
    public static SeasonSummary of(SeasonForecast forecast, Optional<SeasonForecast> grown) {
        Installation installation = forecast.installation();
        PeriodSummary season = season(forecast);
        return new SeasonSummary(
                season,
                warmUpHours(forecast.with()),
                warmUpHours(forecast.without()),
                installation.arrays().stream().map(ArraySummary::of).toList(),
                WorkingRange.of(forecast),
                grown.map(other -> NextSquareMetre.between(season, season(other), installation)),
                MoneySummary.of(installation, season));
    }

    private static PeriodSummary season(SeasonForecast forecast) {
        return PeriodSummary.of(forecast, Periods.season(forecast.with()));
    }

    private static OptionalInt warmUpHours(SeasonLedger ledger) {
        int opening = ledger.opening();
        if (ComfortSummary.warmEnough(ledger.waterStartC(opening), ledger.installation())) {
            return OptionalInt.of(0);
        }
        for (int index = opening; index < ledger.hours(); index++) {
            if (ComfortSummary.warmEnough(ledger.waterEndC(index), ledger.installation())) {
                return OptionalInt.of(index + 1 - opening);
            }
        }
        return OptionalInt.empty();
    }
}
