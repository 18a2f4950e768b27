package dev.warmlane.report.chart;

import java.awt.Color;
import java.util.List;

/** Looks for any number of things side by side; neighbours differ in lightness or dashes as well as in colour. */
final class Wheel {

    private static final List<Color> FILLS = List.of(
            Palette.BLUE,
            Palette.YELLOW,
            Palette.VERMILLION,
            Palette.SKY_BLUE,
            Palette.INK,
            Palette.PALE,
            Palette.GREEN,
            Palette.ORANGE);

    private static final List<Color> INKS =
            List.of(Palette.BLUE, Palette.VERMILLION, Palette.GREEN, Palette.INK, Palette.ORANGE);

    private static final List<Pen> PENS = List.of(Pen.THICK, Pen.DASHED, Pen.DOTTED, Pen.DASH_DOT);

    private Wheel() {}

    /** The fill of the nth bar. */
    static Color fill(int n) {
        return FILLS.get(n % FILLS.size());
    }

    /** The colour of the nth line; with {@link #pen} twenty lines differ. */
    static Color ink(int n) {
        return INKS.get(n % INKS.size());
    }

    /** The pen of the nth line. */
    static Pen pen(int n) {
        return PENS.get(n % PENS.size());
    }
}
