package dev.warmlane.report;

import dev.warmlane.files.FileSet;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The csv files of a comparison: mountings.csv and mountings_months.csv. Names of columns end with their unit. */
public final class MountingCsv {

    private MountingCsv() {}

    /** Adds the files to a set, to be written with whatever else is in it. */
    public static FileSet addTo(FileSet files, MountingStudy study, ReportSettings.Units units) {
        return files.add("mountings.csv", seasons(study, units).csv())
                .add("mountings_months.csv", months(study, units).csv());
    }

    /** One row for each mounting and comparison. */
    public static Table seasons(MountingStudy study, ReportSettings.Units units) {
        return table(bySeason(study), units, false);
    }

    /** One row for each mounting, comparison and month. */
    public static Table months(MountingStudy study, ReportSettings.Units units) {
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

    private static Table table(List<Row> rows, ReportSettings.Units units, boolean byMonth) {
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
        table.number("area", "area", Measure.AREA, r -> r.result.fit().areaM2())
                .number("heat", "delivered", Measure.HEAT, r -> r.period
                        .balance()
                        .deliveredKwh())
                .optional("heat", "delivered", Measure.HEAT_PER_AREA, r -> r.period
                        .collectors()
                        .deliveredKwhPerM2())
                .number("pool", "water_mean", Measure.TEMPERATURE, r -> r.period
                        .water()
                        .meanC())
                .number("comfort", "at_comfort", Measure.DAYS, r -> r.period
                        .comfort()
                        .daysAtComfort())
                .number("refused", "refused", Measure.HEAT, r -> r.period
                        .collectors()
                        .refusedKwh())
                .number("pump", "pump", Measure.HOURS, r -> r.period.pump().hours());
        gas(table, rows);
        light(table);
        return table.build(rows, List.of());
    }

    private static void gas(TableBuilder<Row> table, List<Row> rows) {
        boolean heated = !rows.isEmpty() && rows.get(0).period.gas() instanceof GasSummary.Displaced;
        table.number("gas", heated ? "gas_displaced" : "gas_a_heater_would_have_burned", Measure.HEAT, r -> r.period
                .gas()
                .replacedKwh());
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
