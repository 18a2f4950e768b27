package dev.warmlane.files;

import java.util.Locale;

/**
 * Text from outside made safe to show: a weather file or a scenario may hold characters that command a terminal, turn the
 * direction of what stands beside them, or cannot be seen. Each is written as its number, {@code \u202E}, so that a
 * reader sees that it is there. Everything that is shown or written goes through here.
 */
public final class Printable {

    /** No message quotes more of a file than this, characters. */
    public static final int QUOTED_AT_MOST = 80;

    private static final String CUT = "…";

    /** What a spreadsheet begins a formula with. */
    private static final String FORMULA = "=+-@";

    private Printable() {}

    /** The text on one line: line breaks are written as numbers too. */
    public static String line(String text) {
        return made(text, false);
    }

    /** The same for text of several lines, whose line feeds stay. */
    public static String lines(String text) {
        return made(text, true);
    }

    /** A piece of a file for a message: on one line, cut after {@link #QUOTED_AT_MOST} characters. */
    public static String quote(String text) {
        return cut(text, QUOTED_AT_MOST);
    }

    /** The text on one line, cut after a number of characters. */
    public static String cut(String text, int most) {
        // no more is made printable than is shown: the text may be a whole file
        boolean whole = text.length() <= most;
        int end = whole || !Character.isHighSurrogate(text.charAt(most - 1)) ? Math.min(text.length(), most) : most - 1;
        return line(text.substring(0, end)) + (whole ? "" : CUT);
    }

    /** Whether a person can see every character of a text, and none turns the direction of the others. */
    public static boolean isPrintable(String text) {
        return text.codePoints().allMatch(Printable::isPrintable);
    }

    /**
     * A cell of words for a csv file, on one line. Where a spreadsheet would take it for a formula an apostrophe is put
     * before it.
     */
    public static String csvCell(String text) {
        String line = line(text);
        String stripped = text.strip();
        boolean formula = !stripped.isEmpty() && FORMULA.indexOf(stripped.charAt(0)) >= 0;
        return formula ? "'" + line : line;
    }

    private static String made(String text, boolean lineFeeds) {
        int at = 0;
        while (at < text.length() && shown(text.codePointAt(at), lineFeeds)) {
            at += Character.charCount(text.codePointAt(at));
        }
        if (at == text.length()) {
            return text;
        }
        StringBuilder made = new StringBuilder(text.length() + 16).append(text, 0, at);
        while (at < text.length()) {
            int point = text.codePointAt(at);
            if (shown(point, lineFeeds)) {
                made.appendCodePoint(point);
            } else {
                made.append(String.format(Locale.ROOT, point > 0xFFFF ? "\\U%08X" : "\\u%04X", point));
            }
            at += Character.charCount(point);
        }
        return made.toString();
    }

    private static boolean shown(int point, boolean lineFeeds) {
        return isPrintable(point) || (lineFeeds && point == '\n');
    }

    private static boolean isPrintable(int point) {
        return switch (Character.getType(point)) {
            // FORMAT: direction, zero width, tags; SURROGATE: half a character
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
