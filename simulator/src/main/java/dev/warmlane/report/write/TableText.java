package dev.warmlane.report.write;

import dev.warmlane.files.Printable;
import dev.warmlane.report.Column;
import dev.warmlane.report.Table;
import dev.warmlane.units.Notation;
import java.util.ArrayList;
import java.util.List;

/** A table in a font of fixed width. */
final class TableText {

    private static final String GAP = "  ";

    private TableText() {}

    /** Its caption, headings, rows and totals, a line each. */
    static List<String> lines(Table table, Notation notation) {
        List<Column> columns = table.columns();
        List<List<String>> head = head(table);
        List<List<String>> body =
                table.rows().stream().map(row -> table.shown(row, notation)).toList();
        List<List<String>> totals =
                table.totals().stream().map(row -> table.shown(row, notation)).toList();
        int[] width = new int[columns.size()];
        for (List<List<String>> part : List.of(head, body, totals)) {
            for (List<String> row : part) {
                for (int c = 0; c < width.length; c++) {
                    width[c] = Math.max(width[c], length(row.get(c)));
                }
            }
        }
        List<String> lines = new ArrayList<>();
        if (!table.caption().isEmpty()) {
            lines.add(Printable.line(table.caption()));
        }
        append(lines, head, columns, width);
        lines.add(rule(width));
        append(lines, body, columns, width);
        if (!totals.isEmpty()) {
            lines.add(rule(width));
            append(lines, totals, columns, width);
        }
        return lines;
    }

    /** Headings of several lines stand on the line above the units, which only a table with units has. */
    private static List<List<String>> head(Table table) {
        List<Column> columns = table.columns();
        List<List<String>> lines = new ArrayList<>();
        int tallest = columns.stream()
                .mapToInt(c -> c.header().split("\n", -1).length)
                .max()
                .orElse(1);
        for (int line = 0; line < tallest; line++) {
            int at = line - tallest;
            lines.add(columns.stream()
                    .map(c -> {
                        String[] parts = c.header().split("\n", -1);
                        int part = parts.length + at;
                        return part >= 0 ? parts[part] : "";
                    })
                    .toList());
        }
        if (table.hasUnits()) {
            lines.add(columns.stream().map(Column::unit).toList());
        }
        return lines;
    }

    private static void append(List<String> lines, List<List<String>> rows, List<Column> columns, int[] width) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < width.length; c++) {
                String padding = " ".repeat(width[c] - length(row.get(c)));
                line.append(c == 0 ? "" : GAP)
                        .append(columns.get(c).words() ? row.get(c) + padding : padding + row.get(c));
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    private static String rule(int[] width) {
        int total = GAP.length() * (width.length - 1);
        for (int w : width) {
            total += w;
        }
        return "-".repeat(total);
    }

    /** Characters as a person counts them, not Java's. */
    private static int length(String words) {
        return words.codePointCount(0, words.length());
    }
}
