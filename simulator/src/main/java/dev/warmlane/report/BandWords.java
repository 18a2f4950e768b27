package dev.warmlane.report;

import dev.warmlane.season.Installation;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.Optional;

/** Numbers of a band as a person reads them: no digit that the doubt makes worthless. */
final class BandWords {

    private final Numbers numbers;
    private final String currency;
    private final SeasonBand band;

    BandWords(Subject subject, SeasonBand band) {
        this(subject.numbers(), subject.installation(), band);
    }

    /** Of an installation's season. */
    BandWords(Numbers numbers, Installation built, SeasonBand band) {
        this.numbers = numbers;
        this.currency = built.prices().map(prices -> prices.currency()).orElse("");
        this.band = band;
    }

    /** The likely value with its unit: {@code 70,000 kWh}. */
    String likely(BandQuantity quantity) {
        Estimate value = of(quantity);
        return withUnit(quantity, value.likely(), value);
    }

    /** The bounds with their unit: {@code 59,000 to 76,000 kWh}; the likely value alone where nothing moves it. */
    String range(BandQuantity quantity) {
        Estimate value = of(quantity);
        String high = withUnit(quantity, value.high(), value);
        return isCertain(quantity, value) ? high : lead(quantity, value.low(), value) + " to " + high;
    }

    /** What it may be for one input's sake, without its unit. */
    String alone(BandQuantity quantity, Sensitivity doubt) {
        Estimate value = quantity.of(band, doubt);
        String high = bare(quantity, value.high(), value);
        return isCertain(quantity, value) ? high : bare(quantity, value.low(), value) + " to " + high;
    }

    /** The bounds after a value that has the unit already: {@code 59,000 to 76,000}; empty where nothing moves it. */
    String beside(BandQuantity quantity) {
        Estimate value = of(quantity);
        return isCertain(quantity, value)
                ? ""
                : lead(quantity, value.low(), value) + " to " + lead(quantity, value.high(), value);
    }

    /** The same in brackets, with a space before it. */
    String inBrackets(BandQuantity quantity) {
        String beside = beside(quantity);
        return beside.isEmpty() ? "" : " (" + beside + ")";
    }

    /** What leaves a number least certain, in words after "is"; nothing where nothing moves it as shown. */
    Optional<Sensitivity> leastCertain(BandQuantity quantity) {
        return isCertain(quantity, quantity.in(band)) ? Optional.empty() : band.leastCertain(quantity.number());
    }

    private boolean isCertain(BandQuantity quantity, Estimate value) {
        return bare(quantity, value.low(), value).equals(bare(quantity, value.high(), value));
    }

    private String bare(BandQuantity quantity, double one, Estimate value) {
        return numbers.bare(quantity.measure(), one, value);
    }

    /**
     * The likely value and its bounds as they are shown: of a gain in temperature the difference of the two temperatures
     * that stand beside it.
     */
    Estimate of(BandQuantity quantity) {
        Estimate value = quantity.in(band);
        if (quantity.measure() != Measure.TEMPERATURE_DIFFERENCE) {
            return value;
        }
        double shown = numbers.kelvinApart(
                band.likely().water().meanC(), band.likely().waterWithout().meanC());
        return new Estimate(Math.min(value.low(), shown), shown, Math.max(value.high(), shown));
    }

    /** Without a unit that may stand behind it, with a sign of money that stands before. */
    private String lead(BandQuantity quantity, double one, Estimate value) {
        return numbers.notation().lead(bare(quantity, one, value), currency(quantity));
    }

    private String withUnit(BandQuantity quantity, double one, Estimate value) {
        if (quantity.measure() == Measure.TEMPERATURE_DIFFERENCE) {
            return bare(quantity, one, value) + " degrees";
        }
        return quantity.measure() == Measure.MONEY
                ? numbers.aboutMoney(one, value, currency)
                : numbers.about(quantity.measure(), one, value);
    }

    private String currency(BandQuantity quantity) {
        return quantity.measure() == Measure.MONEY ? currency : "";
    }
}
