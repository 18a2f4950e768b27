package dev.warmlane.units;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Lengths of two units, as {@code 5 ft 6 in}, {@code 5'6"} and {@code 1 m 80 cm}, and areas given by two sides. */
final class Lengths {

    private static final String NUMBER = "(\\d+(?:\\.\\d+)?(?:[ -]\\d+/\\d+)?|\\d+/\\d+)";
    private static final String FOOT_MARK = "(?:ft\\.?|feet|foot|['\u2032\u2019])";
    private static final String INCH_MARK = "(?:in\\.?|inch(?:es)?|[\"\u2033\u201d]|''|\u2032\u2032)";

    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "(\\d+)\\s*" + FOOT_MARK + "\\s*-?\\s*" + NUMBER + "\\s*" + INCH_MARK + "?", Pattern.CASE_INSENSITIVE);
    private static final Pattern FEET = Pattern.compile(NUMBER + "\\s*['\u2032\u2019]");
    private static final Pattern INCHES = Pattern.compile(NUMBER + "\\s*(?:[\"\u2033\u201d]|''|\u2032\u2032)");
    /** As {@code 1 m 80 cm}, or {@code 1m80} and {@code 1 m 80} as on the Continent. */
    private static final Pattern METRES =
            Pattern.compile("(\\d+)\\s*m(?:\\s+(\\d{1,2})\\s*cm|\\s?(\\d{2})(?:\\s*cm)?)");

    private static final Pattern TIMES =
            Pattern.compile("\\s*(?:(?<![A-Za-z])by(?![A-Za-z])|[x\u00d7*])\\s*", Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE = Pattern.compile("[+-]?[\\d.,]+");

    private static final double INCHES_PER_FOOT = 12;

    private Lengths() {}

    /** A length in m, or empty if the text is none of two units and none with a mark for a unit. */
    static OptionalDouble ofTwo(String usual) {
        Matcher both = FEET_AND_INCHES.matcher(usual);
        if (both.matches()) {
            double inches = number(both.group(2));
            return inches < INCHES_PER_FOOT
                    ? OptionalDouble.of(number(both.group(1)) * Units.FOOT + inches * Units.INCH)
                    : OptionalDouble.empty();
        }
        Matcher metres = METRES.matcher(usual);
        if (metres.matches()) {
            return OptionalDouble.of(
                    (number(metres.group(1)) * 100 + number(metres.group(metres.group(2) == null ? 3 : 2))) / 100);
        }
        Matcher feet = FEET.matcher(usual);
        if (feet.matches()) {
            return OptionalDouble.of(number(feet.group(1)) * Units.FOOT);
        }
        Matcher inches = INCHES.matcher(usual);
        return inches.matches() ? OptionalDouble.of(number(inches.group(1)) * Units.INCH) : OptionalDouble.empty();
    }

    private static double number(String text) {
        NumberText number = NumberText.of(text);
        return number == null ? Double.NaN : number.value();
    }

    /** An area in m² of two sides with a cross between them, or empty if the text is not two lengths. */
    static OptionalDouble area(String usual) {
        String @Nullable [] sides = sides(usual);
        if (sides == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(
                    Quantity.parse(sides[0], Dimension.LENGTH) * Quantity.parse(sides[1], Dimension.LENGTH));
        } catch (QuantityException noLengths) {
            return OptionalDouble.empty();
        }
    }

    /** Two sides as they are written, one with the unit of the other where it has none; null if they are not two. */
    static String @Nullable [] sides(String usual) {
        String[] sides = TIMES.split(usual, -1);
        if (sides.length != 2 || !begins(sides[0]) || !begins(sides[1])) {
            return null;
        }
        NumberText second = NumberText.of(sides[1]);
        if (second != null && BARE.matcher(sides[0]).matches()) {
            return new String[] {sides[0] + " " + second.rest(), sides[1]};
        }
        NumberText first = NumberText.of(sides[0]);
        if (first != null && BARE.matcher(sides[1]).matches()) {
            return new String[] {sides[0], sides[1] + " " + first.rest()};
        }
        return sides;
    }

    /** Whether it is a length by a width by a depth. */
    static boolean isThree(String usual) {
        String[] sides = TIMES.split(usual, -1);
        return sides.length == 3 && begins(sides[0]) && begins(sides[1]) && begins(sides[2]);
    }

    private static boolean begins(String side) {
        return !side.isEmpty() && Character.isDigit(side.charAt(0));
    }
}
