package dev.warmlane.report;

import dev.warmlane.money.Worth;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Mountings side by side, for csv. */
final class MountingCsv {

    private MountingCsv() {}

    /** One row for each mounting and comparison. */
    static Table seasons(MountingStudy study, UnitSystem units) {
        return table(bySeason(study), units, false);
    }

    /** One row for each mounting, comparison and month. */
    static Table months(MountingStudy study, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        for (Row row : bySeason(study)) {
            for (int i = 0; i < row.result.months().size(); i++) {
                rows.add(new Row(
                        row.comparison,
                        row.result,
                        row.result.months().get(i),
                        i < row.result.lightByMonth().size()
                                ? Optional.of(row.result.lightByMonth().get(i))
                                : Optional.empty()));
            }
        }
        return table(rows, units, true);
    }

    private static List<Row> bySeason(MountingStudy study) {
        List<Row> rows = new ArrayList<>();
        study.sameArea().forEach(r -> rows.add(new Row("same area", r, r.season(), r.light())));
        study.sameRoof().forEach(r -> rows.add(new Row("same roof", r, r.season(), r.light())));
        return rows;
    }

    private static Table table(List<Row> rows, UnitSystem units, boolean byMonth) {
        TableBuilder<Row> table = new TableBuilder<Row>(units)
                .words("comparison", "comparison", r -> r.comparison)
                .words("mounting", "mounting", r -> r.result.option().name());
        if (byMonth) {
            table.words("month", "month", r -> r.period.period().label())
                    .words("first day", "first_day", r -> ForecastTables.firstDay(r.period));
        } else {
            table.number("tilt", "tilt", Measure.ANGLE, r -> r.result
                            .fit()
                            .mounting()
                            .tiltDeg())
                    .optionalCount("panels", "panels", r -> r.result.fit().panels())
                    .optionalCount("rows", "rows", r -> MountingTables.rows(r.result))
                    .optional("pitch", "row_pitch", Measure.LENGTH, r -> MountingTables.pitch(r.result))
                    .words("fits", "fits_the_roof", r -> r.result.fit().fits() ? "yes" : "no");
        }
        boolean displaces = PeriodColumn.displaces(rows.get(0).period);
        table.fed(FuelWords.of(rows.get(0).period))
                .number("area", Measure.AREA, r -> r.result.fit().areaM2())
                .periods(
                        Row::period,
                        PeriodColumn.DELIVERED,
                        PeriodColumn.DELIVERED_PER_AREA,
                        PeriodColumn.WATER_MEAN,
                        PeriodColumn.AT_COMFORT,
                        PeriodColumn.REFUSED,
                        PeriodColumn.PUMP);
        if (displaces) {
            table.periods(Row::period, PeriodColumn.GAS_DISPLACED);
        }
        if (!byMonth) {
            table.number(
                    "per roof", "delivered_per_roof", Measure.HEAT_PER_AREA, r -> r.result.deliveredKwhPerRoofM2());
        }
        if (!byMonth && rows.stream().anyMatch(r -> r.result.worth().isPresent())) {
            worth(table);
        }
        light(table);
        return table.build(rows);
    }

    private static void worth(TableBuilder<Row> table) {
        money(table, "paid", worth -> OptionalDouble.of(worth.investment().paid()));
        money(table, "saved_a_year", worth -> OptionalDouble.of(worth.savedPerYear()));
        money(table, "net_present_value", worth -> OptionalDouble.of(worth.netPresentValue()));
        table.optional("payback", "payback", Measure.YEARS, r -> r.result
                .worth()
                .map(MountingCsv::payback)
                .orElse(OptionalDouble.empty()));
    }

    private static OptionalDouble payback(Worth worth) {
        return worth.payback().match(OptionalDouble::of, OptionalDouble::empty);
    }

    private static void money(TableBuilder<Row> table, String name, Function<Worth, OptionalDouble> sum) {
        table.optional(name, name, Measure.MONEY, r -> r.result.worth().map(sum).orElse(OptionalDouble.empty()));
    }

    private static void light(TableBuilder<Row> table) {
        optional(table, "irradiance_all_hours", Measure.LIGHT, LightBudget::irradianceAllHours);
        optional(table, "irradiance_while_running", Measure.LIGHT, LightBudget::irradiance);
        for (LightItem item : LightItem.values()) {
            optional(table, "gained_" + item.name().toLowerCase(Locale.ROOT), Measure.LIGHT, item::gained);
        }
        optional(table, "warmed_by_air", Measure.HOURS, LightBudget::warmedHours);
        optional(table, "heat_from_air", Measure.LIGHT, LightBudget::warmedByAir);
        optional(table, "film_front", Measure.FILM, LightBudget::filmFrontWm2K);
        table.optional("film back", "film_back", Measure.FILM, r -> r.light
                .map(MountingTables::filmBack)
                .orElse(OptionalDouble.empty()));
        optional(table, "water_while_running", Measure.TEMPERATURE, LightBudget::waterC);
        optional(table, "air_while_running", Measure.TEMPERATURE, LightBudget::airC);
        optional(table, "plate_while_running", Measure.TEMPERATURE, LightBudget::plateC);
    }

    private static void optional(
            TableBuilder<Row> table, String name, Measure measure, ToDoubleFunction<LightBudget> number) {
        table.optional(name.replace('_', ' '), name, measure, r -> r.light
                .map(l -> OptionalDouble.of(number.applyAsDouble(l)))
                .orElse(OptionalDouble.empty()));
    }

    private record Row(String comparison, MountingResult result, PeriodSummary period, Optional<LightBudget> light) {}
}
