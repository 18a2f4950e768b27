package dev.warmlane.report;

import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.MoneyCharts;
import dev.warmlane.season.Installation;
import dev.warmlane.study.Alternative;
import dev.warmlane.study.AlternativesBand;
import dev.warmlane.study.AlternativesStudy;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** What else the money could do: neither, collectors, cover, both. */
final class AlternativesSection {

    private final Subject subject;
    private final AlternativesStudy study;
    private final AlternativesBand band;
    private final Numbers numbers;
    private final boolean heated;
    private final boolean held;
    private final boolean priced;
    private final String currency;

    AlternativesSection(Subject subject, AlternativesStudy study, AlternativesBand band) {
        this.subject = subject;
        this.study = study;
        this.band = band;
        this.numbers = subject.numbers();
        this.heated = PeriodColumn.displaces(subject.season());
        // of a pool without a heater nothing costs nothing, which is no price
        this.priced = study.neither().cost().isPresent()
                && (heated
                        || study.coverAlone().cost().isPresent()
                        || study.collectors().cost().isPresent());
        this.currency =
                subject.installation().prices().map(prices -> prices.currency()).orElse("");
        this.held = Telling.heldByHeater(subject.installation(), subject.season());
    }

    Section section() {
        return Section.of("What else the money could do", Place.PRINTED)
                .words(cover())
                .with(table())
                .words(sentences());
    }

    private String cover() {
        Installation built = subject.installation();
        String sums = priced ? "; sums are in " + currency + ":" : ":";
        return (built.cover().isPresent()
                        ? "The same pool without its cover (" + study.cover().name() + ") or without the collectors"
                        : "The pool has no cover. Beside the collectors, a "
                                + study.cover().name() + " that lies on it by night from 20 to 8")
                + sums;
    }

    /** For people: where the heater holds comfort, days without it stand in the place of days at comfort. */
    private Table table() {
        return table(!held, held);
    }

    /** For csv. */
    Table all() {
        return table(true, heated);
    }

    private Table table(boolean atComfort, boolean withoutHeater) {
        TableBuilder<Alternative> table = new TableBuilder<Alternative>(subject.units())
                .words("", "alternative", AlternativesSection::name)
                .number("pool\nmean", "water_mean", Measure.TEMPERATURE, a -> a.pool()
                        .water()
                        .meanC());
        if (atComfort) {
            table.count("days at\ncomfort", "at_comfort_days", AlternativesSection::days);
        }
        if (withoutHeater) {
            table.count("days without\nheater", "without_heater_days", Alternative::daysWithoutHeater);
        }
        if (heated) {
            table.number("energy\nbought", "bought", Measure.HEAT, Alternative::boughtKwh)
                    .number("carbon\ndioxide", "co2", Measure.MASS, Alternative::co2Kg);
        }
        if (priced) {
            table.optional("\npaid", "paid", Measure.MONEY, a -> cost(a, CostPart.PAID))
                    .optional("energy\na year", "energy_a_year", Measure.MONEY, a -> cost(a, CostPart.ENERGY))
                    .optional(
                            "all in\n" + study.terms().years() + " years",
                            "over_years",
                            Measure.MONEY,
                            a -> cost(a, CostPart.YEARS));
        }
        return table.words("", "note", a -> a.asDescribed() ? "as described" : "")
                .build(study.all());
    }

    private enum CostPart {
        PAID,
        ENERGY,
        YEARS
    }

    private static OptionalDouble cost(Alternative one, CostPart part) {
        return one.cost().stream()
                .mapToDouble(cost -> switch (part) {
                    case PAID -> cost.paid();
                    case ENERGY -> cost.energyPerYear();
                    case YEARS -> cost.overYears();
                })
                .findFirst();
    }

    static String name(Alternative one) {
        if (one.collectors()) {
            return one.cover() ? "both" : "collectors alone";
        }
        return one.cover() ? "cover alone" : "neither";
    }

    private String sentences() {
        List<String> sentences = new ArrayList<>();
        if (heated) {
            sentences.add(energy());
        }
        sentences.add(warmth());
        if (priced) {
            sentences.add(money());
        }
        return String.join(" ", sentences);
    }

