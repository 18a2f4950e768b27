package dev.warmlane.report.chart;

import java.awt.Graphics2D;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The words beside rows of bars. The library would take two that are the same for one row. */
final class RowLabels {

    /** Longer ones are cut. */
    private static final int WIDEST = 430;

    private static final int GAP = 8;

    private RowLabels() {}

    /** The room that they need beyond the padding of a plot; 0 for none. */
    static int width(List<Plot.Tick> rows) {
        return (int) Math.ceil(rows.stream()
                .mapToDouble(row -> Lettering.plain(row.label(), WIDEST).width() + GAP)
                .max()
                .orElse(0));
    }

    /** Paints them to the left of a place; {@code toScreen} says how high a row is. */
    static void paint(Graphics2D g, List<Plot.Tick> rows, double left, DoubleUnaryOperator toScreen) {
        for (Plot.Tick row : rows) {
            Lettering label = Lettering.plain(row.label(), WIDEST);
            label.paint(
                    g,
                    left - GAP - label.width(),
                    toScreen.applyAsDouble(row.at()) + label.ascent() / 2 - 2,
                    Palette.INK);
        }
    }
}
