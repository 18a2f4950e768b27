package dev.warmlane.units;

import dev.warmlane.files.Printable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with one comma or one point in it, and three digits behind: "1.250 m2" is 1250 to one reader and 1.25 to the next.
 * Both readings stand here, each as it is clear to everybody. Which of them are possible says who knows what the number is
 * of, {@link Range} first of all: where only one is, it is taken or offered, where both are they are asked back.
 *
 * @param point whether the mark is a point, else a comma
 * @param thousands the text if the mark parts thousands, without it
 * @param decimals the text if the mark parts decimals, with a point and more or fewer digits than three behind it
 */
public record LoneMark(boolean point, String thousands, String decimals) {

    /** No mark parts thousands behind a zero. */
    private static final Pattern TEXT = Pattern.compile("([+-]?[1-9]\\d{0,2})([.,])(\\d{3})(?![\\d.,'\u2019])(.*)");

    /** The mark of a text that begins with such a number. */
    public static Optional<LoneMark> of(String text) {
        Matcher found = TEXT.matcher(NumberText.usual(text));
        if (!found.matches()) {
            return Optional.empty();
        }
        String whole = found.group(1);
        String digits = found.group(3);
        String rest = found.group(4);
        String shorter = digits.replaceFirst("0+$", "");
        String clear = shorter.isEmpty() ? whole : whole + "." + (shorter.equals(digits) ? digits + "0" : shorter);
        return Optional.of(new LoneMark(found.group(2).equals("."), whole + digits + rest, clear + rest));
    }

    /** What is to be said where both readings are possible. */
    public String told() {
        return "its " + (point ? "point" : "comma") + " may part thousands or decimals; write \""
                + Printable.quote(thousands) + "\", or \"" + Printable.quote(decimals) + "\"";
    }
}
