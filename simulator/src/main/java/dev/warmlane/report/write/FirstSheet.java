package dev.warmlane.report.write;

import dev.warmlane.report.Block;
import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What stands on the first sheet, which is to be one sheet of paper: everything meant for it, less what may give way
 * where it is full, the last first.
 */
final class FirstSheet {

    private final List<Piece> pieces;
    private final double headMm;
    private final boolean drawn;

    private FirstSheet(List<Piece> pieces, double headMm, boolean drawn) {
        this.pieces = pieces;
        this.headMm = headMm;
        this.drawn = drawn;
    }

    /** The first sheet of a report; {@code drawn} where there are charts on it. */
    static FirstSheet of(Report report, boolean drawn) {
        List<Piece> pieces = report.sections().stream()
                .flatMap(section -> section.parts().stream()
                        .filter(part -> part.places().contains(Place.FIRST_SHEET))
                        .map(part -> new Piece(section, part)))
                .collect(Collectors.toCollection(ArrayList::new));
        FirstSheet sheet = new FirstSheet(pieces, Paper.head(report), drawn);
        for (int i = pieces.size() - 1; i >= 0 && sheet.heightMm() > Paper.HEIGHT_MM; i--) {
            if (pieces.get(i).part.givesWay()) {
                pieces.remove(i);
            }
        }
        return sheet;
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

    /** By estimate, mm. */
    private double heightMm() {
        return headMm
                + pieces.stream()
                        .map(piece -> piece.section)
                        .distinct()
                        .mapToDouble(section -> Paper.heading(answers(section)))
                        .sum()
                + pieces.stream()
                        .mapToDouble(piece -> Paper.of(piece.part.block(), drawn, answers(piece.section)))
                        .sum();
    }

    /** What stands first answers, larger than the rest and without a heading. */
    private boolean answers(Section section) {
        return pieces.get(0).section.equals(section);
    }

    private record Piece(Section section, Section.Part part) {}
}
