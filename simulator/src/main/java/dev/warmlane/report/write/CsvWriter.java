package dev.warmlane.report.write;

import com.univocity.parsers.csv.CsvWriterSettings;
import dev.warmlane.files.Printable;
import dev.warmlane.report.Cell;
import dev.warmlane.report.Table;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Tables as csv: one line of column names, numbers with a point and without separators of thousands, no totals. */
public final class CsvWriter {

    /** Decimals of numbers: a tenth of a watt-hour, finer than any input deserves, and files stay small. */
    static final int DECIMALS = 4;

    private CsvWriter() {}

    /** The csv file of a table, lines ending with a line feed. */
    public static String csv(Table table) {
        CsvWriterSettings settings = new CsvWriterSettings();
        settings.getFormat().setLineSeparator("\n");
        settings.setNullValue("");
        StringWriter text = new StringWriter();
        com.univocity.parsers.csv.CsvWriter writer = new com.univocity.parsers.csv.CsvWriter(text, settings);
        writer.writeHeaders(table.columns().stream()
                .map(column -> Printable.csvCell(column.csvName()))
                .toList());
        for (List<Cell> row : table.rows()) {
            writer.writeRow(row.stream().map(CsvWriter::written).toArray(Object[]::new));
        }
        writer.close();
        return text.toString();
    }

    private static String written(Cell cell) {
        return cell.match(words -> Printable.csvCell(words.text()), number -> number(number.value()), empty -> "");
    }

    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
