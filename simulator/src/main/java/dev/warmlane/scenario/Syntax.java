package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Parses TOML; its own errors become findings. */
final class Syntax {

    private static final Pattern TYPOGRAPHIC_QUOTE = Pattern.compile("[\u2018-\u201F\u00AB\u00BB]");

    /** How the parser calls it. */
    private static final Pattern TWICE = Pattern.compile("^(\\S+) previously defined at line (\\d+)");

    /** A file with more errors than this is no scenario file. */
    private static final int TOLD_AT_MOST = 20;

    private static final int MESSAGE_AT_MOST = 300;

    /** A scenario needs two. */
    private static final int DEPTH_AT_MOST = 32;

    /** A line that a hint can be given on, characters; the patterns take long for more. */
    private static final int LINE_AT_MOST = 500;

    private Syntax() {}

    /**
     * The tree of a text.
     *
     * @throws ScenarioException with all errors of syntax, if there are any
     */
    static TomlTable parse(String text, Notes notes) {
        notes.read(text);
        refuseDepth(text, notes);
        TomlParseResult result = Toml.parse(text);
        Set<Integer> hinted = new HashSet<>();
        int told = 0;
        int quoted = 0;
        @Nullable TomlPosition firstQuote = null;
        for (TomlParseError error : result.errors()) {
            TomlPosition at = error.position();
            String source = notes.line(at.line());
            if (TYPOGRAPHIC_QUOTE.matcher(beforeRemark(source)).find()) {
                firstQuote = firstQuote == null ? at : firstQuote;
                quoted++;
            } else if (hint(source).isEmpty() || hinted.add(at.line())) {
                // one slip may be several errors to the parser, but has one mend
                if (told++ < TOLD_AT_MOST) {
                    notes.error(at.line(), at.column(), message(error, source));
                }
            }
        }
        if (firstQuote != null) {
            notes.error(
                    firstQuote.line(),
                    firstQuote.column(),
                    "typographic quotes" + (quoted > 1 ? ", here and in " + (quoted - 1) + " more places" : "")
                            + "; write straight quotes, \"");
        }
        if (told > TOLD_AT_MOST) {
            notes.error(0, 0, told + " errors, the first " + TOLD_AT_MOST + " below: is this a scenario file?");
        }
        notes.throwIfAny();
        return result;
    }

    /** The parser calls itself for every bracket, so they are counted before; text in quotes has no such number. */
    private static void refuseDepth(String text, Notes notes) {
        int depth = 0;
        int line = 1;
        int column = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            column++;
            if (c == '\n') {
                line++;
                column = 0;
            } else if (c == '[' || c == '{') {
                depth++;
            } else if (depth > 0 && (c == ']' || c == '}')) {
                depth--;
            }
            if (depth > DEPTH_AT_MOST) {
                notes.error(
                        line,
                        column,
                        "brackets within brackets, more than " + DEPTH_AT_MOST + " deep; is this a scenario file?");
                notes.throwIfAny();
            }
        }
    }

    private static String beforeRemark(String source) {
        int remark = source.indexOf('#');
        return remark < 0 ? source : source.substring(0, remark);
    }

    private static String message(TomlParseError error, String source) {
        Matcher twice = TWICE.matcher(String.valueOf(error.getMessage()));
        if (twice.find()) {
            return "cannot be read: " + Printable.quote(twice.group(1)) + " stands twice, first in line "
                    + twice.group(2) + "; take one of them out";
        }
        String hint = hint(source);
        return hint.isEmpty()
                ? "cannot be read: " + Printable.cut(String.valueOf(error.getMessage()), MESSAGE_AT_MOST)
                        + "; a line is a section, [pool], or a key with its value, depth = \"1.8 m\""
                : "cannot be read: " + hint;
    }

    private static String hint(String source) {
        return source.length() > LINE_AT_MOST ? "" : SyntaxHints.of(source);
    }
}
