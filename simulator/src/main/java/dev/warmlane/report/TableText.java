package dev.warmlane.report;

import java.util.ArrayList;
import java.util.List;

/** A table in a font of fixed width. */
final class TableText {

    private static final String GAP = "  ";

    private TableText() {}

    static String of(Table table) {
        List<Column> columns = table.columns();
        List<List<String>> head = head(columns);
        List<List<String>> body = table.rows().stream().map(table::shown).toList();
        List<List<String>> totals = table.totals().stream().map(table::shown).toList();
        int[] width = new int[columns.size()];
        for (List<List<String>> part : List.of(head, body, totals)) {
            for (List<String> row : part) {
                for (int c = 0; c < width.length; c++) {
                    width[c] = Math.max(width[c], length(row.get(c)));
                }
            }
        }
        StringBuilder text = new StringBuilder();
        append(text, head, columns, width);
        rule(text, width);
        append(text, body, columns, width);
        if (!totals.isEmpty()) {
            rule(text, width);
            append(text, totals, columns, width);
        }
        return text.toString();
    }

    /** Headings of several lines stand on the line above the units, which only a table with units has. */
    private static List<List<String>> head(List<Column> columns) {
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
        if (columns.stream().anyMatch(c -> !c.unit().isEmpty())) {
            lines.add(columns.stream().map(Column::unit).toList());
        }
        return lines;
    }

    private static void append(StringBuilder text, List<List<String>> rows, List<Column> columns, int[] width) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < width.length; c++) {
                String padding = " ".repeat(width[c] - length(row.get(c)));
                line.append(c == 0 ? "" : GAP)
                        .append(columns.get(c).words() ? row.get(c) + padding : padding + row.get(c));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private static void rule(StringBuilder text, int[] width) {
        int total = GAP.length() * (width.length - 1);
        for (int w : width) {
            total += w;
        }
        text.append("-".repeat(total)).append('\n');
    }

    /** Characters as a person counts them, not Java's. */
    private static int length(String words) {
        return words.codePointCount(0, words.length());
    }
}
