package dev.warmlane.report;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** A sensitivity study as a table, one parameter a row. */
public final class SensitivityTables {

    private SensitivityTables() {}

    /** For people: what each end adds to the season described. */
    public static Table effects(SensitivityStudy study, Numbers numbers) {
        TableBuilder<Sensitivity> table = new TableBuilder<Sensitivity>(numbers.units())
                .words("parameter", "parameter", Sensitivity::name)
                .words("described", "described", s -> SettingWords.of(s.described(), numbers))
                .words(
                        "low",
                        "low",
                        s -> SettingWords.like(s.described(), s.low().setting(), numbers))
                .words(
                        "high",
                        "high",
                        s -> SettingWords.like(s.described(), s.high().setting(), numbers));
        ends(table, "heat\ndelivered\n", "delivered", Measure.HEAT, Sensitivity.Change::deliveredKwh);
        ends(table, "pool\nmean\n", "water", Measure.TEMPERATURE_DIFFERENCE, Sensitivity.Change::meanK);
        if (displaces(study)) {
            FuelWords fuel = FuelWords.of(study.described());
            ends(
                    table,
                    fuel.heading() + "\ndisplaced\n",
                    fuel.csv("gas_displaced"),
                    Measure.HEAT,
                    Sensitivity.Change::replacedKwh);
        }
        return table.build(study.effects());
    }

    private static void ends(
            TableBuilder<Sensitivity> table,
            String header,
            String name,
            Measure measure,
            ToDoubleFunction<Sensitivity.Change> number) {
        table.number(
                        header + "low",
                        name + "_change_low",
                        measure,
                        s -> number.applyAsDouble(s.low().change()))
                .number(
                        "\nhigh",
                        name + "_change_high",
                        measure,
                        s -> number.applyAsDouble(s.high().change()));
    }

    /** A parameter in an owner's words, with what it is varied between: {@code wind at the water, 0.15 to 0.4}. */
    public static String varied(Sensitivity parameter, Numbers numbers) {
        return DoubtWords.varied(parameter, numbers);
    }

    /** Everything, for csv: a row for each end. */
    static Table all(SensitivityStudy study, UnitSystem units) {
        List<Row> rows = study.effects().stream()
                .flatMap(s -> Stream.of(new Row(s, "low", s.low()), new Row(s, "high", s.high())))
                .toList();
        FuelWords fuel = FuelWords.of(study.described());
        TableBuilder<Row> table = new TableBuilder<Row>(units)
                .fed(fuel)
                .words("parameter", r -> r.parameter.name())
                .words("end", Row::end)
                .words("described", r -> SettingWords.of(r.parameter.described(), new Numbers(units)))
                .words("setting", r -> SettingWords.of(r.values.setting(), new Numbers(units)))
                .periods(Row::season, PeriodColumn.WATER_MEAN)
                .number("water_mean_change", Measure.TEMPERATURE_DIFFERENCE, r -> r.change()
                        .meanK())
                .periods(Row::season, PeriodColumn.DELIVERED)
                .number("delivered_change", Measure.HEAT, r -> r.change().deliveredKwh());
        if (displaces(study)) {
            table.periods(Row::season, PeriodColumn.GAS_DISPLACED)
                    .number(fuel.csv(PeriodColumn.GAS_DISPLACED.csvName()) + "_change", Measure.HEAT, r -> r.change()
                            .replacedKwh());
        }
        return table.words("why", r -> r.parameter.why()).build(rows);
    }

    /** Whether collectors displace gas, because there is a heater. */
    public static boolean displaces(SensitivityStudy study) {
        return PeriodColumn.displaces(study.described());
    }

    private record Row(Sensitivity parameter, String end, Sensitivity.End values) {

        PeriodSummary season() {
            return values.season();
        }

        Sensitivity.Change change() {
            return values.change();
        }
    }
}
