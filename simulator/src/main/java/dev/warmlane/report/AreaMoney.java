package dev.warmlane.report;

import dev.warmlane.money.Terms;
import dev.warmlane.money.Worth;
import dev.warmlane.report.Block.Figure;
import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.chart.AreaCharts;
import dev.warmlane.season.Offer;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.List;
import java.util.Set;

/** Which collector area is worth most over the years. */
final class AreaMoney {

    private final AreaWorth worth;
    private final Numbers numbers;
    private final String currency;

    AreaMoney(AreaWorth worth, Numbers numbers) {
        this.worth = worth;
        this.numbers = numbers;
        this.currency = worth.study()
                .installation()
                .prices()
                .map(prices -> prices.currency())
                .orElse("");
    }

    /** In a sentence or two, with a space before them. */
    String sentences() {
        AreaWorth.Doubted best = worth.best();
        double value = value(best.design());
        int years = terms().years();
        if (value <= 0) {
            return " No area brings in " + years + " years what it costs: least is lost with " + area(best.design())
                    + ", whose net present value is " + money(best.netPresentValue(), value)
                    + range(best) + ".";
        }
        StringBuilder text = new StringBuilder(" Over ")
                .append(years)
                .append(" years the collectors are worth most at ")
                .append(area(best.design()))
                .append(": ")
                .append(money(best.netPresentValue(), value))
                .append(" more than they cost, as money of today")
                .append(range(best));
        worth.asGoodM2()
                .filter(flat -> numbers.rounded(Measure.AREA, flat.low()) < numbers.rounded(Measure.AREA, flat.high()))
                .ifPresent(flat -> text.append("; flat, less than ")
                        .append(numbers.show(Measure.SHARE, AreaWorth.AS_GOOD))
                        .append(" below that, from ")
                        .append(numbers.range(Measure.AREA, flat.low(), flat.high())));
        text.append('.').append(atTheEnd(best.design())).append(moved()).append(fits(best.design()));
        return text.toString();
    }

    /** The highest of what the roof has room for, as a large number; of all where it has room for none. */
    Figure figure() {
        AreaWorth.Doubted best = worth.bestThatFits().orElse(worth.best());
        return new Figure(
                money(best.netPresentValue(), value(best.design())),
                "net present value with " + area(best.design()) + ", the highest"
                        + (best.design().equals(worth.best().design()) ? "" : " of those that fit"),
                bounds(best),
                "");
    }

    Section section() {
        Offer offer = worth.study().installation().offer();
        double perM2 = worth.study().installation().prices().orElseThrow().collectorPerM2();
        return Section.of("What the areas are worth", Place.PRINTED)
                .words(MoneyWords.terms(numbers, terms()) + " Sums are in " + currency + "; paid are "
                        + perArea(perM2)
                        + (offer.fixedCost() > 0 ? " and " + bare(offer.fixedCost(), 0) + " whatever the area" : "")
                        + (offer.grant() > 0 ? ", less a grant of " + bare(offer.grant(), 0) : "")
                        + (offer.upkeepPerYear() > 0
                                ? "; upkeep is " + bare(offer.upkeepPerYear(), 0) + " a year for every area"
                                : "")
                        + ". Low and high are what all that is uncertain leaves together.")
                .with(table())
                .with(
                        Set.of(Place.TECHNICAL),
                        new Picture("area-value", name -> AreaCharts.value(name, worth, numbers)));
    }

    /** One area a row. */
    Table table() {
        return new TableBuilder<AreaDesign>(numbers.units())
                .number("\narea", "area", Measure.AREA, AreaDesign::areaM2)
                .number("\npaid", "paid", Measure.MONEY, d -> of(d).investment().paid())
                .number("saved\na year", "saved_a_year", Measure.MONEY, d -> of(d).savedPerYear())
                .number("net present\nvalue", "net_present_value", Measure.MONEY, AreaMoney::value)
                .words("\nlow to high", "range", d -> worth.of(d)
                        .map(this::bounds)
                        .orElse(""))
                .words("\npaid back", "paid_back", d -> MoneyWords.payback(numbers, of(d).payback()))
                .words("", "note", this::note)
                .build(worth.study().designs());
    }

    private String note(AreaDesign design) {
        return (design.equals(worth.best().design()) ? value(design) > 0 ? "worth most" : "loses least" : "")
                + (design.fitsRoof() ? "" : (design.equals(worth.best().design()) ? ", " : "") + "more than the roof");
    }

    /** Where it may be worth still more beyond the areas of the study. */
    private String atTheEnd(AreaDesign best) {
        List<AreaDesign> designs = worth.study().designs();
        if (designs.size() < 2) {
            return "";
        }
        if (best.equals(designs.get(designs.size() - 1))) {
            return " That is the largest area of this study: more may be worth more.";
        }
        return best.equals(designs.get(0)) ? " That is the smallest area of this study: less may be worth more." : "";
    }

    private String moved() {
        Estimate area = worth.bestAreaM2();
        return area.low() == area.high()
                ? ""
                : " What is uncertain, each by itself, moves that area to between "
                        + numbers.range(Measure.AREA, area.low(), area.high()).replace(" to ", " and ") + ".";
    }

    private String fits(AreaDesign best) {
        if (best.fitsRoof()) {
            return "";
        }
        return worth.bestThatFits()
                .map(fits -> " The roof has no room for it; of the areas in the table that fit, " + area(fits.design())
                        + (value(fits.design()) > 0 ? " are worth most, " : " lose least, ")
                        + money(fits.netPresentValue(), value(fits.design())) + range(fits) + ".")
                .orElse(" The roof has no room for it.");
    }

    private Terms terms() {
        return worth.study().installation().offer().terms();
    }

    private static Worth of(AreaDesign design) {
        return design.worth().orElseThrow();
    }

    private static double value(AreaDesign design) {
        return of(design).netPresentValue();
    }

    private String bounds(AreaWorth.Doubted one) {
        Estimate value = one.netPresentValue();
        return numbers.notation().lead(numbers.bare(Measure.MONEY, value.low(), value), currency) + " to "
                + numbers.notation().lead(numbers.bare(Measure.MONEY, value.high(), value), currency);
    }

    private String range(AreaWorth.Doubted one) {
        return " (" + bounds(one) + ")";
    }

    private String money(Estimate of, double value) {
        return numbers.aboutMoney(value, of, currency);
    }

    private String perArea(double perM2) {
        return numbers.notation().lead(numbers.bareOfArea(perM2), currency) + " for each "
                + Measure.AREA.unit(numbers.units());
    }

    private String bare(double amount, int decimals) {
        return numbers.notation().lead(numbers.show(amount, decimals), currency);
    }

    private String area(AreaDesign design) {
        return numbers.show(Measure.AREA, design.areaM2());
    }
}
