package dev.warmlane.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A price with the sign or the letters of a currency in it, or in hundredths of one, and what it is without. */
public final class PriceText {

    /** A pattern of what stands before or behind the number: {@code $}, {@code A$}, {@code EUR}. */
    public static final String CURRENCY =
            "(?:[A-Z]{0,3}[$\u20ac\u00a3\u00a5]|[A-Z]{3}\\b|(?i:euros?|dollars?|pounds?)\\b)";

    private static final String HUNDREDTH = "(?i:(?:ct|cts|cents?|c|p|pence)\\b|\u00a2)";

    private static final Pattern LEADING = Pattern.compile("(" + HUNDREDTH + "|" + CURRENCY + ")\\s*(\\d.*)");

    private static final Pattern TRAILING = Pattern.compile("(" + HUNDREDTH + "|" + CURRENCY + ")\\s*(.*)");

    private PriceText() {}

    /** The price without its currency, or empty if the text is no price of the dimension with one. */
    static String bare(String usual, Dimension dimension) {
        if (!isPrice(dimension)) {
            return "";
        }
        Matcher leading = LEADING.matcher(usual);
        NumberText number = NumberText.of(leading.matches() ? leading.group(2) : usual);
        if (number == null) {
            return "";
        }
        if (leading.matches()) {
            return price(number, leading.group(1), dimension.find(number.rest()));
        }
        Matcher trailing = TRAILING.matcher(number.rest());
        return trailing.matches() ? price(number, trailing.group(1), dimension.find(trailing.group(2))) : "";
    }

    /** Whether a text is an amount of money and nothing more. */
    static boolean isSum(String usual, Dimension dimension) {
        Matcher leading = LEADING.matcher(usual);
        NumberText number = NumberText.of(leading.matches() ? leading.group(2) : usual);
        return isPrice(dimension)
                && number != null
                && number.rest().matches(leading.matches() ? "" : CURRENCY + "|" + HUNDREDTH);
    }

    private static boolean isPrice(Dimension dimension) {
        return dimension == Dimension.PRICE_PER_ENERGY || dimension == Dimension.PRICE_PER_AREA;
    }

    private static String price(NumberText number, String currency, @Nullable Unit unit) {
        if (unit == null) {
            return "";
        }
        String amount = currency.matches(HUNDREDTH) ? Quantity.plain(number.value() / 100) : number.written();
        return amount + " " + unit.symbol();
    }
}
