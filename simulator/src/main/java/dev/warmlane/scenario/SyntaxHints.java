package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import dev.warmlane.units.LoneMark;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How to mend a line that is not TOML, for somebody who has never heard of it. */
final class SyntaxHints {

    /** Up to the equals sign. */
    private static final String KEY = "\\s*([A-Za-z_][A-Za-z0-9_]*)\\s*=\\s*";

    private static final String REMARK = "\\s*(?:#.*)?";

    private static final List<Hint> HINTS = List.of(
            hint("\\s*(?://|;|--|'|\\*|rem\\b|REM\\b).*", m -> "a remark begins with #"),
            hint("\\s*\\[([A-Za-z_.]+)\\s*" + REMARK, m -> "a section stands in brackets, [" + m.group(1) + "]"),
            hint(
                    "\\s*\\[[^\\[\\]]*\\]\\]" + REMARK + "|\\s*\\[\\[[^\\[\\]]*\\]" + REMARK,
                    m -> "a section has as many brackets before its name as behind it"),
            hint(
                    "\\s*([A-Za-z_][A-Za-z0-9_]*)\\s*:\\s*" + REMARK,
                    m -> "write a section in brackets, [" + m.group(1) + "]"),
            hint(
                    "\\s*([A-Za-z_][A-Za-z0-9_]*)\\s*(?::=|:|==|=>|->)\\s*(.+?)" + REMARK,
                    m -> "write one = between key and value: " + m.group(1) + " = " + value(m.group(2))),
            hint(
                    "\\s*([A-Za-z_][A-Za-z0-9_]*)\\s*([\"'].*[\"']|-?\\d\\S*)" + REMARK,
                    m -> "write = between key and value: " + m.group(1) + " = " + value(m.group(2))),
            hint(
                    "\\s*([A-Za-z]\\w*(?:[ \\t]+[A-Za-z]\\w*)+)\\s*[=:].*",
                    m -> "a key is one word; write " + m.group(1).strip().replaceAll("\\s+", "_")),
            hint(KEY + REMARK, m -> "a value is missing behind ="),
            hint(
                    KEY + "'[^']*'(?=[^#]*\").*|" + KEY + "\"\\d+'\\s*\\d*\"\"" + REMARK,
                    m -> "a text ends at its second quotation mark; write feet and inches as \"5 ft 6 in\""),
            hint(
                    KEY + ".*\"\\s*[,;]\\s*\\w+\\s*=.*|" + KEY + "-?[\\d.]+\\s*[,;]\\s*\\w+\\s*=.*",
                    m -> "write one key to a line"),
            hint(
                    KEY + "(.*?[\"\\d])\\s*[,;]" + REMARK,
                    m -> "nothing follows the value: " + m.group(1) + " = " + m.group(2)),
            hint(KEY + "\"[^\"]*\\\\.*", m -> "write / instead of a backslash, in paths of Windows too"),
            hint(
                    KEY + "\"([^\"#]*)" + REMARK,
                    m -> "the second quotation mark is missing, \"" + m.group(2).strip() + "\""),
            hint(
                    KEY + "([^\"'#=\\[\\]]*[^\"'#=\\[\\]\\s])\"" + REMARK,
                    m -> "the first quotation mark is missing, \"" + m.group(2).strip() + "\""),
            hint(
                    KEY + "\"([^\"]*)\"\\s*([A-Za-z°%][^\"'#]*?)" + REMARK,
                    m -> "the unit belongs inside the quotes, \"" + m.group(2) + " " + m.group(3) + "\""),
            hint(
                    KEY + "([-+]?[\\d.,]+)\\s*\"([^\"]*)\"" + REMARK,
                    m -> "the unit belongs inside the quotes, \"" + m.group(2) + " " + m.group(3) + "\""),
            hint(KEY + "([-+]?)(\\d[\\d.]*),(\\d+)\\s*([A-Za-z°%][^#\"']*?)?" + REMARK, SyntaxHints::comma),
            hint(KEY + "([-+]?)(\\.\\d+)" + REMARK, m -> "write " + m.group(2) + "0" + m.group(3)),
            hint(KEY + "(\\d{1,2}-\\d{1,2})" + REMARK, m -> "write a date or hours in quotes, \"" + m.group(2) + "\""),
            hint(KEY + "([-+]?[1-9]\\d{0,2}(?:([., '])\\d{3})(?:\\3\\d{3})*)" + REMARK, SyntaxHints::grouped),
            hint(
                    KEY + "(\\d{1,2}[./]\\d{1,2}[./]?(?:\\d{4})?)" + REMARK,
                    m -> "write a date in quotes, \"" + m.group(2) + "\""),
            // money with its sign: a currency has a key of its own
            hint(
                    KEY + "(?:[A-Z]{0,3}[$\u20ac\u00a3]|[A-Z]{3}\\b)\\s*([\\d][^\"#]*?)" + REMARK,
                    m -> "write a sum without its currency, which has a key of its own, and in quotes, \"" + m.group(2)
                            + "\""),
            // a quantity that somebody forgot to put in quotes: depth = 2 m
            hint(
                    KEY + "([-+]?[\\d.]+\\s*[A-Za-z°%$€:'/-][^#\"]*?)" + REMARK,
                    m -> "write a quantity in quotes, \"" + m.group(2) + "\""),
            // a word that somebody forgot to put in quotes: setting = outdoor
            hint(
                    KEY + "([\\p{L}/.$€][^#\"',\\[\\]{}]*?)" + REMARK,
                    m -> "write a word in quotes, \"" + m.group(2).replace('\\', '/') + "\""));

    private SyntaxHints() {}

    /** What to do about a line, or empty where nobody knows. */
    static String of(String source) {
        for (Hint hint : HINTS) {
            Matcher matcher = hint.pattern().matcher(source);
            if (matcher.matches()) {
                return Printable.line(hint.words().apply(matcher));
            }
        }
        return "";
    }

    private static Hint hint(String pattern, Function<Matcher, String> words) {
        return new Hint(Pattern.compile(pattern), words);
    }

    /** What a comma parts, where that is clear; else it goes into quotes, and is asked back. */
    private static String comma(Matcher m) {
        String written = m.group(2) + m.group(3) + "," + m.group(4);
        if (LoneMark.of(written).isPresent()) {
            return m.group(5) == null
                    ? LoneMark.of(written).map(LoneMark::told).orElse("") + ", and where it has a unit in quotes"
                    : "write a quantity in quotes, \"" + written + " " + m.group(5) + "\"";
        }
        String number = m.group(2) + m.group(3).replace(".", "") + "." + m.group(4);
        return m.group(5) == null
                ? "write a decimal point, " + number + ", and where it has a unit quotes, \"" + number + " m\""
                : "write a decimal point and quotes, \"" + number + " " + m.group(5) + "\"";
    }

    /** Thousands that are parted by whatever they are. */
    private static String grouped(Matcher m) {
        return "write " + m.group(2).replaceAll("[^\\d+-]", "") + ", and where it has a unit in quotes";
    }

    /** A value as TOML has it: quoted where it is no number. */
    private static String value(String written) {
        String bare = written.strip();
        return bare.matches("[\"'\\[].*|-?\\d+(?:\\.\\d+)?|true|false") ? bare : "\"" + bare + "\"";
    }

    private record Hint(Pattern pattern, Function<Matcher, String> words) {}
}
