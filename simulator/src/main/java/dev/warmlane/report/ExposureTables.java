package dev.warmlane.report;

import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.WindExposure;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** An exposure study as tables. */
final class ExposureTables {

    private ExposureTables() {}

    /** One measure for people: the pool down, the roof across. */
    static Table square(ExposureStudy study, Numbers numbers, PeriodColumn column) {
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
        TableBuilder<WindExposure> table = new TableBuilder<WindExposure>(numbers.units())
                .words("the pool lies", "pool", pool -> poolWords(numbers, study.at(pool, WindExposure.LIKELY)));
        for (WindExposure roof : roofs) {
            String header = "roof " + roof.label() + "\n" + terrain(study.at(WindExposure.LIKELY, roof));
            table.optional(
                    header,
                    column.csvName() + "_" + roof.name().toLowerCase(Locale.ROOT),
                    column.measure(),
                    pool -> column.of(study.at(pool, roof).season()));
        }
        return table.build(pools);
    }

    /** Whether a case is described, or has another wind than what is described: the same season is not shown twice. */
    private static boolean differs(ExposureStudy study, WindExposure pool, WindExposure roof) {
        ExposureStudy.Case described = study.at(WindExposure.LIKELY, WindExposure.LIKELY);
        ExposureStudy.Case one = study.at(pool, roof);
        return one.equals(described)
                || !one.poolWindFactor().equals(described.poolWindFactor())
                || one.terrain() != described.terrain();
    }

    /** Every case in a row, for csv. */
    static Table all(ExposureStudy study, UnitSystem units) {
        TableBuilder<ExposureStudy.Case> table = new TableBuilder<ExposureStudy.Case>(units)
                .words("pool", c -> c.pool().label())
                .optional("pool wind factor", "pool_wind_factor", Measure.FACTOR, ExposureStudy.Case::poolWindFactor)
                .words("roof", c -> c.roof().label())
                .words("terrain", ExposureTables::terrain)
                .periods(
                        ExposureStudy.Case::season,
                        PeriodColumn.WATER_MEAN,
                        PeriodColumn.WITHOUT_MEAN,
                        PeriodColumn.AT_COMFORT,
                        PeriodColumn.AT_COMFORT_WITHOUT,
                        PeriodColumn.DELIVERED);
        table.fed(FuelWords.of(study.cases().get(0).season()));
        if (displaces(study)) {
            table.periods(ExposureStudy.Case::season, PeriodColumn.GAS_BURNED, PeriodColumn.GAS_DISPLACED);
        }
        return table.build(study.cases());
    }

    static boolean displaces(ExposureStudy study) {
        return PeriodColumn.displaces(study.cases().get(0).season());
    }

    private static String poolWords(Numbers numbers, ExposureStudy.Case one) {
        OptionalDouble factor = one.poolWindFactor();
        return one.pool().label() + (factor.isPresent() ? " (" + numbers.show(factor.getAsDouble(), 2) + ")" : "");
    }

    private static String terrain(ExposureStudy.Case one) {
        return one.terrain().name().toLowerCase(Locale.ROOT);
    }
}
