package dev.warmlane.weather;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises what is no weather file, or would be one but for the way it was saved. */
final class Misfit {

    private static final Pattern SECTION = Pattern.compile("\\s*(\\[{1,2}[a-z_.]+\\]{1,2})\\s*(#.*)?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(^|[;\\t])-?\\d+,\\d+([;\\t]|$)");
    private static final int LINES_WITH_A_SECTION = 200;
    /** No line of weather has fewer columns. */
    private static final int SEPARATORS_AT_LEAST = 4;

    private static final String SAVE_AGAIN = "Save the file again as csv with commas between the columns and decimal"
            + " points; a spreadsheet takes both from the language of the machine.";

    private Misfit() {}

    /** Refuses what no format can read even where its beginning looks like one. */
    static void refuse(FileText text) throws WeatherFileException {
        scenario(text);
        separators(text);
    }

    private static void scenario(FileText text) throws WeatherFileException {
        for (int line = 1; line <= Math.min(text.lines(), LINES_WITH_A_SECTION); line++) {
            Matcher section = SECTION.matcher(text.line(line));
            if (section.matches()) {
                throw text.error(
                        line,
                        "",
                        "the section " + section.group(1) + ", as a scenario file has",
                        "a weather file",
                        "Give the weather file itself; the scenario names it in [site] as weather.");
            }
        }
    }

    private static void separators(FileText text) throws WeatherFileException {
        int middle = text.lines() / 2 + 1;
        String row = text.line(middle);
        for (char separator : new char[] {';', '\t'}) {
            int count = count(row, separator);
            if (count >= SEPARATORS_AT_LEAST && count > count(row, ',')) {
                throw text.error(
                        middle,
                        "",
                        (separator == ';' ? "semicolons" : "tabs") + " between the columns"
                                + (DECIMAL_COMMA.matcher(row).find() ? ", and decimal commas" : ""),
                        "commas between the columns and decimal points",
                        SAVE_AGAIN);
            }
        }
    }

    private static int count(String row, char wanted) {
        return (int) row.chars().filter(c -> c == wanted).count();
    }

    /** Refuses rows with every cell in quotes, which hide the beginning that a format is known by. */
    static void refuseQuoted(FileText text) throws WeatherFileException {
        String first = text.line(1);
        if (first.startsWith("\"") && first.contains("\",\"")) {
            throw text.error(
                    1,
                    "",
                    "every cell in quotes",
                    "cells without quotes",
                    "Save the file again with quotes only where a cell needs them.");
        }
    }
}
