package dev.warmlane.weather;

import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import dev.warmlane.files.Printable;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads comma separated rows into a {@link RawWeather}. The parsing library is known here and nowhere else. */
final class CsvRows {

    /** A line is bounded already; quotes that were taken away and put back can double it. */
    private static final int MOST = 2 * FileText.LONGEST_LINE + 2;

    private static final Pattern DECIMAL_COMMA = Pattern.compile("-?\\d+,\\d+");

    /** What a number is written with. Java reads more than people write: 0x1p3 and 3.0d are numbers to it. */
    private static final String OF_NUMBERS = "0123456789.-+eE";

    private CsvRows() {}

    /** Reads the time of a row: its cells start with those that were asked for, in that order. */
    @FunctionalInterface
    interface TimeCells {
        /** Adds the row with its time. */
        void add(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException;
    }

    /** The cells of one line; an empty cell is an empty string. */
    static String[] cells(String line) {
        CsvParserSettings settings = settings();
        settings.setNullValue("");
        String[] cells = new CsvParser(settings).parseLine(line);
        return cells == null ? new String[0] : cells;
    }

    /**
     * Reads the lines from first to before end; blank ones are passed over, short ones refused, and those that hold
     * more than the columns that are known: which of their cells is too many cannot be told.
     */
    static void read(
            RawWeather raw, int first, int end, int columns, int[] timeColumns, TimeCells time, List<CsvField> fields)
            throws WeatherFileException {
        FileText text = raw.text();
        refuseOpenQuotes(text, first, end);
        fields.forEach(field -> raw.declare(field.column()));
        Integer[] wanted = new Integer[timeColumns.length + fields.size()];
        for (int i = 0; i < timeColumns.length; i++) {
            wanted[i] = timeColumns[i];
        }
        for (int i = 0; i < fields.size(); i++) {
            wanted[timeColumns.length + i] = fields.get(i).index();
        }
        CsvParserSettings settings = settings();
        settings.selectIndexes(wanted);
        CsvParser parser = new CsvParser(settings);
        parser.beginParsing(new StringReader(text.block(first, end)));
        int commas = text.commasWithin(first);
        for (int line = first; line < end; line++) {
            @Nullable String[] cells = parser.parseNext();
            if (text.isBlank(line)) {
                continue;
            }
            int here = text.commasIn(line);
            if (cells == null || here < commas) {
                throw text.error(
                        line,
                        "",
                        (here + 1) + " columns",
                        (commas + 1) + " as in the rows before",
                        line == text.lines()
                                ? "The file ends within this line, it was cut off: fetch it again."
                                : "The line is cut off or broken: fetch the file again, or complete the line.");
            }
            refuseSurplus(text, line, columns);
            time.add(raw, line, cells);
            for (int i = 0; i < fields.size(); i++) {
                CsvField field = fields.get(i);
                String cell = cells[timeColumns.length + i];
                if (cell != null) {
                    double value = number(text, line, field.name(), cell);
                    if (field.missing().test(value)) {
                        raw.missing(field.column(), value);
                    } else {
                        raw.set(field.column(), value * field.scale());
                    }
                }
            }
        }
        parser.stopParsing();
    }

    private static void refuseSurplus(FileText text, int line, int columns) throws WeatherFileException {
        if (text.commasWithin(line) < columns) {
            return;
        }
        String[] cells = cells(text.line(line));
        for (int i = cells.length - 1; i >= columns; i--) {
            if (!cells[i].isBlank()) {
                throw text.error(
                        line,
                        "",
                        (i + 1) + " columns, \"" + Printable.quote(cells[i]) + "\" in the last",
                        columns + " at most",
                        "A comma too many, or a decimal comma, moves all values behind it: correct the line.");
            }
        }
    }

    /** The parser would take the lines after a quote without a partner for one cell. */
    private static void refuseOpenQuotes(FileText text, int first, int end) throws WeatherFileException {
        for (int line = first; line < end; line++) {
            if (hasOpenQuote(text.line(line))) {
                throw text.error(
                        line,
                        "",
                        "a cell with a quote (\") that has no partner",
                        "two of them or none",
                        "Remove the quote.");
            }
        }
    }

    private static boolean hasOpenQuote(String line) {
        if (line.indexOf('"') < 0) {
            return false;
        }
        boolean quoted = false;
        boolean begins = true;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = quoted ? false : begins;
            }
            begins = !quoted && (c == ',' || (begins && c == ' '));
        }
        return quoted;
    }

    /** A number in a cell of a data row. */
    static double number(FileText text, int line, String column, @Nullable String cell) throws WeatherFileException {
        try {
            if (cell != null && isWrittenAsNumber(cell)) {
                double value = Double.parseDouble(cell);
                if (!Double.isInfinite(value)) {
                    return value;
                }
            }
        } catch (NumberFormatException e) {
            // told below, together with the empty cell
        }
        throw text.error(
                line,
                column,
                cell == null ? "an empty cell" : "\"" + cell + "\"",
                "a number",
                cell != null && DECIMAL_COMMA.matcher(cell).matches()
                        ? "Write decimal points, not commas."
                        : "Correct the cell, or write the format's code for a missing value.");
    }

    /** Without a regular expression, which took a quarter of the time of reading. NaN is a missing value. */
    private static boolean isWrittenAsNumber(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            if (OF_NUMBERS.indexOf(cell.charAt(i)) < 0) {
                return cell.equals("NaN");
            }
        }
        return true;
    }

    /** A whole number in a cell of a data row. */
    static int whole(FileText text, int line, String column, @Nullable String cell) throws WeatherFileException {
        double value = number(text, line, column, cell);
        if (value != Math.rint(value)) {
            throw text.error(line, column, "\"" + cell + "\"", "a whole number", "Correct the cell.");
        }
        return (int) value;
    }

    private static CsvParserSettings settings() {
        CsvParserSettings settings = new CsvParserSettings();
        settings.setReadInputOnSeparateThread(false);
        settings.setLineSeparatorDetectionEnabled(false);
        settings.getFormat().setLineSeparator("\n");
        settings.getFormat().setComment('\0');
        settings.setSkipEmptyLines(false);
        settings.setMaxColumns(MOST);
        settings.setMaxCharsPerColumn(MOST);
        return settings;
    }
}
