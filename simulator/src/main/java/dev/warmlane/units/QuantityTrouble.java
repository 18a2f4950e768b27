package dev.warmlane.units;

import dev.warmlane.files.Printable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is wrong with a number whose unit is not one of its dimension, and the text that was probably meant. */
final class QuantityTrouble {

    private static final Pattern SECOND_NUMBER = Pattern.compile(".*(?:[\\sx\u00d7*]|^-)\\d.*");

    private static final String WITH_CURRENCY = "has a currency in it, which has a key of its own";

    private QuantityTrouble() {}

    /** A text that does not begin with a number, but perhaps with a currency. */
    static QuantityException noNumber(String text, String usual, Dimension dimension) {
        Optional<String> loose = LooseText.unhedged(usual, dimension).or(() -> LooseText.mean(usual, dimension));
        if (loose.isPresent()) {
            return meant(text, "does not begin with a number", loose.get());
        }
        String price = PriceText.bare(usual, dimension);
        if (!price.isEmpty()) {
            return meant(text, WITH_CURRENCY, price);
        }
        return PriceText.isSum(usual, dimension)
                ? sum(text, dimension)
                : QuantityException.of(text, dimension, "does not begin with a number");
    }

    /** Money that is not said for what. */
    private static QuantityException sum(String text, Dimension dimension) {
        return QuantityException.of(text, dimension, "is a sum of money, and not said for how much");
    }

    /** A single mark that may part thousands or decimals. */
    static QuantityException doubtful(String text) {
        return QuantityException.told(
                text,
                LoneMark.of(text).map(mark -> "is not clear; " + mark.told()).orElse("is not clear"));
    }

    /** A text with a decimal point for its comma, and without a currency. */
    static String mended(String withPoint, Dimension dimension) {
        String price = PriceText.bare(withPoint, dimension);
        return price.isEmpty() ? withPoint : price;
    }

    /** A comma that can part decimals only. */
    static QuantityException decimalComma(String text, String withPoint) {
        return QuantityException.told(
                text, "has a decimal comma; write a decimal point, \"" + Printable.quote(withPoint) + "\"");
    }

    /** A unit that the dimension has not. */
    static QuantityException unit(String text, String usual, NumberText number, Dimension dimension, String in) {
        String written = number.rest();
        if (dimension == Dimension.AREA && Lengths.isThree(usual)) {
            return QuantityException.of(text, dimension, "has three sides; leave one of them out");
        }
        Optional<String> loose = LooseText.multiplied(usual, dimension);
        if (loose.isPresent()) {
            return meant(text, "is several of them", loose.get());
        }
        String[] sides = Lengths.sides(usual);
        if (sides != null && dimension == Dimension.LENGTH) {
            return QuantityException.told(
                    text, "is two sides; write one of them here, \"" + Printable.quote(sides[0]) + "\"");
        }
        if (sides != null && dimension == Dimension.AREA) {
            String withPoint = NumberText.withPoint(sides[1]);
            if (!withPoint.isEmpty()) {
                return meant(text, "has a decimal comma", usual.replace(sides[1], withPoint));
            }
            NumberText second = NumberText.of(sides[1]);
            return second != null && second.rest().isEmpty()
                    ? meant(text, "has no unit", usual + " m", usual + " ft")
                    : QuantityException.of(text, dimension, "is no length by a width");
        }
        if (written.isEmpty()) {
            return QuantityException.of(text, dimension, "has no unit");
        }
        if (LooseText.mean(usual, dimension).isPresent()
                || SECOND_NUMBER.matcher(written).matches()) {
            return twoNumbers(text, usual, dimension);
        }
        String doubtful = UnitWords.doubtful(written);
        if (!doubtful.isEmpty()) {
            return QuantityException.told(text, "is not clear: " + doubtful);
        }
        Optional<String> clear = clear(usual, number, dimension);
        if (clear.isPresent()) {
            return meant(text, "is not clear", clear.get());
        }
        String price = PriceText.bare(usual, dimension);
        if (!price.isEmpty()) {
            return meant(text, WITH_CURRENCY, price);
        }
        if (PriceText.isSum(usual, dimension)) {
            return sum(text, dimension);
        }
        Optional<Dimension> other = Arrays.stream(Dimension.values())
                .filter(candidate -> candidate.find(written) != null)
                .findFirst();
        return other.isPresent()
                ? otherDimension(text, number, dimension, other.get(), in)
                : unknown(text, written, dimension);
    }

