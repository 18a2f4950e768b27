package dev.warmlane.report;

import dev.warmlane.files.Printable;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Columns and rows, ready to be shown. Immutable.
 *
 * @param columns the columns
 * @param rows the rows, each with one cell a column
 * @param totals the rows at the end that sum up those above: set apart in text, left out of csv
 */
public record Table(List<Column> columns, List<List<Cell>> rows, List<List<Cell>> totals) {

    /** Copies the lists and checks that every row fits the columns. */
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        totals = totals.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows) {
            checkLength(row, columns);
        }
        for (List<Cell> row : totals) {
            checkLength(row, columns);
        }
    }

    /** The table for a terminal or a mail: aligned columns in a font of fixed width, lines ending with a line feed. */
    public String text() {
        return TableText.of(this);
    }

    /** The cells of a row or total as a person reads them. */
    public List<String> shown(List<Cell> row) {
        return IntStream.range(0, row.size())
                .mapToObj(c -> {
                    if (row.get(c) instanceof Cell.Words words) {
                        return Printable.line(words.text());
                    }
                    return row.get(c) instanceof Cell.Value value
                            ? Numbers.show(value.value(), columns.get(c).decimals())
                            : "-";
                })
                .toList();
    }

    /** The table as csv: one header line of column names, numbers with a point and without separators of thousands. */
    public String csv() {
        return TableCsv.of(this);
    }

    private static void checkLength(List<Cell> row, List<Column> columns) {
        if (row.size() != columns.size()) {
            throw new IllegalArgumentException(
                    "a row has " + row.size() + " cells, the table has " + columns.size() + " columns");
        }
    }
}