    private String energy() {
        Estimate cover = savedKwh(study.coverAlone());
        Estimate collectors = savedKwh(study.collectors());
        boolean alike = heat(cover).equals(heat(collectors));
        return "The cover alone saves " + heat(cover) + " of what is bought, "
                + (alike
                        ? "as much as the collectors alone"
                        : (cover.likely() > collectors.likely() ? "more than" : "less than") + " the collectors alone, "
                                + heat(collectors))
                + "; both save " + heat(savedKwh(study.both())) + ".";
    }

    /** The likely value as what is shown in the table differs. */
    private Estimate savedKwh(Alternative one) {
        Estimate saved = band.savedKwh(one);
        double likely = numbers.apart(Measure.HEAT, study.neither().boughtKwh(), one.boughtKwh());
        return new Estimate(Math.min(saved.low(), likely), likely, Math.max(saved.high(), likely));
    }

    /** {@code 130,000 kWh (110,000 to 150,000)}. */
    private String heat(Estimate kwh) {
        String low = numbers.bare(Measure.HEAT, kwh.low(), kwh);
        String high = numbers.bare(Measure.HEAT, kwh.high(), kwh);
        return numbers.about(Measure.HEAT, kwh.likely(), kwh)
                + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    private String warmth() {
        return "The pool averages " + mean(study.coverAlone()) + " with the cover alone and " + mean(study.collectors())
                + " with the collectors alone"
                + (held
                        ? "; the heater gives nothing on "
                                + study.coverAlone().daysWithoutHeater() + " and "
                                + study.collectors().daysWithoutHeater() + " days."
                        : ", at comfort on " + days(study.coverAlone()) + " and " + days(study.collectors())
                                + " days.");
    }

    private String money() {
        if (study.both().cost().isEmpty()) {
            return study.coverAlone().cost().isEmpty()
                    ? "What the cover costs is not given, so that nothing is said of its money."
                    : "What the collectors cost is not given, so that nothing is said of their money.";
        }
        String over = "Over " + study.terms().years() + " years ";
        if (!heated) {
            return over + "the cover alone costs " + overYears(study.coverAlone()) + " and the collectors alone "
                    + overYears(study.collectors()) + (study.collectors().pumpKwh() > 0 ? ", pumping included" : "")
                    + ", as money of today.";
        }
        Alternative least = study.all().stream()
                .min(Comparator.comparingDouble(a -> a.cost().orElseThrow().overYears()))
                .orElseThrow();
        return over + least(least) + " least: " + overYears(least)
                + " for what is built and for energy, as money of today.";
    }

    private String least(Alternative one) {
        if (one.equals(study.both())) {
            return "both together cost";
        }
        return one.equals(study.collectors())
                ? "the collectors alone cost"
                : (one.cover() ? "the cover alone" : "neither of them") + " costs";
    }

    private String overYears(Alternative one) {
        Estimate sum = band.overYears(one).orElseThrow();
        String low = numbers.bare(Measure.MONEY, sum.low(), sum);
        String high = numbers.bare(Measure.MONEY, sum.high(), sum);
        return numbers.aboutMoney(sum.likely(), sum, currency)
                + (low.equals(high)
                        ? ""
                        : " (" + numbers.notation().lead(low, currency) + " to "
                                + numbers.notation().lead(high, currency) + ")");
    }

    private String mean(Alternative one) {
        return numbers.show(Measure.TEMPERATURE, one.pool().water().meanC());
    }

    private static int days(Alternative one) {
        return one.pool().comfort().daysAtComfort();
    }

    /** What each buys, or where nothing is bought on how many days it is warm enough. */
    Chart chart(String name) {
        List<String> names = study.all().stream().map(AlternativesSection::name).toList();
        String title = subject.settings().title();
        return heated
                ? MoneyCharts.alternatives(
                        name,
                        title,
                        "How much energy is bought with collectors, cover or both?",
                        names,
                        Measure.HEAT.unit(subject.units()) + " bought in the season",
                        study.all().stream()
                                .mapToDouble(a -> Measure.HEAT.in(subject.units(), a.boughtKwh()))
                                .toArray())
                : MoneyCharts.alternatives(
                        name,
                        title,
                        "On how many days is the pool warm enough with collectors, cover or both?",
                        names,
                        "days at comfort",
                        study.all().stream()
                                .mapToDouble(AlternativesSection::days)
                                .toArray());
    }
}
