package dev.warmlane.report.page;

import dev.warmlane.report.Cell;
import dev.warmlane.report.Column;
import dev.warmlane.report.Table;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table as the template takes it.
 *
 * @param head headings
 * @param hasUnits whether any column has a unit
 * @param rows its rows
 * @param totals rows that sum up those above
 */
record HtmlTable(List<Head> head, boolean hasUnits, List<Row> rows, List<Row> totals) {

    /**
     * A heading.
     *
     * @param lines its lines
     * @param unit the unit of the column
     * @param kind how the column is set, the name of a style
     */
    record Head(List<String> lines, String unit, String kind) {}

    /**
     * A row.
     *
     * @param cells its cells
     */
    record Row(List<Entry> cells) {}

    /**
     * A cell.
     *
     * @param text what stands in it
     * @param kind how it is set, the name of a style
     */
    record Entry(String text, String kind) {}

    static HtmlTable of(Table table) {
        return new HtmlTable(
                table.columns().stream().map(HtmlTable::head).toList(),
                table.columns().stream().anyMatch(column -> !column.unit().isEmpty()),
                table.rows().stream().map(row -> row(table, row)).toList(),
                table.totals().stream().map(row -> row(table, row)).toList());
    }

    private static Head head(Column column) {
        return new Head(column.header().lines().toList(), column.unit(), kind(column));
    }

    private static Row row(Table table, List<Cell> cells) {
        List<String> shown = table.shown(cells);
        return new Row(IntStream.range(0, shown.size())
                .mapToObj(c -> new Entry(shown.get(c), kind(table.columns().get(c))))
                .toList());
    }

    private static String kind(Column column) {
        return column.words() ? "words" : "number";
    }
}
