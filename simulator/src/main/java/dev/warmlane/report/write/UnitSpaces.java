package dev.warmlane.report.write;

import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Keeps a number on one line with the unit or the currency behind it. */
final class UnitSpaces {

    /** A unit that is shown, or a currency in three letters, and nothing of a longer word. */
    private static final String UNIT = "(?:" + units() + "|[A-Z]{3})(?![\\p{L}\\d])";

    private static final Pattern BREAK = Pattern.compile("(?<!\\d)\\s++|\\s++(?!" + UNIT + ")");
    private static final Pattern FIRM = Pattern.compile("(?<=\\d) (?=" + UNIT + ")");

    private UnitSpaces() {}

    /** The pieces of a paragraph between which a line may end. */
    static List<String> pieces(String paragraph) {
        return List.of(BREAK.split(paragraph.strip(), -1));
    }

    /** The same text with spaces at which no browser ends a line. */
    static String firm(String text) {
        return FIRM.matcher(text).replaceAll("\u00a0");
    }

    private static String units() {
        return Stream.concat(
                        Stream.of("degrees"),
                        Arrays.stream(Measure.values()).flatMap(measure -> Arrays.stream(UnitSystem.values())
                                .map(measure::unit)))
                .filter(unit -> !unit.isEmpty())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }
}
