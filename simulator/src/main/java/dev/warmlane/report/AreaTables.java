package dev.warmlane.report;

import dev.warmlane.pool.Flow;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import java.util.List;
import java.util.OptionalDouble;

/** An area study as a table, one design a row. */
public final class AreaTables {

    private AreaTables() {}

    /** For people: what a decision needs and a terminal or page has room for. Csv has all of it. */
    public static Table areas(AreaStudy study, ReportSettings.Units units) {
        List<AreaDesign> designs = study.designs();
        TableBuilder<AreaDesign> table = new TableBuilder<AreaDesign>(units);
        table.number("area", "area", Measure.AREA, AreaDesign::areaM2);
        if (designs.get(0).panels().isPresent()) {
            table.count("panels", "panels", d -> d.panels().orElseThrow());
        }
        table.number("season\nmean", "water_mean", Measure.TEMPERATURE, d -> d.season()
                        .water()
                        .meanC())
                .count("days at\ncomfort", "days_at_comfort", d -> d.season()
                        .comfort()
                        .daysAtComfort())
                .number("solar\nheat", "delivered", Measure.HEAT, AreaTables::delivered)
                .optional("per\narea", "delivered", Measure.HEAT_PER_AREA, AreaTables::deliveredPerArea)
                .number("next\narea", "next_delivered", Measure.HEAT_PER_AREA, d -> d.next()
                        .deliveredKwhPerM2())
                .optional("refused\nshare", "refused", Measure.SHARE, AreaDesign::refusedShare);
        if (displaces(designs)) {
            table.number("gas\ndisplaced", "gas_displaced", Measure.HEAT, d -> d.season()
                            .gas()
                            .replacedKwh())
                    .optional("next\narea", "next_gas_displaced", Measure.HEAT_PER_AREA, d -> d.next()
                            .displacedKwhPerM2());
        }
        if (designs.stream().anyMatch(d -> d.paybackSeasons().isPresent())) {
            table.optional("simple\npayback", "simple_payback", Measure.SEASONS, AreaDesign::paybackSeasons);
        }
        return table.words("", "note", AreaTables::note).build(designs, List.of());
    }

    /** Everything of each design, for csv. */
    static Table all(AreaStudy study, ReportSettings.Units units) {
        List<AreaDesign> designs = study.designs();
        TableBuilder<AreaDesign> table = new TableBuilder<AreaDesign>(units);
        table.number("area", "area", Measure.AREA, AreaDesign::areaM2);
        if (designs.get(0).panels().isPresent()) {
            table.count("panels", "panels", d -> d.panels().orElseThrow());
        }
        table.number("of pool", "of_pool", Measure.SHARE, d -> ofPool(study, d))
                .words("as described", "as_described", d -> yesOrNo(d.asDescribed()))
                .words("fits", "fits_roof", d -> yesOrNo(d.fitsRoof()))
                .number("mean", "water_mean", Measure.TEMPERATURE, d -> d.season()
                        .water()
                        .meanC())
                .number("without", "water_without_mean", Measure.TEMPERATURE, d -> d.season()
                        .waterWithout()
                        .meanC())
                .number("highest", "water_highest", Measure.TEMPERATURE, d -> d.season()
                        .water()
                        .highestC())
                .number("comfort", "at_comfort", Measure.DAYS, d -> d.season()
                        .comfort()
                        .daysAtComfort())
                .number("without", "at_comfort_without", Measure.DAYS, d -> d.season()
                        .comfortWithout()
                        .daysAtComfort())
                .number("too warm", "too_warm", Measure.DAYS, d -> d.season()
                        .comfort()
                        .daysTooWarm())
                .number("delivered", "delivered", Measure.HEAT, AreaTables::delivered)
                .optional("per area", "delivered", Measure.HEAT_PER_AREA, AreaTables::deliveredPerArea)
                .number("next area", "next_delivered", Measure.HEAT_PER_AREA, d -> d.next()
                        .deliveredKwhPerM2())
                .number("refused", "refused", Measure.HEAT, d -> d.season()
                        .collectors()
                        .refusedKwh())
                .optional("refused", "refused", Measure.SHARE, AreaDesign::refusedShare)
                .optional("efficiency", "collector_efficiency", Measure.SHARE, d -> d.season()
                        .collectors()
                        .efficiency());
        if (displaces(designs)) {
            table.number("heater", "heater", Measure.HEAT, d -> d.season()
                            .balance()
                            .kwh(Flow.HEATER))
                    .number("gas", "gas_burned", Measure.HEAT, d -> ForecastTables.burned(d.season()))
                    .number("displaced", "gas_displaced", Measure.HEAT, d -> d.season()
                            .gas()
                            .replacedKwh())
                    .optional("next area", "next_gas_displaced", Measure.HEAT_PER_AREA, d -> d.next()
                            .displacedKwhPerM2());
        } else {
            table.number("gas of a heater", "gas_a_heater_would_have_burned", Measure.HEAT, d -> d.season()
                    .gas()
                    .replacedKwh());
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
        return table.build(designs, List.of());
    }

    /** Whether collectors displace gas, because there is a heater. */
    public static boolean displaces(List<AreaDesign> designs) {
        return designs.get(0).season().gas() instanceof GasSummary.Displaced;
    }

    private static double ofPool(AreaStudy study, AreaDesign design) {
        return design.areaM2() / study.installation().pool().areaM2();
    }

    private static double delivered(AreaDesign design) {
        return design.season().balance().deliveredKwh();
    }

    private static OptionalDouble deliveredPerArea(AreaDesign design) {
        return design.season().collectors().deliveredKwhPerM2();
    }

    private static String note(AreaDesign design) {
        if (design.fitsRoof()) {
            return design.asDescribed() ? "as described" : "";
        }
        return design.asDescribed() ? "described, too big" : "more than the roof";
    }

    private static String yesOrNo(boolean answer) {
        return answer ? "yes" : "no";
    }
}
