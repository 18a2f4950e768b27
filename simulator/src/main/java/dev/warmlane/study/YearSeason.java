package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.TemperatureSummary;
import dev.warmlane.units.Units;
import java.util.Optional;

/**
 * The season of one year, summed up: no hour of it is kept.
 *
 * @param label the year, {@code 2005} or {@code 2005/06}
 * @param calendarYear the year that it begins in
 * @param installation what is built
 * @param season the season with and without the collectors
 * @param openingC mean water temperature of the first day open with the collectors, °C
 * @param openingWithoutC mean water temperature of the first day open without, °C
 * @param irradiationKwhM2 irradiation of the horizontal in the open season, kWh/m²
 * @param money its money; nothing where no prices are given
 */
public record YearSeason(
        String label,
        int calendarYear,
        Installation installation,
        PeriodSummary season,
        double openingC,
        double openingWithoutC,
        double irradiationKwhM2,
        Optional<MoneySummary> money) {

    /** Sums up a forecast in the weather of a year. */
    public static YearSeason of(String label, int calendarYear, SeasonForecast forecast) {
        PeriodSummary season = PeriodSummary.of(forecast, Periods.season(forecast.with()));
        Period first = Periods.days(forecast.with()).stream()
                .filter(day -> day.from() >= forecast.with().opening())
                .findFirst()
                .orElseThrow();
        double wattHours = 0;
        for (int index = forecast.with().opening(); index < forecast.with().hours(); index++) {
            wattHours += forecast.weather().globalHorizontalWm2(forecast.with().hourOfYear(index));
        }
        return new YearSeason(
                label,
                calendarYear,
                forecast.installation(),
                season,
                TemperatureSummary.of(forecast.with(), first).meanC(),
                TemperatureSummary.of(forecast.without(), first).meanC(),
                Units.kwhOfWattHours(wattHours),
                MoneySummary.of(forecast.installation(), season));
    }
}
