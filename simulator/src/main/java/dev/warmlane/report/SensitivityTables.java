package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.SensitivityStudy;
import java.util.List;
import java.util.stream.Stream;

/** A sensitivity study as a table, one parameter a row. */
public final class SensitivityTables {

    private SensitivityTables() {}

    /** For people: what each end adds to the season described. */
    public static Table effects(SensitivityStudy study, ReportSettings.Units units) {
        TableBuilder<Sensitivity> table = new TableBuilder<Sensitivity>(units)
                .words("parameter", "parameter", Sensitivity::name)
                .words("described", "described", s -> SettingText.of(s.described(), units))
                .words(
                        "low",
                        "low",
                        s -> SettingText.like(s.described(), s.low().setting(), units))
                .words(
                        "high",
                        "high",
                        s -> SettingText.like(s.described(), s.high().setting(), units))
                .number("heat\ndelivered\nlow", "delivered_change_low", Measure.HEAT, s -> s.low()
                        .change()
                        .deliveredKwh())
                .number("\nhigh", "delivered_change_high", Measure.HEAT, s -> s.high()
                        .change()
                        .deliveredKwh())
                .number("pool\nmean\nlow", "water_change_low", Measure.TEMPERATURE_DIFFERENCE, s -> s.low()
                        .change()
                        .meanK())
                .number("\nhigh", "water_change_high", Measure.TEMPERATURE_DIFFERENCE, s -> s.high()
                        .change()
                        .meanK());
        if (displaces(study)) {
            table.number("gas\ndisplaced\nlow", "gas_displaced_change_low", Measure.HEAT, s -> s.low()
                            .change()
                            .replacedKwh())
                    .number("\nhigh", "gas_displaced_change_high", Measure.HEAT, s -> s.high()
                            .change()
                            .replacedKwh());
        }
        return table.build(study.effects(), List.of());
    }

    /** A parameter with what it is varied between: {@code stop difference, 0.1 to 1 K}. */
    public static String varied(Sensitivity parameter, ReportSettings.Units units) {
        return parameter.name() + ", " + SettingText.range(parameter, units);
    }

    /** Everything, for csv: a row for each end. */
    static Table all(SensitivityStudy study, ReportSettings.Units units) {
        List<Row> rows = study.effects().stream()
                .flatMap(s -> Stream.of(new Row(s, "low", s.low()), new Row(s, "high", s.high())))
                .toList();
        String gas = displaces(study) ? "gas_displaced" : "gas_a_heater_would_have_burned";
        return new TableBuilder<Row>(units)
                .words("parameter", "parameter", r -> r.parameter.name())
                .words("end", "end", Row::end)
                .words("described", "described", r -> SettingText.of(r.parameter.described(), units))
                .words("setting", "setting", r -> SettingText.of(r.values.setting(), units))
                .number("mean", "water_mean", Measure.TEMPERATURE, r -> r.values
                        .season()
                        .water()
                        .meanC())
                .number("change", "water_mean_change", Measure.TEMPERATURE_DIFFERENCE, r -> r.values
                        .change()
                        .meanK())
                .number("delivered", "delivered", Measure.HEAT, r -> r.values
                        .season()
                        .balance()
                        .deliveredKwh())
                .number("change", "delivered_change", Measure.HEAT, r -> r.values
                        .change()
                        .deliveredKwh())
                .number("gas", gas, Measure.HEAT, r -> r.values.season().gas().replacedKwh())
                .number("change", gas + "_change", Measure.HEAT, r -> r.values
                        .change()
                        .replacedKwh())
                .words("why", "why", r -> r.parameter.why())
                .build(rows, List.of());
    }

    /** Whether collectors displace gas, because there is a heater. */
    public static boolean displaces(SensitivityStudy study) {
        return study.described().gas() instanceof GasSummary.Displaced;
    }

    private record Row(Sensitivity parameter, String end, Sensitivity.End values) {}
}
