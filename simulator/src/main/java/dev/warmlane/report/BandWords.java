package dev.warmlane.report;

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
        this.numbers = subject.numbers();
        this.currency =
                subject.installation().prices().map(prices -> prices.currency()).orElse("");
        this.band = band;
    }

    /** The likely value with its unit: {@code 70,000 kWh}. */
    String likely(BandQuantity quantity) {
        Estimate value = quantity.in(band);
        return numbers.about(quantity.measure(), value.likely(), value) + unit(quantity);
    }

    /** The bounds with their unit: {@code 59,000 to 76,000 kWh}; the likely value alone where nothing moves it. */
    String range(BandQuantity quantity) {
        return range(quantity, quantity.in(band));
    }

    /** What it may be for one input's sake, without its unit. */
    String alone(BandQuantity quantity, Sensitivity doubt) {
        Estimate value = quantity.of(band, doubt);
        String high = bare(quantity, value.high(), value);
        return isCertain(quantity, value) ? high : bare(quantity, value.low(), value) + " to " + high;
    }

    /** The bounds after a value that has the unit already: {@code 59,000 to 76,000}; empty where nothing moves it. */
    String beside(BandQuantity quantity) {
        Estimate value = quantity.in(band);
        return isCertain(quantity, value)
                ? ""
                : bare(quantity, value.low(), value) + " to " + bare(quantity, value.high(), value);
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

    private String range(BandQuantity quantity, Estimate value) {
        String high = numbers.about(quantity.measure(), value.high(), value) + unit(quantity);
        return isCertain(quantity, value) ? high : bare(quantity, value.low(), value) + " to " + high;
    }

    private boolean isCertain(BandQuantity quantity, Estimate value) {
        return bare(quantity, value.low(), value).equals(bare(quantity, value.high(), value));
    }

    private String bare(BandQuantity quantity, double one, Estimate value) {
        return numbers.bare(quantity.measure(), one, value);
    }

    private String unit(BandQuantity quantity) {
        return quantity.measure() == Measure.MONEY ? currency : "";
    }
}
