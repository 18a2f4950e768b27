package dev.warmlane;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of a document that a test computes, between {@code <!-- computed: NAME -->} and {@code <!-- end -->}. The test
 * compares it; with {@code -Ddocs.write=true} it writes it.
 */
public final class DocBlock {

    /** Another machine may round the last digit that is printed the other way. */
    private static final double LAST_DIGITS = 1.01;

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])[-+]?\\d+(?:\\.(\\d+))?");

    private DocBlock() {}

    /** Compares a block of a document of {@code docs} with what was computed, or writes it. */
    public static void check(String document, String name, String computed) throws IOException {
        Path file = Path.of("..", "docs", document);
        String text = Files.readString(file).replace("\r\n", "\n");
        Matcher block = Pattern.compile("(?s)(<!-- computed: " + Pattern.quote(name) + " -->\n)(.*?)(<!-- end -->)")
                .matcher(text);
        assertThat(block.find()).as("%s has a block \"%s\"", document, name).isTrue();
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(
                    file, block.replaceFirst(Matcher.quoteReplacement(block.group(1) + computed + block.group(3))));
        } else {
            compare(document + ", " + name + ": write it again with -Ddocs.write=true", block.group(2), computed);
        }
    }

    /** A number with its sign, and 0 without one. */
    public static String signed(double value, int decimals) {
        double digit = Math.pow(10, decimals);
        double rounded = Math.round(value * digit) / digit;
        return String.format(Locale.ROOT, (rounded > 0 ? "+" : "") + "%." + decimals + "f", rounded);
    }

    /** Holds words exactly and numbers within one of their last printed digit. */
    static void compare(String what, String shown, String computed) {
        assertThat(NUMBER.matcher(shown).replaceAll("#"))
                .as(what)
                .isEqualTo(NUMBER.matcher(computed).replaceAll("#"));
        List<MatchResult> numbers = numbers(computed);
        List<MatchResult> printed = numbers(shown);
        for (int i = 0; i < printed.size(); i++) {
            String decimals = printed.get(i).group(1);
            double digit = Math.pow(10, decimals == null ? 0 : -decimals.length());
            double difference = Double.parseDouble(printed.get(i).group())
                    - Double.parseDouble(numbers.get(i).group());
            assertThat(Math.abs(difference))
                    .as(
                            "%s\nshown %s, computed %s, in\n%s",
                            what, printed.get(i).group(), numbers.get(i).group(), computed)
                    .isLessThanOrEqualTo(digit * LAST_DIGITS);
        }
    }

    private static List<MatchResult> numbers(String text) {
        return NUMBER.matcher(text).results().toList();
    }
}
