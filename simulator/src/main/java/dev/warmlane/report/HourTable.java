package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Every hour of a season with every flow, for csv. */
final class HourTable {

    private HourTable() {}

    /** The hours in their order; temperatures of the water are means of the hour. */
    static Table of(SeasonForecast forecast, UnitSystem units) {
        SeasonLedger with = forecast.with();
        SeasonLedger without = forecast.without();
        Installation installation = forecast.installation();
        TableBuilder<Integer> table = new TableBuilder<Integer>(units)
                .count("month", "month", i -> HourOfYear.monthOf(with.hourOfYear(i)))
                .count("day", "day", i -> HourOfYear.dayOfMonth(with.hourOfYear(i)))
                .count("hour", "hour_starting", i -> HourOfYear.hourOfDay(with.hourOfYear(i)))
                .count(
                        "open",
                        "open",
                        i -> i >= with.opening()
                                        && installation.season().openHours().at(with.hourOfYear(i)) > 0
                                ? 1
                                : 0)
                .number("air", Measure.TEMPERATURE, i -> forecast.weather().airTemperatureC(with.hourOfYear(i)))
                .number("water", Measure.TEMPERATURE, with::waterC)
                .number("water_without", Measure.TEMPERATURE, without::waterC);
        for (Flow flow : installation.pool().flows()) {
            table.number(ForecastTables.csvName(flow), Measure.HEAT, i -> with.heatKwh(flow, i));
        }
        table.number("refused", Measure.HEAT, i -> with.refusedKwh(i))
                .number("evaporated", Measure.MASS, i -> with.evaporatedKg(i))
                .number("heater_without", Measure.HEAT, i -> without.heatKwh(Flow.HEATER, i));
        if (with.everIced() || without.everIced()) {
            table.number("ice", Measure.HEAT, with::iceKwh).number("ice_without", Measure.HEAT, without::iceKwh);
        }
        for (int a = 0; a < installation.arrays().size(); a++) {
            array(table, forecast, a);
        }
        return table.build(IntStream.range(0, with.hours()).boxed().toList());
    }

    /** Arrays are numbered from 1 in the order of the installation. */
    private static void array(TableBuilder<Integer> table, SeasonForecast forecast, int a) {
        SeasonLedger with = forecast.with();
        String name = "array_" + (a + 1) + "_";
        var forcing = forecast.forcing().collectors().get(a);
        table.number(name + "irradiance", Measure.IRRADIANCE, i -> forcing.irradianceWm2(with.hourOfYear(i)))
                .number(name + "useful", Measure.HEAT, i -> with.arrayHeatKwh(a, i))
                .number(name + "running", Measure.HOURS, i -> with.runShare(a, i))
                .optional(name + "outlet", name + "outlet", Measure.TEMPERATURE, i -> number(with.outletC(a, i)))
                .number(name + "dry_plate", Measure.TEMPERATURE, i -> forcing.curves()
                        .stagnationC(with.hourOfYear(i)));
    }

    private static OptionalDouble number(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
