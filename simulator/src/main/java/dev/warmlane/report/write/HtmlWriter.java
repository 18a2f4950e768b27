package dev.warmlane.report.write;

import com.samskivert.mustache.Mustache;
import dev.warmlane.files.Printable;
import dev.warmlane.report.Block;
import dev.warmlane.report.Cell;
import dev.warmlane.report.Column;
import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.Section;
import dev.warmlane.report.Table;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.units.Notation;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Reports as one HTML file that needs nothing else: a sheet for the pool's owner, and more for whoever checks it.
 * Well-formed XML as well. What goes in is escaped, save the charts, which the library draws itself.
 */
public final class HtmlWriter {

    /** Tables of so few columns, all but the first numbers, stand side by side with what follows them. */
    private static final int NARROW = 4;

    private HtmlWriter() {}

    /** The page of a report, with its charts inside. */
    public static String page(Report report) {
        return page(report, Optional.empty());
    }

    /**
     * The page of a report.
     *
     * @param report the report
     * @param withoutCharts why there are no charts on it; nothing where there are
     */
    public static String page(Report report, Optional<String> withoutCharts) {
        FirstSheet sheet = FirstSheet.of(report, withoutCharts.isEmpty());
        Blocks blocks = new Blocks(withoutCharts.isEmpty(), report.notation(), UnaryOperator.identity());
        List<Map<String, Object>> first = sections(
                report,
                sheet::of,
                new Blocks(withoutCharts.isEmpty(), report.notation(), chart -> chart.high(sheet.chartPixels())));
        List<Map<String, Object>> technical = new ArrayList<>(sections(report, sheet::gaveWay, blocks));
        technical.addAll(sections(report, section -> section.at(Place.TECHNICAL), blocks));
        return Mustache.compiler()
                .withFormatter(value -> Printable.lines(String.valueOf(value)))
                .withLoader(part -> new StringReader(resource(part)))
                .compile(resource("page.mustache"))
                .execute(Map.of(
                        "type", sheet.type().style(),
                        "letterhead", letterhead(report.letterhead()),
                        "title", report.title(),
                        "place", report.place(),
                        "answer", first.subList(0, Math.min(1, first.size())),
                        "remark", withoutCharts.stream().toList(),
                        "first", first.subList(Math.min(1, first.size()), first.size()),
                        "technical", technical,
                        "version", version()));
    }

    private static List<Map<String, Object>> letterhead(Letterhead head) {
        return head.isEmpty()
                ? List.of()
                : List.of(Map.of(
                        "logo",
                        head.logo().stream()
                                .map(logo -> Map.of("type", logo.mediaType(), "bytes", logo.base64()))
                                .toList(),
                        "sender",
                        LetterheadLines.sender(head),
                        "offer",
                        LetterheadLines.offer(head)));
    }

    private static List<Map<String, Object>> sections(
            Report report, Function<Section, List<Block>> shown, Blocks writer) {
        List<Map<String, Object>> sections = new ArrayList<>();
        for (Section section : report.sections()) {
            List<Map<String, Object>> blocks = shown.apply(section).stream()
                    .map(block -> block.as(writer))
                    .filter(block -> !block.isEmpty())
                    .toList();
            if (!blocks.isEmpty()) {
                boolean drawn = blocks.stream().anyMatch(block -> block.containsKey("picture"));
                sections.add(Map.of("heading", section.heading(), "kind", drawn ? "drawn" : "", "blocks", blocks));
            }
        }
        return sections;
    }

    private static String version() {
        String version = HtmlWriter.class.getPackage().getImplementationVersion();
        return version == null ? "built from source" : version;
    }

    private static String resource(String name) {
        try (InputStream in = HtmlWriter.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not among the library's resources");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the template has of each kind of block; nothing where it is not shown. */
    private record Blocks(boolean charts, Notation notation, UnaryOperator<Chart> sized)
            implements Block.Kinds<Map<String, Object>> {

        @Override
        public Map<String, Object> words(Block.Words words) {
            return Map.of("words", UnitSpaces.firm(words.text()));
        }

        @Override
        public Map<String, Object> points(Block.Points points) {
            return Map.of(
                    "list",
                    Map.of(
                            "points",
                            points.points().stream().map(UnitSpaces::firm).toList()));
        }

        @Override
        public Map<String, Object> figures(Block.KeyFigures figures) {
            return Map.of(
                    "keys",
                    Map.of(
                            "figures",
                            figures.figures().stream()
                                    .map(f -> Map.of(
                                            "value", UnitSpaces.firm(f.value()),
                                            "meaning", UnitSpaces.firm(f.meaning()),
                                            "range",
                                                    f.range().isEmpty()
                                                            ? List.of()
                                                            : List.of(UnitSpaces.firm(f.range())),
                                            "beside", UnitSpaces.firm(f.beside())))
                                    .toList()));
        }

        @Override
        public Map<String, Object> picture(Block.Picture picture) {
            return charts
                    ? picture.chart()
                            .map(chart -> sized.apply(chart.inPage().in(notation)))
                            .map(chart -> Map.<String, Object>of(
                                    "picture", Map.of("svg", chart.svg(), "high", chart.height())))
                            .orElse(Map.of())
                    : Map.of();
        }

        @Override
        public Map<String, Object> plan(Block.Plan plan) {
            return charts ? Map.of("plan", plan.draw().get().svg()) : Map.of();
        }

        @Override
        public Map<String, Object> table(Table table) {
            return Map.of(
                    "table",
                    Map.of(
                            "width", isNarrow(table) ? "narrow" : "wide",
                            "caption", table.caption().isEmpty() ? List.of() : List.of(table.caption()),
                            "head", table.columns().stream().map(Blocks::head).toList(),
                            "hasUnits", table.hasUnits(),
                            "rows",
                                    table.rows().stream()
                                            .map(row -> row(table, row))
                                            .toList(),
                            "totals",
                                    table.totals().stream()
                                            .map(row -> row(table, row))
                                            .toList()));
        }

        private static boolean isNarrow(Table table) {
            return table.columns().size() <= NARROW
                    && table.columns().stream().skip(1).noneMatch(Column::words);
        }

        private static Map<String, Object> head(Column column) {
            return Map.of("lines", column.header().lines().toList(), "unit", column.unit(), "kind", kind(column));
        }

        private Map<String, Object> row(Table table, List<Cell> cells) {
            List<String> shown = table.shown(cells, notation);
            return Map.of(
                    "cells",
                    IntStream.range(0, shown.size())
                            .mapToObj(c -> Map.of(
                                    "text",
                                    shown.get(c),
                                    "kind",
                                    kind(table.columns().get(c))))
                            .toList());
        }

        private static String kind(Column column) {
            return column.words() ? "words" : "number";
        }
    }
}
