package dev.warmlane.report;

import dev.warmlane.files.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A part of a report in words.
 *
 * @param heading its heading
 * @param lines its lines, already broken
 */
public record TextSection(String heading, List<String> lines) {

    /** Width of the lines of prose, in characters. */
    static final int WIDTH = 96;

    private static final String BULLET = "- ";

    /** Keeps its own copy of the lines, all of it printable. */
    public TextSection {
        heading = Printable.line(heading);
        lines = lines.stream().map(Printable::line).toList();
    }

    /** Heading and lines. */
    public String text() {
        StringBuilder text = new StringBuilder(heading).append('\n');
        for (String line : lines) {
            text.append(line.isEmpty() ? "" : "  ").append(line).append('\n');
        }
        return text.toString();
    }

    /** The points of a section that lists some, unbroken: for places that break lines themselves. */
    public List<String> points() {
        List<String> points = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith(BULLET)) {
                points.add(line.substring(BULLET.length()));
            } else if (!points.isEmpty()) {
                points.set(points.size() - 1, points.get(points.size() - 1) + " " + line.strip());
            }
        }
        return points;
    }

    /** The paragraph that it begins with, unbroken. */
    public String opening() {
        return lines.stream().takeWhile(line -> !line.isEmpty()).collect(Collectors.joining(" "));
    }

    /** The lines of a table. */
    static List<String> linesOf(Table table) {
        return table.text().lines().toList();
    }

    /** A paragraph broken into lines, the ones after the first indented as far as {@code bullet} is long. */
    static List<String> broken(String bullet, String paragraph) {
        List<String> lines = new ArrayList<>();
        String indent = " ".repeat(bullet.length());
        StringBuilder line = new StringBuilder(bullet);
        boolean fresh = true;
        for (String word : paragraph.strip().split("\\s+", -1)) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        lines.add(line.toString());
        return lines;
    }

    /** A list, each point broken into lines. */
    static List<String> listed(List<String> points) {
        return points.stream().flatMap(point -> broken(BULLET, point).stream()).toList();
    }

    /** Sections below a title, lines ending with a line feed. */
    static String page(String title, List<TextSection> sections) {
        String shown = Printable.line(title);
        StringBuilder text = new StringBuilder(shown)
                .append('\n')
                .append("=".repeat(shown.codePointCount(0, shown.length())))
                .append('\n');
        sections.forEach(section -> text.append('\n').append(section.text()));
        return text.toString();
    }
}
