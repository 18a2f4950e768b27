package dev.warmlane.report;

import dev.warmlane.money.Payback;
import dev.warmlane.money.Terms;
import dev.warmlane.money.Worth;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What the collectors are worth over the years, with the forecast's doubt, as a person reads it. */
final class MoneyWords {

    /** Payback of this many years or more is told in whole years; own choice. */
    private static final double WHOLE_YEARS = 10;

    private final Numbers numbers;
    private final Installation built;
    private final PeriodSummary season;
    private final SeasonBand band;

    MoneyWords(Subject subject, SeasonBand band) {
        this.numbers = subject.numbers();
        this.built = subject.installation();
        this.season = subject.season();
        this.band = band;
    }

    /** Their worth as described; nothing where it is not known. */
    Optional<Worth> worth() {
        return CollectorsWorth.of(built, season);
    }

    /** Net present value, with its sign. */
    BandQuantity netPresentValue() {
        return BandQuantity.netPresentValue(built);
    }

    /** Saved in a year when upkeep, if there is any, is paid. */
    BandQuantity savedPerYear() {
        String paid = built.offer().upkeepPerYear() > 0 ? ", upkeep paid" : "";
        return worth("saved a year" + paid, "spent more a year" + paid, "saved_a_year", Worth::savedPerYear);
    }

    /** What has come together after some years. */
    BandQuantity after(int years) {
        return worth("after " + years + " years", "", "after_years", worth -> worth.after(years));
    }

    private BandQuantity worth(String words, String turned, String csvName, ToDoubleFunction<Worth> number) {
        return BandQuantity.worth(built, words, turned, csvName, number);
    }

    /** When they have paid for themselves: {@code 7.6 years}, {@code not within 40 years}. */
    String payback(Worth worth) {
        return payback(numbers, worth.payback());
    }

    /** The same between the bounds of what is saved: {@code 6.2 to 14 years}, {@code 9.9 years, at worst not
     * within 40}; empty where both are alike. */
    String paybackRange(Worth worth) {
        return paybackRange(numbers, worth, BandQuantity.saved(built).in(band));
    }

    /** The same with what is saved in a season. */
    static String paybackRange(Numbers numbers, Worth worth, Estimate saved) {
        String soon = payback(numbers, with(worth, saved.high()).payback());
        String late = payback(numbers, with(worth, saved.low()).payback());
        if (soon.equals(late)) {
            return "";
        }
        return late.endsWith(" years") && !late.startsWith("not")
                ? soon.replace(" years", "") + " to " + late
                : soon + ", at worst " + late.replace(" years", "");
    }

    private static Worth with(Worth worth, double saved) {
        return new Worth(worth.investment(), saved, worth.terms());
    }

    static String payback(Numbers numbers, Payback payback) {
        return payback.match(
                years -> numbers.show(years, years < WHOLE_YEARS ? 1 : 0) + " years",
                () -> "not within " + Payback.LONGEST_YEARS + " years");
    }

    /** That interest is counted, after a payback: who divides what is paid by what is saved a year finds less. */
    static String withInterest(Numbers numbers, Terms terms) {
        return terms.interest() == 0 ? "" : " with interest of " + percent(numbers, terms.interest());
    }

    /** Interest, growth and years, in words. */
    String terms(Terms terms) {
        return terms(numbers, terms);
    }

    /** The same where there is no doubt to tell. */
    static String terms(Numbers numbers, Terms terms) {
        return "Over " + terms.years() + " years, without inflation: interest "
                + percent(numbers, terms.interest()) + " a year, energy "
                + (terms.energyPriceGrowth() == 0
                        ? "at the prices of today"
                        : (terms.energyPriceGrowth() > 0 ? "dearer by " : "cheaper by ")
                                + percent(numbers, Math.abs(terms.energyPriceGrowth())) + " a year")
                + ".";
    }

    static String percent(Numbers numbers, double share) {
        double percent = 100 * share;
        return numbers.show(percent, percent == Math.rint(percent) ? 0 : 1) + " %";
    }
}
