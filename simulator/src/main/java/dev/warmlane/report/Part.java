package dev.warmlane.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A part of a report before it is set, for text and page alike.
 *
 * @param heading its heading
 * @param before a paragraph before the table; empty for none
 * @param table its table
 * @param after a paragraph after the table; empty for none
 * @param points a list at its end
 */
public record Part(String heading, String before, Optional<Table> table, String after, List<String> points) {

    /** Keeps its own copy of the list. */
    public Part {
        points = List.copyOf(points);
    }

    /** A part that is a table with words around it. */
    static Part of(String heading, String before, Table table, String after) {
        return new Part(heading, before, Optional.of(table), after, List.of());
    }

    /** A part in words alone. */
    static Part of(String heading, String before, List<String> points) {
        return new Part(heading, before, Optional.empty(), "", points);
    }

    /** As text. */
    TextSection section() {
        List<String> lines = new ArrayList<>();
        if (!before.isEmpty()) {
            lines.addAll(TextSection.broken("", before));
        }
        table.ifPresent(shown -> {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(TextSection.linesOf(shown));
        });
        if (!after.isEmpty()) {
            lines.add("");
            lines.addAll(TextSection.broken("", after));
        }
        lines.addAll(TextSection.listed(points));
        return new TextSection(heading, lines);
    }
}
