package dev.warmlane.report;

import dev.warmlane.collector.Mounting;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.WarmDays;
import dev.warmlane.study.HeldPool;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Tables of mountings side by side, for people. {@link MountingCsv} has all of it for csv. */
final class MountingTables {

    private static final double[] HELD_C = {16, 20, 24, 28, 32};

    private MountingTables() {}

    /** One mounting a row: what stands on the roof and what it gives; how far the one that gives most is ahead of it. */
    static Table comparison(List<MountingResult> results, UnitSystem units) {
        double most =
                results.stream().mapToDouble(MountingResult::deliveredKwh).max().orElse(0);
        TableBuilder<MountingResult> table = new TableBuilder<MountingResult>(units)
                .words("mounting", "mounting", r -> r.option().name())
                .number("\narea", "area", Measure.AREA, r -> r.fit().areaM2());
        if (results.stream().anyMatch(r -> r.fit().panels().isPresent())) {
            table.optionalCount("\npanels", "panels", r -> r.fit().panels());
        }
        if (results.stream().anyMatch(r -> r.fit().racks().isPresent())) {
            table.optionalCount("\nrows", "rows", MountingTables::rows)
                    .optional("row\npitch", "row_pitch", Measure.LENGTH, MountingTables::pitch);
        }
        table.number("heat\ndelivered", "delivered", Measure.HEAT, MountingResult::deliveredKwh)
                .optional(
                        "most is\nahead by",
                        "most_ahead_by",
                        Measure.SHARE,
                        r -> r.deliveredKwh() < most && r.deliveredKwh() > 0
                                ? OptionalDouble.of(MountingLead.share(most, r.deliveredKwh()))
                                : OptionalDouble.empty())
                .number("per\narea", "delivered", Measure.HEAT_PER_AREA, MountingResult::deliveredKwhPerM2);
        if (results.stream().anyMatch(r -> r.fit().racks().isPresent())) {
            table.number(
                    "per\nroof", "delivered_per_roof", Measure.HEAT_PER_AREA, MountingResult::deliveredKwhPerRoofM2);
        }
        table.period("\npool", MountingResult::season, PeriodColumn.WATER_MEAN);
        if (results.isEmpty()
                || !Telling.heldByHeater(
                        results.get(0).forecast().installation(), results.get(0).season())) {
            table.count("days at\ncomfort", "days_at_comfort", r -> r.season()
                    .comfort()
                    .daysAtComfort());
        } else {
            table.count("days without\nheater", "days_without_heater", r -> WarmDays.of(r.forecast())
                    .withoutHeater());
        }
        table.fed(FuelWords.of(results.get(0).season()));
        if (results.stream().anyMatch(r -> PeriodColumn.displaces(r.season()))) {
            table.period(
                    FuelWords.of(results.get(0).season()).heading() + "\ndisplaced",
                    MountingResult::season,
                    PeriodColumn.GAS_DISPLACED);
        }
        return table.period("\npump", MountingResult::season, PeriodColumn.PUMP)
                .period("heat not\nneeded", MountingResult::season, PeriodColumn.REFUSED)
                .build(results);
    }

    /** One way of the light a row, one mounting a column: what it adds to the useful heat of a square metre. */
    static Table light(List<MountingResult> results, UnitSystem units) {
        return items(results, results, units);
    }

    /** The same less that of the first mounting: where the difference in useful heat comes from. */
    static Table lightAgainstFirst(List<MountingResult> results, UnitSystem units) {
        return items(results, results.subList(Math.min(1, results.size()), results.size()), units);
    }

    /** One mounting a row: its films and temperatures while the pump ran, and the hours in which air warmed it. */
    static Table films(List<MountingResult> results, UnitSystem units) {
        return working(new TableBuilder<MountingResult>(units)
                        .words("mounting", "mounting", r -> r.option().name()))
                .build(results.stream().filter(r -> r.light().isPresent()).toList());
    }

    /** Season heat with the water held at one temperature, one mounting a row. */
    static Table heldPool(List<MountingResult> results, UnitSystem units) {
        TableBuilder<MountingResult> table = new TableBuilder<MountingResult>(units)
                .words("mounting", "mounting", r -> r.option().name());
        for (double water : HELD_C) {
            long shown = Math.round(Measure.TEMPERATURE.in(units, water));
            table.number(
                    shown + " " + Measure.TEMPERATURE.unit(units),
                    "heat_at_" + shown + "_" + Measure.TEMPERATURE.suffix(units),
                    Measure.HEAT_PER_AREA,
                    r -> HeldPool.heatKwhM2(
                            r.forecast().installation(), r.forecast().forcing(), water));
        }
        return table.build(results);
    }

