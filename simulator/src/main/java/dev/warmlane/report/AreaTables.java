package dev.warmlane.report;

import dev.warmlane.season.MoneySummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.study.MoreArea;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** An area study as a table, one design a row. */
public final class AreaTables {

    private AreaTables() {}

    /** For people: what a decision needs and a terminal or page has room for. Csv has all of it. */
    public static Table areas(AreaStudy study, UnitSystem units) {
        return areas(study, Optional.empty(), new Numbers(units));
    }

    /** The same with the doubt of what each further area adds. */
    static Table areas(AreaStudy study, MoreArea more, Numbers numbers) {
        return areas(study, Optional.of(more), numbers);
    }

    private static Table areas(AreaStudy study, Optional<MoreArea> more, Numbers numbers) {
        UnitSystem units = numbers.units();
        List<AreaDesign> designs = study.designs();
        TableBuilder<AreaDesign> table = new TableBuilder<AreaDesign>(units);
        table.number("area", "area", Measure.AREA, AreaDesign::areaM2);
        if (designs.get(0).panels().isPresent()) {
            table.count("panels", "panels", d -> d.panels().orElseThrow());
        }
        table.period("season\nmean", AreaDesign::season, PeriodColumn.WATER_MEAN);
        if (!Telling.heldByHeater(study.installation(), designs.get(0).season())) {
            table.count("days at\ncomfort", "days_at_comfort", d -> d.season()
                    .comfort()
                    .daysAtComfort());
        }
        table.period("solar\nheat", AreaDesign::season, PeriodColumn.DELIVERED)
                .period("per\narea", AreaDesign::season, PeriodColumn.DELIVERED_PER_AREA)
                .number(ofOneMore("heat", units), "next_delivered", Measure.HEAT_PER_AREA, d -> d.next()
                        .deliveredKwhPerM2());
        more.ifPresent(known -> table.words("low to\nhigh", "next_delivered_range", d -> known.of(d)
                .map(next -> numbers.bounds(Measure.HEAT_PER_AREA, next))
                .orElse("")));
        table.optional("share not\nneeded", "refused", Measure.SHARE, AreaDesign::refusedShare);
        if (displaces(designs)) {
            FuelWords fuel = FuelWords.of(designs.get(0).season());
            table.fed(fuel)
                    .period(fuel.heading() + "\ndisplaced", AreaDesign::season, PeriodColumn.GAS_DISPLACED)
                    .optional(
                            ofOneMore(fuel.heading(), units),
                            fuel.csv("next_gas_displaced"),
                            Measure.HEAT_PER_AREA,
                            d -> d.next().displacedKwhPerM2());
        }
        return table.words("", "note", AreaTables::note).build(designs);
    }

    /** Everything of each design, for csv. */
    static Table all(AreaStudy study, UnitSystem units) {
        return all(study, Optional.empty(), new MoreArea(Map.of()), units);
    }

    /** The same with the doubt of what the areas are worth and of what each further area adds. */
    static Table all(AreaStudy study, Optional<AreaWorth> worth, MoreArea more, UnitSystem units) {
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
                .optional("low", "next_delivered_low", Measure.HEAT_PER_AREA, d -> bound(more.of(d), Estimate::low))
                .optional("high", "next_delivered_high", Measure.HEAT_PER_AREA, d -> bound(more.of(d), Estimate::high))
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
        }
        if (study.installation().prices().isPresent()) {
            table.optional("cost", "collectors_cost", Measure.MONEY, d -> d.money()
                            .map(MoneySummary::collectorCost)
                            .orElse(OptionalDouble.empty()))
                    .optional("saved", "saved", Measure.MONEY, d -> d.money().stream()
                            .mapToDouble(MoneySummary::saved)
                            .findFirst());
        }
        if (designs.stream().allMatch(d -> d.worth().isPresent())) {
            worth(table, worth);
        }
        return table.build(designs);
    }

    private static void worth(TableBuilder<AreaDesign> table, Optional<AreaWorth> worth) {
        table.number("net_present_value", Measure.MONEY, d -> d.worth()
                        .orElseThrow()
                        .netPresentValue())
                .optional("low", "net_present_value_low", Measure.MONEY, d -> value(worth, d, Estimate::low))
                .optional("high", "net_present_value_high", Measure.MONEY, d -> value(worth, d, Estimate::high))
                .optional("payback", "payback", Measure.YEARS, d -> d.worth()
                        .orElseThrow()
                        .payback()
                        .match(OptionalDouble::of, OptionalDouble::empty));
    }

    private static OptionalDouble value(
            Optional<AreaWorth> worth, AreaDesign design, ToDoubleFunction<Estimate> bound) {
        return bound(worth.flatMap(known -> known.of(design)).map(AreaWorth.Doubted::netPresentValue), bound);
    }

    private static OptionalDouble bound(Optional<Estimate> of, ToDoubleFunction<Estimate> bound) {
        return of.stream().mapToDouble(bound).findFirst();
    }

    /** Whether collectors displace gas, because there is a heater. */
    public static boolean displaces(List<AreaDesign> designs) {
        return PeriodColumn.displaces(designs.get(0).season());
    }

    private static double ofPool(AreaStudy study, AreaDesign design) {
        return design.areaM2() / study.installation().pool().areaM2();
    }

    /** In three short lines, which make the column no wider than its numbers. */
    private static String ofOneMore(String what, UnitSystem units) {
        return what + "\nof one\nmore " + Measure.AREA.unit(units);
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
