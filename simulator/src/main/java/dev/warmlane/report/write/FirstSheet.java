package dev.warmlane.report.write;

import dev.warmlane.report.Block;
import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.Section;
import dev.warmlane.report.Section.Stay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What stands on the first sheet, which is to be one sheet of paper: everything meant for it, less what may give way
 * where it is full, the last first. Where that is not enough it is set tighter, before anything goes that holds firmer.
 */
final class FirstSheet {

    private final List<Piece> pieces;
    private final Report report;
    private final Paper.Type type;
    private final boolean drawn;

    private FirstSheet(List<Piece> pieces, Report report, Paper.Type type, boolean drawn) {
        this.pieces = pieces;
        this.report = report;
        this.type = type;
        this.drawn = drawn;
    }

    /** The first sheet of a report; {@code drawn} where there are charts on it. */
    static FirstSheet of(Report report, boolean drawn) {
        FirstSheet usual = new FirstSheet(all(report), report, Paper.Type.USUAL, drawn);
        if (usual.fitsWithout(Stay.WHERE_ROOM)) {
            return usual;
        }
        FirstSheet tight = new FirstSheet(all(report), report, Paper.Type.TIGHT, drawn);
        if (!tight.fitsWithout(Stay.WHERE_ROOM)) {
            tight.fitsWithout(Stay.TIGHTLY);
        }
        return tight;
    }

    private static List<Piece> all(Report report) {
        return report.sections().stream()
                .flatMap(section -> section.parts().stream()
                        .filter(part -> part.places().contains(Place.FIRST_SHEET))
                        .map(part -> new Piece(section, part)))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** Whether it fits when as much as it takes of what holds no firmer has gone. */
    private boolean fitsWithout(Stay stay) {
        for (int i = pieces.size() - 1; i >= 0 && heightMm() > Paper.HEIGHT_MM; i--) {
            if (pieces.get(i).part.stay() == stay) {
                pieces.remove(i);
            }
        }
        return heightMm() <= Paper.HEIGHT_MM;
    }

    /** How it is set. */
    Paper.Type type() {
        return type;
    }

    /** What of a section stands on it. */
    List<Block> of(Section section) {
        return pieces.stream()
                .filter(piece -> piece.section.equals(section))
                .map(piece -> piece.part.block())
                .toList();
    }

    /** What of a section had to give way and stands nowhere else on the page. */
    List<Block> gaveWay(Section section) {
        return section.parts().stream()
                .filter(part -> part.places().contains(Place.FIRST_SHEET)
                        && !part.places().contains(Place.TECHNICAL)
                        && !pieces.contains(new Piece(section, part)))
                .map(Section.Part::block)
                .toList();
    }

    /** How high its charts are to be drawn so that they fill it, pixels. */
    int chartPixels() {
        long charts = pieces.stream()
                .filter(piece -> piece.part.block().picture().isPresent())
                .count();
        return Paper.chartPixels((Paper.HEIGHT_MM - heightMm()) / Math.max(1, charts));
    }

    /** By estimate, mm. */
    private double heightMm() {
        return Paper.head(report, type)
                + pieces.stream()
                        .map(piece -> piece.section)
                        .distinct()
                        .mapToDouble(section -> Paper.heading(type, answers(section)))
                        .sum()
                + pieces.stream()
                        .mapToDouble(piece -> Paper.of(piece.part.block(), type, drawn, answers(piece.section)))
                        .sum();
    }

    /** What stands first answers, larger than the rest and without a heading. */
    private boolean answers(Section section) {
        return pieces.get(0).section.equals(section);
    }

    private record Piece(Section section, Section.Part part) {}
}
