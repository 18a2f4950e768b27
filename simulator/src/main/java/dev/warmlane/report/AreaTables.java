package dev.warmlane.report;

import dev.warmlane.season.MoneySummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;

/** An area study as a table, one design a row. */
public final class AreaTables {

    private AreaTables() {}

    /** For people: what a decision needs and a terminal or page has room for. Csv has all of it. */
    public static Table areas(AreaStudy study, UnitSystem units) {
        List<AreaDesign> designs = study.designs();
        TableBuilder<AreaDesign> table = new TableBuilder<AreaDesign>(units);
        table.number("area", "area", Measure.AREA, AreaDesign::areaM2);
        if (designs.get(0).panels().isPresent()) {
            table.count("panels", "panels", d -> d.panels().orElseThrow());
        }
        table.period("season\nmean", AreaDesign::season, PeriodColumn.WATER_MEAN)
                .count("days at\ncomfort", "days_at_comfort", d -> d.season()
                        .comfort()
                        .daysAtComfort())
                .period("solar\nheat", AreaDesign::season, PeriodColumn.DELIVERED)
                .period("per\narea", AreaDesign::season, PeriodColumn.DELIVERED_PER_AREA)
                .number("one more\n" + squared(units), "next_delivered", Measure.HEAT_PER_AREA, d -> d.next()
                        .deliveredKwhPerM2())
                .optional("share not\nneeded", "refused", Measure.SHARE, AreaDesign::refusedShare);
        if (displaces(designs)) {
            FuelWords fuel = FuelWords.of(designs.get(0).season());
            table.fed(fuel)
                    .period(fuel.heading() + "\ndisplaced", AreaDesign::season, PeriodColumn.GAS_DISPLACED)
                    .optional(
                            "one more\n" + squared(units),
                            fuel.csv("next_gas_displaced"),
                            Measure.HEAT_PER_AREA,
                            d -> d.next().displacedKwhPerM2());
        }
        if (designs.stream().anyMatch(d -> d.paybackSeasons().isPresent())) {
            table.optional("simple\npayback", "simple_payback", Measure.SEASONS, AreaDesign::paybackSeasons);
        }
        return table.words("", "note", AreaTables::note).build(designs);
    }

    /** Everything of each design, for csv. */
    static Table all(AreaStudy study, UnitSystem units) {
        List<AreaDesign> designs = study.designs();
        TableBuilder<AreaDesign> table = new TableBuilder<AreaDesign>(units);
        table.number("area", "area", Measure.AREA, AreaDesign::areaM2);
        if (designs.get(0).panels().isPresent()) {
            table.count("panels", "panels", d -> d.panels().orElseThrow());
        }
        table.number("of_pool", Measure.SHARE, d -> ofPool(study, d))
                .words("as_described", d -> yesOrNo(d.asDescribed()))
                .words("fits_roof", d -> yesOrNo(d.fitsRoof()))
                .periods(
                        AreaDesign::season,
                        PeriodColumn.WATER_MEAN,
                        PeriodColumn.WITHOUT_MEAN,
                        PeriodColumn.WATER_HIGHEST,
                        PeriodColumn.AT_COMFORT,
                        PeriodColumn.AT_COMFORT_WITHOUT,
                        PeriodColumn.TOO_WARM,
                        PeriodColumn.DELIVERED,
                        PeriodColumn.DELIVERED_PER_AREA)
                .number("next_delivered", Measure.HEAT_PER_AREA, d -> d.next().deliveredKwhPerM2())
                .periods(AreaDesign::season, PeriodColumn.REFUSED)
                .optional("refused", "refused", Measure.SHARE, AreaDesign::refusedShare)
                .periods(AreaDesign::season, PeriodColumn.EFFICIENCY);
        if (displaces(designs)) {
            FuelWords fuel = FuelWords.of(designs.get(0).season());
            table.fed(fuel)
                    .periods(
                            AreaDesign::season,
                            PeriodColumn.HEATER,
                            PeriodColumn.GAS_BURNED,
                            PeriodColumn.GAS_DISPLACED)
                    .optional("next area", fuel.csv("next_gas_displaced"), Measure.HEAT_PER_AREA, d -> d.next()
                            .displacedKwhPerM2());
        } else {
            table.periods(AreaDesign::season, PeriodColumn.GAS_OF_A_HEATER);
        }
        if (study.installation().prices().isPresent()) {
            table.optional("cost", "collectors_cost", Measure.MONEY, d -> d.money()
                            .map(MoneySummary::collectorCost)
                            .orElse(OptionalDouble.empty()))
                    .optional("saved", "saved", Measure.MONEY, d -> d.money().stream()
                            .mapToDouble(MoneySummary::saved)
                            .findFirst())
                    .optional("payback", "simple_payback", Measure.SEASONS, AreaDesign::paybackSeasons);
        }
        return table.build(designs);
    }

    /** Whether collectors displace gas, because there is a heater. */
    public static boolean displaces(List<AreaDesign> designs) {
        return PeriodColumn.displaces(designs.get(0).season());
    }

    private static double ofPool(AreaStudy study, AreaDesign design) {
        return design.areaM2() / study.installation().pool().areaM2();
    }

    private static String squared(UnitSystem units) {
        return Measure.AREA.unit(units);
    }

    private static String note(AreaDesign design) {
        if (design.fitsRoof()) {
            return design.asDescribed() ? "as planned" : "";
        }
        return design.asDescribed() ? "planned, too big" : "more than the roof";
    }

    private static String yesOrNo(boolean answer) {
        return answer ? "yes" : "no";
    }
}
