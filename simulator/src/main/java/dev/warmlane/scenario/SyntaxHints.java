package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
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

    /** Three digits behind the only comma are thousands to one reader and decimals to the next. */
    private static String comma(Matcher m) {
        if (m.group(4).length() == 3 && m.group(3).matches("[1-9]\\d{0,2}") && m.group(5) == null) {
            String whole = m.group(2) + m.group(3) + m.group(4);
            return "may be " + whole + " or " + m.group(2) + m.group(3) + "." + m.group(4)
                    + "; write it without a comma, and where it has a unit in quotes";
        }
        String number = m.group(2) + m.group(3).replace(".", "") + "." + m.group(4);
        return m.group(5) == null
                ? "write a decimal point, " + number + ", and where it has a unit quotes, \"" + number + " m\""
                : "write a decimal point and quotes, \"" + number + " " + m.group(5) + "\"";
    }

    /** A value as TOML has it: quoted where it is no number. */
    private static String value(String written) {
        String bare = written.strip();
        return bare.matches("[\"'\\[].*|-?\\d+(?:\\.\\d+)?|true|false") ? bare : "\"" + bare + "\"";
    }

    private record Hint(Pattern pattern, Function<Matcher, String> words) {}
}
