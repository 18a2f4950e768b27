package dev.warmlane.report;

import com.univocity.parsers.csv.CsvWriter;
import com.univocity.parsers.csv.CsvWriterSettings;
import dev.warmlane.files.Printable;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** A table as csv. */
final class TableCsv {

    /** Decimals of numbers: a tenth of a watt-hour, finer than any input deserves, and files stay small. */
    static final int DECIMALS = 4;

    private TableCsv() {}

    static String of(Table table) {
        CsvWriterSettings settings = new CsvWriterSettings();
        settings.getFormat().setLineSeparator("\n");
        settings.setNullValue("");
        StringWriter text = new StringWriter();
        CsvWriter writer = new CsvWriter(text, settings);
        writer.writeHeaders(table.columns().stream()
                .map(column -> Printable.csvCell(column.csvName()))
                .toList());
        for (List<Cell> row : table.rows()) {
            writer.writeRow(row.stream().map(TableCsv::written).toArray(Object[]::new));
        }
        writer.close();
        return text.toString();
    }

    private static String written(Cell cell) {
        if (cell instanceof Cell.Words words) {
            return Printable.csvCell(words.text());
        }
        return cell instanceof Cell.Value value ? number(value.value()) : "";
    }

    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
