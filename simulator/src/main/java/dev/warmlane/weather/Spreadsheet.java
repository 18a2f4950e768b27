package dev.warmlane.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Undoes what spreadsheets make of a csv file, so that every format meets commas between the columns, decimal points and
 * quotes only where a cell needs them. Which of them a file has is seen in its rows, never guessed: where the rows could
 * mean two things the file is refused.
 */
final class Spreadsheet {

    /** No line of weather has fewer columns. */
    private static final int SEPARATORS_AT_LEAST = 4;

    private static final int HEADER_LINES = 60;
    private static final Pattern POINT = Pattern.compile("[+-]?\\d*\\.\\d+");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d*,\\d+");
    /** A decimal comma, or a comma between the thousands. */
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
    /** A number that ends a header line such as {@code # elevation, m: 250,0}. */
    private static final Pattern AFTER_COLON = Pattern.compile("(.*:\\s*[+-]?\\d+),(\\d+)\\s*$");

    private final char separator;
    private final boolean decimalCommas;

    private Spreadsheet(char separator, boolean decimalCommas) {
        this.separator = separator;
        this.decimalCommas = decimalCommas;
    }

    /** The text as it was meant, line by line; the same where nothing was done to it. */
    static FileText undo(FileText text) throws WeatherFileException {
        char separator = separator(text.line(middle(text)));
        if (separator == ',' && !hasQuotedLines(text)) {
            return text;
        }
        Spreadsheet made = new Spreadsheet(separator, decimalCommas(text, separator));
        return text.rewritten(made::line);
    }

    private static int middle(FileText text) {
        return text.lines() / 2 + 1;
    }

    private static char separator(String row) {
        for (char other : new char[] {';', '\t'}) {
            long count = row.chars().filter(c -> c == other).count();
            if (count >= SEPARATORS_AT_LEAST
                    && count > row.chars().filter(c -> c == ',').count()) {
                return other;
            }
        }
        return ',';
    }

    private static boolean hasQuotedLines(FileText text) {
        boolean quoted = isQuoted(text.line(middle(text)));
        for (int line = 1; line <= HEADER_LINES && !quoted; line++) {
            quoted = isQuoted(text.line(line));
        }
        return quoted;
    }

    private static boolean isQuoted(String line) {
        return line.startsWith("\"");
    }

    /** Looks at the second half of the file, where there are rows only. */
    private static boolean decimalCommas(FileText text, char separator) throws WeatherFileException {
        int points = 0;
        int commas = 0;
        boolean thousandsOnly = true;
        for (int line = middle(text); line <= text.lines(); line++) {
            for (String cell : cells(text.line(line), separator)) {
                if (POINT.matcher(cell).matches()) {
                    points = points == 0 ? line : points;
                } else if (COMMA.matcher(cell).matches()) {
                    commas = commas == 0 ? line : commas;
                    thousandsOnly &= THOUSANDS.matcher(cell).matches();
                }
            }
        }
        if (commas > 0 && (points > 0 || thousandsOnly)) {
            throw text.error(
                    commas,
                    "",
                    points > 0
                            ? "numbers with a comma, and with a point on line " + points
                            : "numbers with a comma that may stand before decimals or between thousands",
                    "decimal points, or decimal commas and semicolons between the columns",
                    "Save the file again with decimal points and without a mark between thousands.");
        }
        return commas > 0;
    }

    private String line(String line) {
        if (separator == ',' && line.indexOf('"') < 0) {
            return line;
        }
        List<String> cells = cells(line, separator);
        boolean remark = cells.get(0).startsWith("#");
        StringBuilder plain = new StringBuilder(line.length());
        for (int i = 0; i < cells.size(); i++) {
            String cell = decimalCommas ? withPoint(cells.get(i)) : cells.get(i);
            boolean quotes = !remark && (cell.indexOf(',') >= 0 || cell.indexOf('"') >= 0);
            plain.append(i == 0 ? "" : ",").append(quotes ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        return plain.toString();
    }

    private static String withPoint(String cell) {
        return COMMA.matcher(cell).matches()
                ? cell.replace(',', '.')
                : AFTER_COLON.matcher(cell).replaceFirst("$1.$2");
    }

    /** The cells of a line without their quotes; a quote that is not closed ends with the line. */
    private static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"' && (quoted || cell.isEmpty())) {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
