package dev.warmlane.report.page;

import dev.warmlane.report.Part;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part as the template takes it.
 *
 * @param heading its heading
 * @param before a paragraph before the table, or null
 * @param table its table, or null
 * @param after a paragraph after the table, or null
 * @param hasPoints whether it has a list
 * @param points the list
 */
record HtmlPart(
        String heading,
        @Nullable String before,
        @Nullable HtmlTable table,
        @Nullable String after,
        boolean hasPoints,
        List<String> points) {

    static HtmlPart of(Part part) {
        return new HtmlPart(
                part.heading(),
                part.before().isEmpty() ? null : part.before(),
                part.table().map(HtmlTable::of).orElse(null),
                part.after().isEmpty() ? null : part.after(),
                !part.points().isEmpty(),
                part.points());
    }

    static List<HtmlPart> of(List<Part> parts) {
        return parts.stream().map(HtmlPart::of).toList();
    }
}
