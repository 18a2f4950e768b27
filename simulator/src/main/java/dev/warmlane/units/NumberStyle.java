package dev.warmlane.units;

import java.util.Locale;

/** How a number is written for people. Each constant is named by what stands between thousands, then before decimals. */
public enum NumberStyle {
    /** {@code 1,234.5}. */
    COMMA_POINT(',', '.'),
    /** {@code 1.234,5}. */
    POINT_COMMA('.', ','),
    /** {@code 1 234,5}. */
    SPACE_COMMA(NumberStyle.FIRM_SPACE, ','),
    /** {@code 1 234.5}. */
    SPACE_POINT(NumberStyle.FIRM_SPACE, '.'),
    /** {@code 1'234.5}. */
    APOSTROPHE_POINT('\'', '.');

    /** A space at which no line breaks. */
    private static final char FIRM_SPACE = '\u00a0';

    /** A hyphen before a number or a currency sign is hardly seen, and a line may end at it. */
    static final char MINUS = '\u2212';

    private final char thousands;
    private final char decimals;

    NumberStyle(char thousands, char decimals) {
        this.thousands = thousands;
        this.decimals = decimals;
    }

    /** A number with some decimals and a true minus; never a zero with a sign. */
    public String show(double value, int places) {
        String text = String.format(Locale.ROOT, "%,." + places + "f", value);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return written(zero && text.startsWith("-") ? text.substring(1) : text);
    }

    /** A text in which numbers are written with a decimal point and without thousands, with decimals in this style. */
    public String decimals(String text) {
        return text.replaceAll("(?<=\\d)\\.(?=\\d)", String.valueOf(decimals));
    }

    private String written(String number) {
        return number.codePoints()
                .map(c -> c == ',' ? thousands : c == '.' ? decimals : c == '-' ? MINUS : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Whether decimals stand behind a point. */
    boolean points() {
        return decimals == '.';
    }

    /** A number in this style as one writes it by hand. */
    public String sample() {
        return show(1234.5, 1).replace(FIRM_SPACE, ' ');
    }
}
