package dev.warmlane.report;

import dev.warmlane.files.Printable;
import dev.warmlane.units.Notation;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Columns and rows, ready to be shown. Immutable.
 *
 * @param caption the words above it; empty for none
 * @param columns the columns
 * @param rows the rows, each with one cell a column
 * @param totals the rows at the end that sum up those above: set apart in text, left out of csv
 */
public record Table(String caption, List<Column> columns, List<List<Cell>> rows, List<List<Cell>> totals)
        implements Block {

    /** Copies the lists and checks that every row fits the columns. */
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        totals = totals.stream().map(List::copyOf).toList();
        int wide = columns.size();
        Stream.concat(rows.stream(), totals.stream())
                .filter(row -> row.size() != wide)
                .findFirst()
                .ifPresent(row -> {
                    throw new IllegalArgumentException(
                            "a row has " + row.size() + " cells, the table has " + wide + " columns");
                });
    }

    /** A table without words above it. */
    public Table(List<Column> columns, List<List<Cell>> rows, List<List<Cell>> totals) {
        this("", columns, rows, totals);
    }

    /** The same with words above it. */
    Table captioned(String words) {
        return new Table(words, columns, rows, totals);
    }

    /** Whether any column has a unit. */
    public boolean hasUnits() {
        return columns.stream().anyMatch(column -> !column.unit().isEmpty());
    }

    /** The cells of a row or total as a person reads them. */
    public List<String> shown(List<Cell> row, Notation notation) {
        return IntStream.range(0, row.size())
                .mapToObj(c -> row.get(c)
                        .match(
                                words -> Printable.line(words.text()),
                                number -> notation.show(
                                        number.value(), columns.get(c).decimals()),
                                empty -> "-"))
                .toList();
    }

    @Override
    public boolean inColumns() {
        return true;
    }

    @Override
    public <T> T as(Kinds<T> kinds) {
        return kinds.table(this);
    }
}
