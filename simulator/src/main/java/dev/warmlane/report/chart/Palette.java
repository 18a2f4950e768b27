package dev.warmlane.report.chart;

import java.awt.Color;

/**
 * Colours that people with any kind of colour vision can tell apart: the set of Okabe and Ito, Color Universal Design
 * (2008), as it is printed in Wong, Points of view: Color blindness, Nature Methods 8:441 (2011). Greys are our own.
 */
final class Palette {

    static final Color ORANGE = new Color(230, 159, 0);
    static final Color SKY_BLUE = new Color(86, 180, 233);
    static final Color GREEN = new Color(0, 158, 115);
    static final Color YELLOW = new Color(240, 228, 66);
    static final Color BLUE = new Color(0, 114, 178);
    static final Color VERMILLION = new Color(213, 94, 0);
    static final Color PURPLE = new Color(204, 121, 167);

    static final Color PAPER = Color.WHITE;
    static final Color INK = new Color(51, 51, 51);
    static final Color FAINT_INK = new Color(110, 110, 110);
    static final Color PALE = new Color(204, 204, 204);
    static final Color GRID = new Color(228, 228, 228);

    private Palette() {}

    /** A colour as it looks through, 0 to 1 opaque. */
    static Color faint(Color colour, double opacity) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * opacity));
    }
}
