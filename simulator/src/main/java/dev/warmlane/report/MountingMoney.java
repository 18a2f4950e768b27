package dev.warmlane.report;

import dev.warmlane.money.Worth;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Prices;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each mounting costs and brings over the years, with all that is uncertain. */
final class MountingMoney {

    private static final String SAME_AREA = "same area";
    private static final String SAME_ROOF = "same roof";

    private final MountingStudy study;
    private final Numbers numbers;
    private final List<Row> rows = new ArrayList<>();

    MountingMoney(MountingStudy study, MountingBands bands, Numbers numbers) {
        this.study = study;
        this.numbers = numbers;
        add(SAME_AREA, study.sameArea(), bands);
        add(SAME_ROOF, study.sameRoof(), bands);
    }

    private void add(String comparison, List<MountingResult> results, MountingBands bands) {
        for (MountingResult result : results) {
            result.worth().ifPresent(worth -> rows.add(new Row(comparison, result, worth, bands.of(result))));
        }
    }

    /** Empty where no price is known, or no heater is there to save for. */
    Section section() {
        Section section = Section.of("What the mountings are worth", Place.PRINTED);
        return rows.isEmpty()
                ? section
                : section.words(MoneyWords.terms(
                                        numbers, study.template().offer().terms()) + " Sums are in " + currency()
                                + "; fixed cost, grant and upkeep are the same for every mounting, and the pump's"
                                + " power follows the flow. " + prices())
                        .with(table())
                        .words(Stream.of(SAME_AREA, SAME_ROOF)
                                .map(this::most)
                                .filter(words -> !words.isEmpty())
                                .collect(Collectors.joining(" ")));
    }

    private Table table() {
        return new TableBuilder<Row>(numbers.units())
                .words("mounting", "mounting", r -> r.result.option().name())
                .words("", "comparison", Row::comparison)
                .number("\narea", "area", Measure.AREA, r -> r.result.fit().areaM2())
                .number("\npaid", "paid", Measure.MONEY, r -> r.worth
                        .investment()
                        .paid())
                .number("saved\na year", "saved_a_year", Measure.MONEY, r -> r.worth.savedPerYear())
                .number("net present\nvalue", "net_present_value", Measure.MONEY, r -> r.worth.netPresentValue())
                .words("\nlow to high", "range", this::bounds)
                .words("paid back", "paid_back", this::payback)
                .build(rows);
    }

    /** Which is worth most in a comparison; empty where there is no second. */
    private String most(String comparison) {
        List<Row> ranked = rows.stream()
                .filter(row -> row.comparison.equals(comparison))
                .sorted(Comparator.comparingDouble((Row row) -> row.worth.netPresentValue())
                        .reversed())
                .toList();
        if (ranked.size() < 2) {
            return "";
        }
        return (comparison.equals(SAME_AREA) ? "With the same area " : "With all that fits the roof ")
                + told(ranked.get(0))
                + (ranked.get(0).worth.netPresentValue() > 0 ? " is worth most" : " loses least") + "; the next is "
                + told(ranked.get(1)) + ".";
    }

    private String told(Row row) {
        return "“" + row.result.option().name() + "”, "
                + numbers.aboutMoney(row.worth.netPresentValue(), row.value(), currency()) + " ("
                + bounds(row) + ")";
    }

    private String bounds(Row row) {
        Estimate value = row.value();
        return numbers.notation().lead(numbers.bare(Measure.MONEY, value.low(), value), currency()) + " to "
                + numbers.notation().lead(numbers.bare(Measure.MONEY, value.high(), value), currency());
    }

    private String payback(Row row) {
        String range = MoneyWords.paybackRange(numbers, row.worth, row.band.of(season -> row.saved(season)));
        return MoneyWords.payback(numbers, row.worth.payback()) + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** Which price each is counted at. */
    private String prices() {
        List<String> own = new ArrayList<>();
        List<String> shared = new ArrayList<>();
        study.compared().forEach(one -> one.option()
                .pricePerM2()
                .ifPresentOrElse(
                        price -> own.add("“" + one.option().name() + "” " + perArea(price)),
                        () -> shared.add("“" + one.option().name() + "”")));
        double perM2 = study.template().prices().map(Prices::collectorPerM2).orElse(0.0);
        List<String> told = new ArrayList<>();
        if (!own.isEmpty()) {
            told.add("Collectors cost with " + String.join(", ", own) + ".");
        }
        if (!shared.isEmpty() && perM2 > 0) {
            told.add("No price of their own is given for " + String.join(", ", shared) + ": the general price of "
                    + perArea(perM2) + " is taken, though racks and tents cost more than mats.");
        }
        return String.join(" ", told);
    }

    private String perArea(double perM2) {
        return numbers.notation().money(numbers.bareOfArea(perM2), currency()) + " for each "
                + Measure.AREA.unit(numbers.units());
    }

    private String currency() {
        return study.template().prices().map(Prices::currency).orElse("");
    }

    private record Row(String comparison, MountingResult result, Worth worth, SeasonBand band) {

        Installation built() {
            return result.forecast().installation();
        }

        Estimate value() {
            return band.of(
                    season -> CollectorsWorth.of(built(), season).orElseThrow().netPresentValue());
        }

        double saved(PeriodSummary season) {
            return MoneySummary.of(built(), season).orElseThrow().saved();
        }
    }
}
