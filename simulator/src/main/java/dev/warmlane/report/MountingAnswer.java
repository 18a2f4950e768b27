package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Which mounting gives most, in both comparisons, in sentences and in a few large numbers. */
final class MountingAnswer {

    private final MountingStudy study;
    private final MountingBands bands;
    private final Numbers numbers;
    private final List<MountingResult> area;
    private final List<MountingResult> roof;

    MountingAnswer(MountingStudy study, MountingBands bands, Numbers numbers) {
        this.study = study;
        this.bands = bands;
        this.numbers = numbers;
        this.area = ranked(study.sameArea());
        this.roof = ranked(study.sameRoof());
    }

    Section section() {
        Section answer = CommonSections.answer(
                numbers,
                Stream.concat(area.stream(), roof.stream()).map(MountingResult::season),
                sentences(),
                figures());
        return conclusion().isEmpty() ? answer : answer.with(Place.PRINTED, new Block.Words(details()));
    }

    /** The answer in a few sentences: which leads, or what there is of the only one. */
    String sentences() {
        String conclusion = conclusion();
        return (conclusion.isEmpty() ? sameArea() + " " + sameRoof() + " " : conclusion)
                + "This holds for this weather, this roof and this pool." + hardlyNeeded();
    }

    /** How much each gives, and what speaks most for the first. */
    String details() {
        return sameArea() + " " + sameRoof() + reason().map(why -> " " + why).orElse("");
    }

    /** Which mounting leads, in both comparisons; nothing where there is one alone. */
    private String conclusion() {
        String same = MountingLead.of(area, bands, numbers)
                .map(lead -> "With the same area " + lead.words() + " ")
                .orElse("");
        String most = MountingLead.of(roof, bands, numbers)
                .map(lead -> "With all that fits the roof " + lead.words() + " ")
                .orElse("");
        return same + most;
    }

    /** What is bought without collectors is the same for every mounting. */
    private String hardlyNeeded() {
        return Telling.hardlyNeeded(study.template(), area.get(0).season());
    }

    /** The large numbers, each with its range. */
    List<Figure> figures() {
        MountingResult best = area.get(0);
        Optional<MountingResult> next = area.stream().skip(1).findFirst();
        List<Figure> keys = new ArrayList<>();
        keys.add(figure(
                best,
                BandQuantity.HEAT_PER_AREA,
                "from " + name(best) + ", same collector area",
                next.map(other ->
                                words(other).likely(BandQuantity.HEAT_PER_AREA) + " from " + name(other) + ", the next")
                        .orElse("")));
        roof.stream()
                .findFirst()
                .ifPresent(most -> keys.add(figure(
                        most,
                        BandQuantity.HEAT,
                        "from " + name(most) + ", the most that fits the roof",
                        numbers.show(Measure.AREA, most.fit().areaM2()) + " of collectors")));
        keys.add(figure(
                best,
                BandQuantity.MEAN,
                "mean pool temperature with " + name(best) + ", same area",
                mean(best.season().waterWithout().meanC()) + " without collectors"));
        if (best.season().gas().displaced().isPresent()) {
            BandQuantity displaced = BandQuantity.DISPLACED.said(best.season());
            keys.add(figure(
                    best,
                    displaced,
                    displaced.words() + " with " + name(best) + ", same area",
                    next.map(other -> words(other).likely(BandQuantity.DISPLACED.said(other.season())) + " with "
                                    + name(other))
                            .orElse("")));
        }
        worthMost().ifPresent(keys::add);
        return keys;
    }

    private Figure figure(MountingResult of, BandQuantity quantity, String meaning, String beside) {
        BandWords words = words(of);
        return new Figure(words.likely(quantity), meaning, words.beside(quantity), beside);
    }

    private BandWords words(MountingResult of) {
        return new BandWords(numbers, of.forecast().installation(), bands.of(of));
    }

    /** Of what the roof has room for what is worth most over the years; nothing where no price is known. */
    private Optional<Figure> worthMost() {
        List<MountingResult> known = Stream.concat(area.stream(), roof.stream())
                .filter(one -> one.fit().fits() && one.worth().isPresent())
                .toList();
        return known.stream()
                .max(Comparator.comparingDouble(one -> one.worth().orElseThrow().netPresentValue()))
                .map(most -> figure(
                        most,
                        BandQuantity.netPresentValue(most.forecast().installation()),
                        "net present value of " + name(most) + ", "
                                + (area.contains(most) ? "same area" : "the most that fits the roof")
                                + (known.size() < 2 ? "" : ", the highest"),
                        most.option().pricePerM2().isEmpty() && area.size() > 1
                                ? "at the general price of the collectors"
                                : ""));
    }

    private String sameArea() {
        MountingResult best = area.get(0);
        String same = numbers.show(Measure.AREA, study.template().collectorAreaM2());
        String room = best.fit().fits() ? "" : " This roof has no room for that much of it.";
        return (area.size() == 1 ? "With " : "With the same ") + same + " of collectors " + name(best) + " gives "
                + heat(best) + " of heat in the season, " + perArea(best) + next(area, this::heat) + "." + room;
    }

    private String sameRoof() {
        if (roof.isEmpty()) {
            return "Nothing fits this roof.";
        }
        MountingResult best = roof.get(0);
        return "The most that fits the same roof"
                + (area.size() == 1 ? "" : ", of " + name(best) + ",") + " gives " + heatFromArea(best)
                + next(roof, this::heatFromArea) + ".";
    }

    private String heatFromArea(MountingResult result) {
        return heat(result) + " from " + numbers.show(Measure.AREA, result.fit().areaM2());
    }

    private static String next(List<MountingResult> ranking, Function<MountingResult, String> shown) {
        return ranking.size() < 2 ? "" : "; " + name(ranking.get(1)) + " " + shown.apply(ranking.get(1));
    }

    /** The way of the heat by which the first gains most on the second; nothing where it cannot be told. */
    private Optional<String> reason() {
        if (area.size() < 2) {
            return Optional.empty();
        }
        MountingResult next = area.get(1);
        return area.get(0).light().flatMap(best -> next.light().flatMap(other -> Arrays.stream(LightItem.values())
                .filter(item -> item != LightItem.USEFUL && ahead(item, best, other) > 0)
                .max(Comparator.comparingDouble(item -> ahead(item, best, other)))
                .map(item -> "What speaks most for " + name(area.get(0)) + ", against " + name(next)
                        + " with the same area: " + item.label()
                        + ", better by "
                        + numbers.show(Measure.LIGHT, ahead(item, best, other)) + ".")));
    }

    private static double ahead(LightItem item, LightBudget best, LightBudget other) {
        return item.gained(best) - item.gained(other);
    }

    private static List<MountingResult> ranked(List<MountingResult> results) {
        return results.stream()
                .sorted(Comparator.comparingDouble(MountingResult::deliveredKwh).reversed())
                .toList();
    }

    private String heat(MountingResult result) {
        return numbers.show(Measure.HEAT, result.deliveredKwh());
    }

    private String perArea(MountingResult result) {
        return numbers.show(Measure.HEAT_PER_AREA, result.deliveredKwhPerM2());
    }

    private String mean(double celsius) {
        return numbers.show(Measure.TEMPERATURE, celsius);
    }

    private static String name(MountingResult result) {
        return "“" + result.option().name() + "”";
    }
}
