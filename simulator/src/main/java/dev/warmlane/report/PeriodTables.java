package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import java.util.List;
import java.util.Locale;

/** Everything of the weeks and months of a season, for csv. */
public final class PeriodTables {

    private PeriodTables() {}

    /** The months, see {@link SeasonForecast#months}. */
    public static Table months(SeasonForecast forecast, ReportSettings.Units units) {
        return table("month", forecast.months(), units);
    }

    /** The weeks, see {@link SeasonForecast#weeks}. */
    public static Table weeks(SeasonForecast forecast, ReportSettings.Units units) {
        return table("week", forecast.weeks(), units);
    }

    private static Table table(String name, List<PeriodSummary> rows, ReportSettings.Units units) {
        TableBuilder<PeriodSummary> table = new TableBuilder<PeriodSummary>(units)
                .words(name, name, p -> p.period().label())
                .words("first day", "first_day", ForecastTables::firstDay)
                .number("length", "length", Measure.HOURS, p -> p.period().hours());
        temperatures(table);
        comfort(table);
        heat(table);
        gas(table, rows.get(0).gas() instanceof GasSummary.Displaced);
        return table.build(rows, List.of());
    }

    private static void temperatures(TableBuilder<PeriodSummary> table) {
        table.number("air", "air_mean", Measure.TEMPERATURE, PeriodSummary::airMeanC)
                .number("pool", "water_mean", Measure.TEMPERATURE, p -> p.water()
                        .meanC())
                .number("lowest", "water_lowest", Measure.TEMPERATURE, p -> p.water()
                        .lowestC())
                .number("highest", "water_highest", Measure.TEMPERATURE, p -> p.water()
                        .highestC())
                .number("coldest day", "water_coldest_day", Measure.TEMPERATURE, p -> p.water()
                        .coldestDay()
                        .meanC())
                .number("warmest day", "water_warmest_day", Measure.TEMPERATURE, p -> p.water()
                        .warmestDay()
                        .meanC())
                .number("without", "water_without_mean", Measure.TEMPERATURE, p -> p.waterWithout()
                        .meanC())
                .number("lowest", "water_without_lowest", Measure.TEMPERATURE, p -> p.waterWithout()
                        .lowestC())
                .number("highest", "water_without_highest", Measure.TEMPERATURE, p -> p.waterWithout()
                        .highestC());
    }

    private static void comfort(TableBuilder<PeriodSummary> table) {
        table.number("open", "open", Measure.DAYS, p -> p.comfort().openDays())
                .number("comfort", "at_comfort", Measure.DAYS, p -> p.comfort().daysAtComfort())
                .number("without", "at_comfort_without", Measure.DAYS, p -> p.comfortWithout()
                        .daysAtComfort())
                .number("too warm", "too_warm", Measure.DAYS, p -> p.comfort().daysTooWarm())
                .number("open", "open", Measure.HOURS, p -> p.comfort().openHours())
                .number("comfort", "open_at_comfort", Measure.HOURS, p -> p.comfort()
                        .openHoursAtComfort())
                .number("without", "open_at_comfort_without", Measure.HOURS, p -> p.comfortWithout()
                        .openHoursAtComfort());
    }

    private static void heat(TableBuilder<PeriodSummary> table) {
        table.number("sun on collectors", "irradiation_on_collectors", Measure.HEAT, p -> p.collectors()
                        .irradiationKwh())
                .number("delivered", "delivered", Measure.HEAT, p -> p.collectors()
                        .deliveredKwh())
                .optional("per area", "delivered", Measure.HEAT_PER_AREA, p -> p.collectors()
                        .deliveredKwhPerM2())
                .optional("efficiency", "collector_efficiency", Measure.SHARE, p -> p.collectors()
                        .efficiency())
                .number("peak", "peak_delivered", Measure.POWER, p -> p.collectors()
                        .peakKw())
                .optional("outlet", "outlet_lowest", Measure.TEMPERATURE, p -> p.collectors()
                        .lowestOutletC())
                .optional("outlet", "outlet_highest", Measure.TEMPERATURE, p -> p.collectors()
                        .highestOutletC())
                .number("refused", "refused", Measure.HEAT, p -> p.collectors().refusedKwh());
        for (Flow flow : Flow.values()) {
            table.number(
                    flow.label(), csvName(flow), Measure.HEAT, p -> p.balance().kwh(flow));
        }
        table.number("stored", "stored", Measure.HEAT, p -> p.balance().storedKwh())
                .number("heater without", "heater_without", Measure.HEAT, p -> p.balanceWithout()
                        .kwh(Flow.HEATER))
                .number("evaporated", "evaporated", Measure.MASS, p -> p.balance()
                        .evaporatedKg())
                .number("make-up", "make_up", Measure.VOLUME, p -> p.balance().makeUpM3())
                .number("pump", "pump", Measure.HOURS, p -> p.pump().hours())
                .number("pump", "pump_electricity", Measure.ELECTRICITY, p -> p.pump()
                        .electricityKwh());
    }

    private static void gas(TableBuilder<PeriodSummary> table, boolean heated) {
        if (heated) {
            table.number("gas", "gas_burned", Measure.HEAT, ForecastTables::burned)
                    .number(
                            "without",
                            "gas_burned_without",
                            Measure.HEAT,
                            p -> ForecastTables.burned(p) + p.gas().replacedKwh())
                    .number("displaced", "gas_displaced", Measure.HEAT, p -> p.gas()
                            .replacedKwh())
                    .number("CO2 avoided", "co2_avoided", Measure.MASS, p -> p.gas()
                            .replacedCo2Kg());
        } else {
            table.number("gas of a heater", "gas_a_heater_would_have_burned", Measure.HEAT, p -> p.gas()
                    .replacedKwh());
        }
    }

    /** The csv name of a kind of heat without its unit. */
    static String csvName(Flow flow) {
        return flow.name().toLowerCase(Locale.ROOT);
    }
}
