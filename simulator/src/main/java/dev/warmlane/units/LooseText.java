package dev.warmlane.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What people write around a quantity: "about 6 ft", "1.8 m deep", "2 x 125 kW", "0.9 to 1.8 m", "4 times a day". Nothing of
 * it is taken as it stands; what was probably meant is found, so that it can be asked back.
 */
final class LooseText {

    private static final String DIGITS = "\\d+(?:\\.\\d+)?";

    private static final Pattern HEDGED = Pattern.compile(
            "(?i)(?:(?:about|approx(?:imately)?|around|roughly|circa|ca|some|say|avg|average|mean|on average)\\b\\.?:?"
                    + "|[~\u2248\u00d8\u00f8])\\s*(\\d.*)");

    private static final Pattern PRODUCT = Pattern.compile("(\\d+)\\s*[x\u00d7*]\\s*(\\d.*)");

    private static final Pattern FROM_TO = Pattern.compile("(?i)(?:from\\s+|between\\s+)?(" + DIGITS
            + ")\\s*([^\\d\\s-][^\\d-]*?)?\\s*(?:[-\u2013/]|\\b(?:to|and|till)\\b)\\s*(" + DIGITS
            + ")\\s*([^\\d\\s].*)?");

    /** Five feet six are no five feet. */
    private static final String IN_WORDS = "(?:half|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)";

    /** A unit and words behind it; a rate and a count of things are other quantities. */
    private static final Pattern WITH_WORDS = Pattern.compile(
            "(?i)(\\S+(?:\\s(?:kWh|m2|ft2))?)[\\s,]+(?!per\\b|/|a\\b|an\\b|x\\b|times\\b|of\\b|and\\b|plus\\b|or\\b|"
                    + IN_WORDS + "\\b)[\\p{L}(].*");

    private static final Pattern TIMES_A_DAY =
            Pattern.compile("(?i)(?:x|times)?\\s*(?:/|per|a|each)\\s*(?:day|d|24 ?h)");

    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private LooseText() {}

    /** The quantity of a text that begins with "about". */
    static Optional<String> unhedged(String usual, Dimension dimension) {
        Matcher hedged = HEDGED.matcher(usual);
        return hedged.matches()
                        && (reads(hedged.group(1), dimension) || hedged.group(1).matches(DIGITS))
                ? Optional.of(hedged.group(1))
                : Optional.empty();
    }

    /** So many times a quantity, multiplied; two lengths are sides. */
    static Optional<String> multiplied(String usual, Dimension dimension) {
        Matcher product = PRODUCT.matcher(usual);
        if (dimension == Dimension.LENGTH || !product.matches() || !reads(product.group(2), dimension)) {
            return Optional.empty();
        }
        NumberText each = NumberText.of(product.group(2));
        return each == null || each.rest().isEmpty()
                ? Optional.empty()
                : Optional.of(Quantity.plain(Double.parseDouble(product.group(1)) * each.value()) + " " + each.rest());
    }

    /** The mean of a quantity that runs from one number to another. */
    static Optional<String> mean(String usual, Dimension dimension) {
        Matcher both = FROM_TO.matcher(usual);
        if (!both.matches()) {
            return dimension == Dimension.LENGTH ? meanInFeet(usual) : Optional.empty();
        }
        double from = Double.parseDouble(both.group(1));
        double to = Double.parseDouble(both.group(3));
        String last = unit(both.group(4), dimension);
        String first = both.group(2) == null ? last : unit(both.group(2), dimension);
        boolean same = last.isEmpty() || (first.equals(last) && dimension.find(last) != null);
        return same && from < to ? Optional.of((rounded((from + to) / 2) + " " + first).strip()) : Optional.empty();
    }

    /** A unit as it stands, feet also by their mark. */
    private static String unit(@Nullable String written, Dimension dimension) {
        String unit = written == null ? "" : written.strip();
        return dimension == Dimension.LENGTH && unit.matches("['\u2032\u2019]") ? "ft" : unit;
    }

    /** Both ends in feet and inches. */
    private static Optional<String> meanInFeet(String usual) {
        String[] ends = usual.split("\\s+(?:-|\u2013|to|and)\\s+", -1);
        OptionalDouble from = ends.length == 2 ? Lengths.ofTwo(ends[0]) : OptionalDouble.empty();
        OptionalDouble to = ends.length == 2 ? Lengths.ofTwo(ends[1]) : OptionalDouble.empty();
        return from.isPresent() && to.isPresent() && from.getAsDouble() < to.getAsDouble()
                ? Optional.of(rounded((from.getAsDouble() + to.getAsDouble()) / 2 / Units.FOOT) + " ft")
                : Optional.empty();
    }

    /** A quantity with words behind its unit, without them; a direction is changed by them. */
    static Optional<String> bare(NumberText number, Dimension dimension) {
        Matcher words = WITH_WORDS.matcher(number.rest());
        if (dimension == Dimension.DIRECTION || !words.matches()) {
            return Optional.empty();
        }
        Unit unit = dimension.find(words.group(1));
        return unit == null ? Optional.empty() : Optional.of(number.written() + " " + unit.symbol());
    }

    /** The hours of something that happens so many times a day. */
    static Optional<String> hours(NumberText number, Dimension dimension) {
        boolean rate = dimension == Dimension.DURATION
                && TIMES_A_DAY.matcher(number.rest()).matches();
        return rate && number.value() > 0
                ? Optional.of(rounded(Units.DAY / Units.HOUR / number.value()) + " h")
                : Optional.empty();
    }

    private static boolean reads(String text, Dimension dimension) {
        try {
            return Double.isFinite(Quantity.parse(text, dimension));
        } catch (QuantityException none) {
            return false;
        }
    }

    private static String rounded(double value) {
        return Quantity.plain(new BigDecimal(value).round(FOUR_DIGITS).doubleValue());
    }
}
