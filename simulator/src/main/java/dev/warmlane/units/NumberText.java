package dev.warmlane.units;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The number that a text begins with, and what follows it. Read are decimal points, exponents, fractions as in
 * {@code 5 1/2}, and thousands parted by blanks, apostrophes, commas or several points.
 *
 * @param value the number
 * @param rest what follows, without blanks around it
 * @param written the number as it stands in the text
 * @param comma whether a single comma stands before three digits, so that it may part thousands or decimals
 */
record NumberText(double value, String rest, String written, boolean comma) {

    private static final String SIGN = "([+-]?)";

    /** A whole number and a fraction, or a fraction alone; what follows must not be another part of a number. */
    private static final Pattern FRACTION =
            Pattern.compile(SIGN + "(?:(\\d+)(?:\\s+|\\s*-\\s*))?(\\d+)/(\\d+)(?![\\d.,/])(.*)");

    /** The parts that rulers and recipes have; "6/9 ft" is from six to nine. */
    private static final Pattern OF_A_RULER = Pattern.compile("\\d{1,2}/0*(?:2|3|4|5|8|10|16|32|64)");

    /** Thousands: the same mark between all groups, decimals only behind the last. */
    private static final Pattern GROUPS = Pattern.compile(
            SIGN + "([1-9]\\d{0,2})((?:([, '\u2019])\\d{3})(?:\\4\\d{3})*)(\\.\\d+)?(?![\\d.,'\u2019])(.*)");

    /** Thousands parted by points, which only more than one of them is sure to do. */
    private static final Pattern POINTS =
            Pattern.compile(SIGN + "([1-9]\\d{0,2}(?:\\.\\d{3}){2,})(?![\\d.,'\u2019])(.*)");

    private static final Pattern PLAIN = Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)(.*)");

    /** As decimals are written where a comma parts them, with or without points between thousands. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([+-]?\\d+(?:\\.\\d{3})*),(\\d+)(?![\\d.,])(.*)");

    /** Digits, signs and letters as wide as an ideograph; each lies 0xFEE0 behind the usual one (Unicode). */
    private static final Pattern FULL_WIDTH = Pattern.compile("[\uFF0B-\uFF19\uFF21-\uFF3A\uFF41-\uFF5A]");

    private static final Pattern VULGAR = Pattern.compile("\\s*([½¼¾⅓⅔⅛⅜⅝⅞])");

    private static final Map<String, String> FRACTIONS = Map.of(
            "½", "1/2", "¼", "1/4", "¾", "3/4", "⅓", "1/3", "⅔", "2/3", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8");

    /** The text with a usual minus, blanks and width of characters, and with fractions of several characters. */
    static String usual(String text) {
        String plain = text.strip().replace('\u2212', '-').replaceAll("[\\u00a0\\u202f\\u2009\\u3000]", " ");
        plain = FULL_WIDTH
                .matcher(plain)
                .replaceAll(c -> String.valueOf((char) (c.group().charAt(0) - 0xFEE0)));
        return VULGAR.matcher(plain).replaceAll(NumberText::fraction).strip();
    }

    private static String fraction(MatchResult found) {
        return " " + FRACTIONS.get(found.group(1));
    }

    /** The number at the beginning of a text that {@link #usual} has made, or null if it does not begin with one. */
    static @Nullable NumberText of(String usual) {
        Matcher fraction = FRACTION.matcher(usual);
        if (fraction.matches()
                && OF_A_RULER
                        .matcher(fraction.group(3) + "/" + fraction.group(4))
                        .matches()) {
            double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
            double part = Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4));
            return made(usual, signed(fraction.group(1), whole + part), fraction.group(5), false);
        }
        Matcher groups = GROUPS.matcher(usual);
        if (groups.matches()) {
            String decimals = groups.group(5) == null ? "" : groups.group(5);
            double value = Double.parseDouble(groups.group(2) + groups.group(3).replaceAll("\\D", "") + decimals);
            boolean single = groups.group(4).equals(",") && groups.group(3).length() == 4 && decimals.isEmpty();
            return made(usual, signed(groups.group(1), value), groups.group(6), single);
        }
        Matcher points = POINTS.matcher(usual);
        if (points.matches()) {
            double value = Double.parseDouble(points.group(2).replace(".", ""));
            return made(usual, signed(points.group(1), value), points.group(3), false);
        }
        Matcher plain = PLAIN.matcher(usual);
        return plain.matches() ? made(usual, Double.parseDouble(plain.group(1)), plain.group(2), false) : null;
    }

    /** The text with a decimal point for a decimal comma, or empty if it has none. */
    static String withPoint(String usual) {
        Matcher comma = DECIMAL_COMMA.matcher(usual);
        return comma.matches()
                ? comma.group(1).replace(".", "") + "." + comma.group(2)
                        + comma.group(3).replaceAll("(?<=\\d),(?=\\d{1,2}(?!\\d))", ".")
                : "";
    }

    private static NumberText made(String text, double value, String rest, boolean comma) {
        String written = text.substring(0, text.length() - rest.length()).strip();
        return new NumberText(value, rest.strip(), written, comma);
    }

    private static double signed(String sign, double value) {
        return sign.equals("-") ? -value : value;
    }
}