    /** Digits behind a number that are no part of it. */
    static QuantityException moreDigits(String text, String usual, Dimension dimension) {
        return LooseText.mean(usual, dimension).isPresent()
                ? twoNumbers(text, usual, dimension)
                : QuantityException.of(
                        text, dimension, "has a number with a comma or a gap; write a decimal point only");
    }

    private static QuantityException twoNumbers(String text, String usual, Dimension dimension) {
        String mean = LooseText.mean(usual, dimension)
                .map(m -> ", such as the mean, \"" + Printable.quote(m) + "\"")
                .orElse("");
        return QuantityException.of(text, dimension, "has two numbers; write one number and one unit" + mean);
    }

    /** What was meant by a slope with its run first, a rate for a duration, or words behind a unit. */
    private static Optional<String> clear(String usual, NumberText number, Dimension dimension) {
        String turned = dimension == Dimension.TILT ? Bearings.turned(usual) : "";
        return turned.isEmpty()
                ? LooseText.hours(number, dimension).or(() -> LooseText.bare(number, dimension))
                : Optional.of(turned);
    }

    private static QuantityException otherDimension(
            String text, NumberText number, Dimension dimension, Dimension other, String in) {
        String is = "is " + other.phrase();
        if (dimension == Dimension.TEMPERATURE && other == Dimension.ANGLE) {
            return meant(text, is, number.written() + " degC", number.written() + " degF");
        }
        if (dimension == Dimension.TILT && other == Dimension.FRACTION) {
            double degrees = Bearings.degrees(number.value() / 100);
            return meant(text, is, String.format(Locale.ROOT, "%.1f deg", degrees));
        }
        String of = dimension == Dimension.MASS_PER_ENERGY ? "kg/kWh" : in;
        int below = of.indexOf('/');
        String written = number.rest();
        for (String unit : List.of(
                written + (below < 0 ? "/h" : of.substring(below)), written.replaceFirst("h$", ""), "per " + written)) {
            Unit found = unit.equals(written) ? null : dimension.find(unit);
            if (found != null) {
                return meant(text, is, number.written() + " " + found.symbol());
            }
        }
        return QuantityException.of(text, dimension, is);
    }

    private static QuantityException unknown(String text, String written, Dimension dimension) {
        String what = "has an unknown unit, \"" + Printable.quote(written) + "\"";
        String nearest = nearest(written, dimension)
                .map(n -> ", did you mean " + n + "?")
                .orElse("");
        return QuantityException.of(text, dimension, what + nearest);
    }

    /**
     * A unit that is one slip away, but not in its first letter, which may be a thousand; a hint that only sounds alike would
     * be followed into a wrong number.
     */
    private static Optional<String> nearest(String written, Dimension dimension) {
        String perTime = written.replaceFirst("/h$", "");
        Unit power = perTime.equals(written) ? null : dimension.find(perTime);
        return power == null
                ? Spelling.nearest(written, dimension.allowedUnits())
                        .filter(n -> n.regionMatches(true, 0, written, 0, 1)
                                && !written.endsWith(n)
                                && Spelling.distance(written.toLowerCase(Locale.ROOT), n.toLowerCase(Locale.ROOT)) == 1)
                : Optional.of(power.symbol());
    }

    private static QuantityException meant(String text, String what, String... meant) {
        return QuantityException.told(
                text, what + "; did you mean \"" + Printable.quote(String.join("\" or \"", meant)) + "\"?");
    }
}