    /** The months of one mounting: where the light of a square metre went. */
    static Table months(MountingResult result, Numbers numbers) {
        TableBuilder<Month> table = new TableBuilder<Month>(numbers.units())
                .words("month", "month", m -> numbers.label(m.period.period()))
                .number(
                        "sun on it\nall hours",
                        "irradiance_all_hours",
                        Measure.LIGHT,
                        m -> m.light.irradianceAllHours())
                .number("sun while\nrunning", "irradiance", Measure.LIGHT, m -> m.light.irradiance());
        String[] headers = {
            "absorbed\nfront",
            "absorbed\nback",
            "air\nfront",
            "air\nback",
            "long-wave\nfront",
            "long-wave\nback",
            "to the\nroom",
            "useful\nheat"
        };
        for (LightItem item : LightItem.values()) {
            table.number(headers[item.ordinal()], item.name(), Measure.LIGHT, m -> item.gained(m.light));
        }
        table.number("film\nfront", "film_front", Measure.FILM, m -> m.light.filmFrontWm2K())
                .optional("film\nback", "film_back", Measure.FILM, m -> filmBack(m.light))
                .number("\npump", "pump", Measure.HOURS, m -> m.light.runHours())
                .number("\nwater", "water", Measure.TEMPERATURE, m -> m.light.waterC())
                .number("\nair", "air", Measure.TEMPERATURE, m -> m.light.airC());
        return table.build(
                IntStream.range(0, result.lightByMonth().size())
                        .mapToObj(i -> new Month(
                                result.months().get(i), result.lightByMonth().get(i)))
                        .toList(),
                result.light().stream()
                        .map(light -> new Month(result.season(), light))
                        .toList());
    }

    static OptionalInt rows(MountingResult result) {
        return result.fit().racks().map(r -> OptionalInt.of(r.rows())).orElse(OptionalInt.empty());
    }

    static OptionalDouble pitch(MountingResult result) {
        return result.fit()
                .racks()
                .map(Mounting.OpenRack::pitchM)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    static OptionalDouble filmBack(LightBudget light) {
        return light.filmBackWm2K() > 0 ? OptionalDouble.of(light.filmBackWm2K()) : OptionalDouble.empty();
    }

    private static TableBuilder<MountingResult> working(TableBuilder<MountingResult> table) {
        return table.number("sun on it\nall hours", "irradiance_all_hours", Measure.LIGHT, r -> light(r)
                        .irradianceAllHours())
                .number("while\nrunning", "irradiance", Measure.LIGHT, r -> light(r).irradiance())
                .number("film\nfront", "film_front", Measure.FILM, r -> light(r).filmFrontWm2K())
                .optional("film\nback", "film_back", Measure.FILM, r -> filmBack(light(r)))
                .number("\nwater", "water", Measure.TEMPERATURE, r -> light(r).waterC())
                .number("\nair", "air", Measure.TEMPERATURE, r -> light(r).airC())
                .number("\nplate", "plate", Measure.TEMPERATURE, r -> light(r).plateC())
                .number("\npump", "pump", Measure.HOURS, r -> light(r).runHours())
                .number("warmed\nby air", "warmed_by_air", Measure.HOURS, r -> light(r).warmedHours())
                .number("heat from\nthe air", "heat_from_air", Measure.LIGHT, r -> light(r).warmedByAir());
    }

    private static LightBudget light(MountingResult result) {
        return result.light().orElseThrow();
    }

    private static Table items(List<MountingResult> results, List<MountingResult> shown, UnitSystem units) {
        boolean difference = shown.size() < results.size();
        TableBuilder<LightItem> table =
                new TableBuilder<LightItem>(units).words("way of the heat", "way", LightItem::label);
        for (MountingResult result : shown) {
            result.light()
                    .ifPresent(light -> table.number(
                            result.option().name(),
                            result.option().name(),
                            Measure.LIGHT,
                            item -> item.gained(light) - (difference ? item.gained(light(results.get(0))) : 0)));
        }
        List<LightItem> ways = new ArrayList<>(List.of(LightItem.values()));
        ways.remove(LightItem.USEFUL);
        return table.build(ways, List.of(LightItem.USEFUL));
    }

    private record Month(PeriodSummary period, LightBudget light) {}
}
