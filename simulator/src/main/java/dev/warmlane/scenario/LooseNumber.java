package dev.warmlane.scenario;

import dev.warmlane.units.LoneMark;
import dev.warmlane.units.PriceText;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import dev.warmlane.units.Range;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people write around a plain number: "80 panels", "about 60", "1.850 EUR", "$32k". Nothing of it is taken as it
 * stands; the number that was probably meant is found, so that it can be asked back.
 */
final class LooseNumber {

    private static final String CURRENCY = PriceText.CURRENCY;

    private static final Pattern TEXT = Pattern.compile("(?:(?i:about|approx\\.?|around|ca\\.?)\\s+|~\\s*|" + CURRENCY
            + "\\s*)*(\\d.*?)(?:[.,]-{1,2})?(?:\\s*(?:" + CURRENCY + "|\\p{L}+\\.?|/))*");

    private static final Pattern FROM_TO =
            Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:-|\u2013|to)\\s*(\\d+(?:\\.\\d+)?)(?:\\s*\\p{L}+)*");

    /** Thousands by their letter. */
    private static final Pattern KILO = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s?[kK]\\b.*");

    private LooseNumber() {}

    /** What is to be said of a text with a number in it, to follow the message; empty where nobody knows. */
    static String meant(String text, Range range) {
        Matcher both = FROM_TO.matcher(text);
        if (both.matches()) {
            double mean = (Double.parseDouble(both.group(1)) + Double.parseDouble(both.group(2))) / 2;
            return offer(Quantity.plain(range.holds(mean) ? Math.rint(mean) : mean), range)
                    .map(m -> "; two numbers; their mean is " + m + "; did you mean " + m + "?")
                    .orElse("");
        }
        Matcher found = TEXT.matcher(text);
        if (!found.matches()) {
            return "";
        }
        Matcher kilo = KILO.matcher(text.replaceFirst("^[^\\d]+", ""));
        String number =
                kilo.matches() ? Quantity.plain(1000 * Double.parseDouble(kilo.group(1))) : withPoint(found.group(1));
        if (number.equals(text)) {
            return "";
        }
        try {
            return offer(Quantity.plain(range.read(number)), range)
                    .map(m -> "; did you mean " + m + "?")
                    .orElse("");
        } catch (QuantityException unclear) {
            return LoneMark.of(number).map(mark -> "; " + mark.told()).orElse("");
        }
    }

    /** The decimal comma of money, 1.850,00. */
    private static String withPoint(String number) {
        Matcher comma = Pattern.compile("(\\d+(?:\\.\\d{3})*),(\\d{1,2})").matcher(number);
        return comma.matches() ? comma.group(1).replace(".", "") + "." + comma.group(2) : number;
    }

    private static Optional<String> offer(String number, Range range) {
        return range.holds(Double.parseDouble(number)) ? Optional.of(number) : Optional.empty();
    }
}
