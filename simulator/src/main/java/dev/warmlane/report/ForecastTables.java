package dev.warmlane.report;

import dev.warmlane.pool.PoolSetting;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.ComfortSummary;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import java.util.List;
import java.util.OptionalInt;

/** Tables of a forecast for people: narrow enough for a page. {@link PeriodTables} and {@link HourTable} have all. */
public final class ForecastTables {

    private ForecastTables() {}

    /** Month by month, the season below. */
    public static Table months(SeasonForecast forecast, ReportSettings.Units units) {
        return table(forecast, units, "month", forecast.months());
    }

    /** Week by week from opening, the season below. */
    public static Table weeks(SeasonForecast forecast, ReportSettings.Units units) {
        return table(forecast, units, "week", forecast.weeks());
    }

    private static Table table(
            SeasonForecast forecast, ReportSettings.Units units, String name, List<PeriodSummary> rows) {
        PeriodSummary season = PeriodSummary.of(forecast, Periods.season(forecast.with()));
        TableBuilder<PeriodSummary> table = new TableBuilder<PeriodSummary>(units)
                .words(name, name, p -> p.period().label());
        if (name.equals("week")) {
            table.words("from", "first_day", ForecastTables::firstDay);
        }
        boolean indoor = forecast.installation().pool().setting() instanceof PoolSetting.Indoor;
        table.number(indoor ? "outdoor\nair" : "air", "air_mean", Measure.TEMPERATURE, PeriodSummary::airMeanC)
                .number("pool", "water_mean", Measure.TEMPERATURE, p -> p.water()
                        .meanC())
                .number("lowest", "water_lowest", Measure.TEMPERATURE, p -> p.water()
                        .lowestC())
                .number("highest", "water_highest", Measure.TEMPERATURE, p -> p.water()
                        .highestC())
                .number("without", "water_without_mean", Measure.TEMPERATURE, p -> p.waterWithout()
                        .meanC())
                .optionalCount("days at\ncomfort", "days_at_comfort", p -> daysAtComfort(p.comfort()))
                .optionalCount("\nwithout", "days_at_comfort_without", p -> daysAtComfort(p.comfortWithout()))
                .number("solar\nheat", "delivered", Measure.HEAT, p -> p.balance()
                        .deliveredKwh());
        if (season.gas() instanceof GasSummary.Displaced) {
            table.number("gas\nburned", "gas_burned", Measure.HEAT, ForecastTables::burned)
                    .number("gas\ndisplaced", "gas_displaced", Measure.HEAT, p -> p.gas()
                            .replacedKwh());
        }
        return table.build(rows, List.of(season));
    }

    static String firstDay(PeriodSummary period) {
        return HourOfYear.label(period.firstHour()).substring(0, "MM-dd".length());
    }

    static double burned(PeriodSummary period) {
        return period.gas() instanceof GasSummary.Displaced gas ? gas.burnedKwh() : 0;
    }

    /** Nothing where the pool was closed all the time. */
    private static OptionalInt daysAtComfort(ComfortSummary comfort) {
        return comfort.openDays() > 0 ? OptionalInt.of(comfort.daysAtComfort()) : OptionalInt.empty();
    }
}
