package dev.warmlane.fit;

import com.univocity.parsers.common.TextParsingException;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import dev.warmlane.files.BoundedFile;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Reads logs, bills and meter readings from csv files. The first row names the columns, and the name of the value's column
 * ends with its unit after an underscore: {@code time,water_degC} for a log, {@code from,to,bought_kWh} for bills,
 * {@code from,to,water_L} for a meter. Times are {@code 2019-06-01 14:30}, days {@code 2019-06-01}; rows that begin with #
 * are passed over, and so is an empty value. docs/fit.md describes it.
 */
public final class LogFiles {

    private static final int MOST_MEGABYTES = 64;
    private static final int MOST_IN_A_CELL = 200;
    private static final int MOST_COLUMNS = 200;

    private LogFiles() {}

    /**
     * Reads a log: the time in the first column, the temperature in the first whose name ends with a unit of temperature.
     *
     * @param file the file
     * @param utcOffsetHours the time zone that its clock is said to keep, hours ahead of UTC
     * @throws LogFileException if a row or a column cannot be read
     * @throws IOException if it cannot be opened
     */
    public static WaterLog water(Path file, double utcOffsetHours) throws IOException {
        Table table = Table.read(file);
        Value value = table.value(1, Dimension.TEMPERATURE, "degC", "time,water_degC");
        List<WaterLog.Reading> readings = new ArrayList<>();
        for (Row row : table.rows) {
            if (!row.cell(value.column).isEmpty()) {
                LocalDateTime time = time(table, row);
                if (!readings.isEmpty()
                        && !readings.get(readings.size() - 1).clock().isBefore(time)) {
                    throw table.error(
                            row,
                            row.cell(0) + " after "
                                    + readings.get(readings.size() - 1).clock(),
                            "each row later than the one before",
                            "Sort the rows; where a clock was put back, remove the hour that comes twice.");
                }
                try {
                    readings.add(new WaterLog.Reading(time, value.of(table, row)));
                } catch (IllegalArgumentException e) {
                    throw table.error(
                            row,
                            row.cell(value.column),
                            "a temperature of water",
                            "Leave the cell empty where the sensor failed.");
                }
            }
        }
        if (readings.isEmpty()) {
            throw new LogFileException(file, 0, "no reading", "rows of time and temperature", "Take another file.");
        }
        return new WaterLog(String.valueOf(file.getFileName()), utcOffsetHours, readings);
    }

    /** Reads what was bought for the heater between two readings of its meter, in any unit of energy. */
    public static List<Metered> bills(Path file) throws IOException {
        return metered(file, Dimension.ENERGY, "kWh", "from,to,bought_kWh");
    }

    /** Reads what the make-up meter ran up between two readings, in any unit of volume. */
    public static List<Metered> meter(Path file) throws IOException {
        return metered(file, Dimension.VOLUME, "L", "from,to,water_L");
    }

    private static List<Metered> metered(Path file, Dimension dimension, String unit, String example)
            throws IOException {
        Table table = Table.read(file);
        Value value = table.value(2, dimension, unit, example);
        List<Metered> periods = new ArrayList<>();
        for (Row row : table.rows) {
            double amount = value.of(table, row);
            LocalDate from = day(table, row, 0);
            LocalDate to = day(table, row, 1);
            try {
                periods.add(new Metered(from, to, amount));
            } catch (IllegalArgumentException e) {
                throw table.error(
                        row,
                        String.valueOf(e.getMessage()),
                        "the day of a reading, that of the next, and what ran up between",
                        "Correct the row.");
            }
        }
        return periods;
    }

    private static LocalDateTime time(Table table, Row row) throws LogFileException {
        String text = row.cell(0).replace(' ', 'T');
        try {
            return text.length() == 10 ? LocalDate.parse(text).atStartOfDay() : LocalDateTime.parse(text);
        } catch (DateTimeException e) {
            throw table.error(
                    row,
                    quoted(row.cell(0)),
                    "a time such as 2019-06-01 14:30",
                    "Write year, month and day in this order.");
        }
    }

    private static LocalDate day(Table table, Row row, int column) throws LogFileException {
        try {
            return LocalDate.parse(row.cell(column));
        } catch (DateTimeException e) {
            throw table.error(
                    row,
                    quoted(row.cell(column)),
                    "a day such as 2019-06-01",
                    "Write year, month and day in this order.");
        }
    }

    private static String quoted(String cell) {
        return '"' + cell + '"';
    }

    /** A line of the file. */
    private record Row(long line, List<String> cells) {

        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    /** The column of the values, and how their unit becomes the one that is wanted. */
    private record Value(int column, DoubleUnaryOperator toWanted) {

        double of(Table table, Row row) throws LogFileException {
            try {
                return toWanted.applyAsDouble(Double.parseDouble(row.cell(column)));
            } catch (NumberFormatException e) {
                throw table.error(
                        row,
                        row.cell(column).isEmpty() ? "an empty cell" : quoted(row.cell(column)),
                        "a number",
                        "Write decimal points, and no unit: that stands in the column's name.");
            }
        }
    }

    private record Table(Path file, List<String> names, List<Row> rows) {

        static Table read(Path file) throws IOException {
            String text = new String(BoundedFile.read(file, MOST_MEGABYTES, "a csv file"), StandardCharsets.UTF_8);
            CsvParserSettings settings = new CsvParserSettings();
            settings.setReadInputOnSeparateThread(false);
            settings.setLineSeparatorDetectionEnabled(true);
            settings.setDelimiterDetectionEnabled(true, ',', ';', '\t');
            settings.setMaxCharsPerColumn(MOST_IN_A_CELL);
            settings.setMaxColumns(MOST_COLUMNS);
            settings.setNullValue("");
            CsvParser parser = new CsvParser(settings);
            List<String> names = List.of();
            List<Row> rows = new ArrayList<>();
            try {
                parser.beginParsing(new StringReader(text.startsWith("\uFEFF") ? text.substring(1) : text));
                for (@Nullable String @Nullable [] cells = parser.parseNext();
                        cells != null;
                        cells = parser.parseNext()) {
                    List<String> row = new ArrayList<>();
                    for (String cell : cells) {
                        row.add(cell == null ? "" : cell.strip());
                    }
                    if (names.isEmpty()) {
                        names = row;
                    } else {
                        rows.add(new Row(parser.getContext().currentLine(), row));
                    }
                }
            } catch (TextParsingException e) {
                throw new LogFileException(
                        file,
                        e.getLineIndex() + 1,
                        "a row that is none of a csv file",
                        "columns with commas, semicolons or tabs between them",
                        "Save it as csv.");
            }
            return new Table(file, names, rows);
        }

        /** The first column from a place on whose name ends with a unit of a dimension. */
        Value value(int from, Dimension dimension, String wanted, String example) throws LogFileException {
            for (int column = from; column < names.size(); column++) {
                String name = names.get(column);
                String unit = name.substring(name.lastIndexOf('_') + 1);
                try {
                    double none = Quantity.parse("0 " + unit, dimension, wanted);
                    double one = Quantity.parse("1 " + unit, dimension, wanted);
                    return new Value(column, value -> none + (one - none) * value);
                } catch (QuantityException e) {
                    // no unit of this: the next column may have one
                }
            }
            throw new LogFileException(
                    file,
                    1,
                    quoted(String.join(",", names)),
                    "a row of names such as " + example + ", the value's ending with its unit",
                    "Write it as the first row.");
        }

        LogFileException error(Row row, String found, String expected, String remedy) {
            return new LogFileException(file, row.line, found, expected, remedy);
        }
    }
}
