package dev.warmlane.report;

import dev.warmlane.money.Investment;
import dev.warmlane.money.Worth;
import dev.warmlane.pool.Flow;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.MoneyCharts;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/** What the collectors cost and bring over the years. */
final class MoneySection {

    private static final Set<Place> FIRST = Set.of(Place.FIRST_SHEET);

    private final Subject subject;
    private final SeasonBand band;
    private final BandWords words;
    private final MoneyWords money;
    private final Numbers numbers;
    private final String currency;
    private final List<List<Cell>> rows = new ArrayList<>();

    private MoneySection(Subject subject, SeasonBand band) {
        this.subject = subject;
        this.band = band;
        this.numbers = subject.numbers();
        this.words = new BandWords(subject, band);
        this.money = new MoneyWords(subject, band);
        this.currency =
                subject.installation().prices().map(prices -> prices.currency()).orElse("");
    }

    /** Empty where the price of the collectors is not known. */
    static Section of(Subject subject, SeasonBand band) {
        Section section = Section.of("Money over the years", Place.PRINTED);
        return CollectorsWorth.investment(subject.installation())
                .map(paid -> new MoneySection(subject, band)
                        .fill(section, paid)
                        .with(
                                Set.of(Place.TECHNICAL),
                                new Block.Picture("money-over-years", name -> chart(name, subject, band))))
                .orElse(section);
    }

    private Section fill(Section section, Investment paid) {
        row("price of the collectors", amount(paid.price()), "");
        if (paid.grant() > 0) {
            row("  less the grant", amount(paid.grant()), "");
        }
        if (paid.upkeepPerYear() > 0) {
            row("upkeep a year", amount(paid.upkeepPerYear()), "");
        }
        Optional<Worth> worth = money.worth();
        worth.ifPresent(this::worth);
        costPerKwh();
        Section told = worth.map(what -> section.with(FIRST, new Block.KeyFigures(figures(paid, what)))
                        .staying(Section.Stay.TIGHTLY))
                .orElse(section);
        return told.words(money.terms(subject.installation().offer().terms()))
                .with(new Table(
                        List.of(
                                Column.ofWords("", "what"),
                                Column.ofWords("likely", "likely"),
                                Column.ofWords("low to high", "range")),
                        rows,
                        List.of()))
                .words(worth.map(this::meaning)
                        .orElse("This pool has no heater: what warmer water is worth is for the owner to say."));
    }

    /** What stands on the first sheet: what is paid, what comes back, and when. */
    private List<Block.Figure> figures(Investment paid, Worth worth) {
        BandQuantity saved = money.savedPerYear().said(subject.season());
        BandQuantity value = money.netPresentValue();
        return List.of(
                new Block.Figure(
                        amount(paid.price() - paid.grant()),
                        "paid for the collectors",
                        paid.grant() > 0 ? "the grant taken off" : ""),
                new Block.Figure(words.likely(saved), saved.words(), words.beside(saved), ""),
                new Block.Figure(
                        words.likely(value),
                        "net over " + worth.terms().years() + " years, as money of today",
                        words.beside(value),
                        ""),
                new Block.Figure(
                        money.payback(worth),
                        worth.payback().match(years -> "until they are paid back", () -> "are they paid back"),
                        money.paybackRange(worth),
                        MoneyWords.withInterest(numbers, worth.terms()).strip()));
    }

    private void worth(Worth worth) {
        quantity(money.savedPerYear().said(subject.season()));
        quantity(money.netPresentValue());
        row("paid back", money.payback(worth), money.paybackRange(worth));
    }

    private void quantity(BandQuantity quantity) {
        row(quantity.words(), words.likely(quantity), words.range(quantity));
    }

    /** Of the collectors' heat, and of the heater's beside it. */
    private void costPerKwh() {
        if (BandQuantity.HEAT.in(band).low() <= 0) {
            return;
        }
        Estimate cost = band.of(
                p -> CollectorsWorth.costPerKwh(subject.installation(), p).orElseThrow());
        row(
                "heat from the collectors costs",
                numbers.priceOfHeat(cost.likely(), currency),
                numbers.bareOfHeat(cost.low()).equals(numbers.bareOfHeat(cost.high()))
                        ? ""
                        : numbers.notation().lead(numbers.bareOfHeat(cost.low()), currency) + " to "
                                + numbers.priceOfHeat(cost.high(), currency));
        heaterPerKwh()
                .ifPresent(perKwh ->
                        row("heat from the heater costs, in energy alone", numbers.priceOfHeat(perKwh, currency), ""));
    }

    private String meaning(Worth worth) {
        double value = worth.netPresentValue();
        String years = " in " + worth.terms().years() + " years";
        return (value >= 0
                        ? "The collectors bring" + years + " " + likely(value) + " more than they cost"
                        : "The collectors cost" + years + " " + likely(-value) + " more than they bring")
                + ", all as money of today. Sums of a year are counted at its end; low and high are those of the season."
                + (value < 0 && cheaperHeat()
                        ? " Their heat costs less than the heater's, but a part of it only makes the water warmer and saves"
                                + " nothing."
                        : "");
    }

    /** Which would look as if they had to pay. */
    private boolean cheaperHeat() {
        OptionalDouble heater = heaterPerKwh();
        OptionalDouble collectors = CollectorsWorth.costPerKwh(subject.installation(), subject.season());
        return heater.isPresent() && collectors.isPresent() && collectors.getAsDouble() < heater.getAsDouble();
    }

    /** What a kWh of the heater's heat costs, in energy alone; nothing where it gives none. */
    private OptionalDouble heaterPerKwh() {
        double heat = subject.season().balanceWithout().kwh(Flow.HEATER);
        return heat > 0
                ? OptionalDouble.of(subject.summary()
                                .money()
                                .map(MoneySummary::gasCostWithout)
                                .orElse(0.0)
                        / heat)
                : OptionalDouble.empty();
    }

    private String likely(double value) {
        Estimate estimate = money.netPresentValue().in(band);
        return numbers.aboutMoney(value, estimate, currency);
    }

    private void row(String what, String likely, String range) {
        rows.add(List.of(Cell.of(what), Cell.of(likely), Cell.of(range)));
    }

    private String amount(double value) {
        return numbers.aboutMoney(value, currency);
    }

    /** What has come together year by year, for csv; nothing where it is not known. */
    static Optional<Table> years(Subject subject, SeasonBand band) {
        MoneyWords money = new MoneyWords(subject, band);
        return money.worth().map(worth -> new TableBuilder<Integer>(subject.units())
                .count("year", "year", year -> year)
                .number("low", Measure.MONEY, year -> money.after(year).in(band).low())
                .number("likely", Measure.MONEY, year -> money.after(year)
                        .in(band)
                        .likely())
                .number("high", Measure.MONEY, year -> money.after(year)
                        .in(band)
                        .high())
                .build(IntStream.rangeClosed(0, worth.terms().years()).boxed().toList()));
    }

    /** The same as a chart. */
    private static Optional<Chart> chart(String name, Subject subject, SeasonBand band) {
        MoneyWords money = new MoneyWords(subject, band);
        return money.worth()
                .map(worth -> MoneyCharts.years(
                        name,
                        subject.settings().title(),
                        subject.installation()
                                .prices()
                                .map(prices -> prices.currency())
                                .orElse(""),
                        IntStream.rangeClosed(0, worth.terms().years())
                                .mapToObj(year -> money.after(year).in(band))
                                .toList()));
    }
}
