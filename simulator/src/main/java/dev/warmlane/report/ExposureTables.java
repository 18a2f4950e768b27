package dev.warmlane.report;

import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.WindExposure;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** An exposure study as tables. */
public final class ExposureTables {

    private ExposureTables() {}

    /** One measure for people: the pool down, the roof across. */
    private static Table square(
            ExposureStudy study,
            ReportSettings.Units units,
            String name,
            Measure measure,
            ToDoubleFunction<PeriodSummary> number) {
        List<WindExposure> roofs = study.cases().stream()
                .map(ExposureStudy.Case::roof)
                .distinct()
                .filter(roof -> differs(study, WindExposure.LIKELY, roof))
                .toList();
        List<WindExposure> pools = study.cases().stream()
                .map(ExposureStudy.Case::pool)
                .distinct()
                .filter(pool -> differs(study, pool, WindExposure.LIKELY))
                .toList();
        TableBuilder<WindExposure> table = new TableBuilder<WindExposure>(units)
                .words("the pool lies", "pool", pool -> poolWords(study.at(pool, WindExposure.LIKELY)));
        for (WindExposure roof : roofs) {
            String header = "roof " + roof.label() + "\n" + terrain(study.at(WindExposure.LIKELY, roof));
            table.number(
                    header,
                    name + "_" + roof.name().toLowerCase(Locale.ROOT),
                    measure,
                    pool -> number.applyAsDouble(study.at(pool, roof).season()));
        }
        return table.build(pools, List.of());
    }

    /** Whether a case is described, or has another wind than what is described: the same season is not shown twice. */
    private static boolean differs(ExposureStudy study, WindExposure pool, WindExposure roof) {
        ExposureStudy.Case described = study.at(WindExposure.LIKELY, WindExposure.LIKELY);
        ExposureStudy.Case one = study.at(pool, roof);
        return one.equals(described)
                || !one.poolWindFactor().equals(described.poolWindFactor())
                || one.terrain() != described.terrain();
    }

    /** Mean temperature of the season. */
    public static Table means(ExposureStudy study, ReportSettings.Units units) {
        return square(
                study, units, "water_mean", Measure.TEMPERATURE, s -> s.water().meanC());
    }

    /** Heat delivered. */
    public static Table heat(ExposureStudy study, ReportSettings.Units units) {
        return square(study, units, "delivered", Measure.HEAT, s -> s.balance().deliveredKwh());
    }

    /** Gas displaced, or the gas a heater would have burned for the same heat. */
    public static Table gas(ExposureStudy study, ReportSettings.Units units) {
        return square(study, units, "gas", Measure.HEAT, s -> s.gas().replacedKwh());
    }

    /** Every case in a row, for csv. */
    static Table all(ExposureStudy study, ReportSettings.Units units) {
        TableBuilder<ExposureStudy.Case> table = new TableBuilder<ExposureStudy.Case>(units)
                .words("pool", "pool", c -> c.pool().label())
                .optional("pool wind factor", "pool_wind_factor", Measure.FACTOR, ExposureStudy.Case::poolWindFactor)
                .words("roof", "roof", c -> c.roof().label())
                .words("terrain", "terrain", ExposureTables::terrain)
                .number("mean", "water_mean", Measure.TEMPERATURE, c -> c.season()
                        .water()
                        .meanC())
                .number("without", "water_without_mean", Measure.TEMPERATURE, c -> c.season()
                        .waterWithout()
                        .meanC())
                .number("comfort", "at_comfort", Measure.DAYS, c -> c.season()
                        .comfort()
                        .daysAtComfort())
                .number("without", "at_comfort_without", Measure.DAYS, c -> c.season()
                        .comfortWithout()
                        .daysAtComfort())
                .number("delivered", "delivered", Measure.HEAT, c -> c.season()
                        .balance()
                        .deliveredKwh());
        if (displaces(study)) {
            table.number("burned", "gas_burned", Measure.HEAT, c -> ForecastTables.burned(c.season()));
        }
        return table.number(
                        "gas",
                        displaces(study) ? "gas_displaced" : "gas_a_heater_would_have_burned",
                        Measure.HEAT,
                        c -> c.season().gas().replacedKwh())
                .build(study.cases(), List.of());
    }

    static boolean displaces(ExposureStudy study) {
        return study.cases().get(0).season().gas() instanceof GasSummary.Displaced;
    }

    private static String poolWords(ExposureStudy.Case one) {
        OptionalDouble factor = one.poolWindFactor();
        return one.pool().label() + (factor.isPresent() ? " (" + Numbers.show(factor.getAsDouble(), 2) + ")" : "");
    }

    private static String terrain(ExposureStudy.Case one) {
        return one.terrain().name().toLowerCase(Locale.ROOT);
    }
}
