package dev.warmlane.report.write;

import dev.warmlane.files.Printable;
import dev.warmlane.report.Block;
import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.Section;
import dev.warmlane.report.Table;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Reports as text for a terminal or a mail, in a font of fixed width. Pictures are left out. */
public final class TextWriter {

    /** Width of the lines of prose, in characters. */
    static final int WIDTH = 96;

    private static final String BULLET = "- ";

    private TextWriter() {}

    /** All of a report, lines ending with a line feed. */
    public static String full(Report report) {
        return text(report, Place.FULL);
    }

    /** What is asked for first, lines ending with a line feed. */
    public static String brief(Report report) {
        return text(report, Place.BRIEF);
    }

    /** A table alone in the usual notation: aligned columns, lines ending with a line feed. */
    public static String table(Table table) {
        return table(table, Notation.usual(UnitSystem.METRIC));
    }

    /** A table alone. */
    public static String table(Table table, Notation notation) {
        return String.join("\n", TableText.lines(table, notation)) + '\n';
    }

    private static String text(Report report, Place place) {
        String title = Printable.line(report.title());
        StringBuilder text = new StringBuilder(title)
                .append('\n')
                .append("=".repeat(title.codePointCount(0, title.length())))
                .append('\n');
        LetterheadLines.of(report.letterhead())
                .forEach(line -> text.append(Printable.line(line)).append('\n'));
        Lines writer = new Lines(report.notation());
        for (Section section : report.at(place)) {
            List<String> lines = lines(section.at(place), writer);
            if (!lines.isEmpty()) {
                text.append('\n').append(Printable.line(section.heading())).append('\n');
                lines.forEach(line ->
                        text.append(line.isEmpty() ? "" : "  ").append(line).append('\n'));
            }
        }
        return text.toString();
    }

    /** Blocks of words follow each other; what is set in columns has an empty line around it. */
    private static List<String> lines(List<Block> blocks, Lines writer) {
        List<String> lines = new ArrayList<>();
        boolean columnsBefore = false;
        for (Block block : blocks) {
            List<String> more = block.as(writer);
            boolean columns = block.inColumns();
            if (!lines.isEmpty() && !more.isEmpty() && (columns || columnsBefore)) {
                lines.add("");
            }
            lines.addAll(more);
            columnsBefore = more.isEmpty() ? columnsBefore : columns;
        }
        return lines;
    }

    /** A paragraph broken into lines, the ones after the first indented as far as {@code start} is long. */
    private static List<String> broken(String start, String paragraph) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(start);
        boolean fresh = true;
        for (String part : UnitSpaces.pieces(paragraph)) {
            String word = Printable.line(part);
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(start.length()));
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        lines.add(line.toString());
        return lines;
    }

    /** The lines of each kind of block. */
    private record Lines(Notation notation) implements Block.Kinds<List<String>> {

        @Override
        public List<String> words(Block.Words words) {
            return broken("", words.text());
        }

        @Override
        public List<String> points(Block.Points points) {
            return points.points().stream()
                    .flatMap(point -> broken(BULLET, point).stream())
                    .toList();
        }

        @Override
        public List<String> figures(Block.KeyFigures figures) {
            int widest = figures.figures().stream()
                    .mapToInt(figure -> figure.value().length())
                    .max()
                    .orElse(0);
            return figures.figures().stream()
                    .flatMap(f ->
                            broken(f.value() + " ".repeat(widest - f.value().length() + 2), meaning(f)).stream())
                    .toList();
        }

        private static String meaning(Block.Figure figure) {
            return figure.meaning()
                    + (figure.range().isEmpty() ? "" : ", " + figure.range())
                    + (figure.beside().isEmpty() ? "" : " (" + figure.beside() + ")");
        }

        @Override
        public List<String> table(Table table) {
            return TableText.lines(table, notation);
        }

        @Override
        public List<String> plan(Block.Plan plan) {
            return List.of();
        }

        @Override
        public List<String> picture(Block.Picture picture) {
            return List.of();
        }
    }
}
