package dev.warmlane.report;

import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A small report of nothing, with every kind of block. */
public final class InventedReport {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    /** All kinds of blocks, in all places. */
    public static final Report REPORT = new Report(
            "invented",
            "Märchenbad",
            "Nowhere, season 1 May to 2 May",
            PLAIN,
            List.of(
                    Section.of("Answer", Place.ANSWER)
                            .words("A paragraph.", "", "Another one.")
                            .with(new Block.KeyFigures(List.of(
                                    new Block.Figure("24.0 °C", "mean", "cold before"),
                                    new Block.Figure("9 days", "warm", "")))),
                    Section.of("Both", Place.EVERYWHERE)
                            .with(Place.SHORT, new Block.Words("only in short"))
                            .with(Place.DETAIL, new Block.Points(List.of("only in full")))
                            .with(table().captioned("two pools"))
                            .words("after the table"),
                    Section.of("Empty", Place.EVERYWHERE),
                    Section.of("Technical", Place.DETAIL)
                            .words("for whoever checks it")
                            .with(
                                    Set.of(Place.TECHNICAL),
                                    new Block.Picture("nothing-to-draw", name -> Optional.empty()))),
            List.of(new Report.Data("table", InventedReport::table)));

    private InventedReport() {}

    /** A report of one point, which is its title too. */
    public static Report of(String point) {
        return of(point, point);
    }

    /** A report of one point. */
    public static Report of(String title, String point) {
        return new Report(
                "point",
                title,
                "",
                PLAIN,
                List.of(Section.of(title, Place.EVERYWHERE)
                        .points(List.of(point))
                        .words(point)),
                List.of());
    }

    private static Table table() {
        return new Table(
                List.of(Column.ofWords("pool", "pool"), Column.ofCounts("heat", "heat_kwh")),
                List.of(List.of(Cell.of("old"), Cell.of(1234.5678)), List.of(Cell.of("new"), Cell.of(Double.NaN))),
                List.of());
    }
}
