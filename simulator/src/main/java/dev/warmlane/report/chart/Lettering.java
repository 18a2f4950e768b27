package dev.warmlane.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;

/** Words drawn as outlines, so that they look and measure the same wherever the picture is opened. */
final class Lettering {

    private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 17);
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final String CUT = "…";

    private final TextLayout layout;

    private Lettering(String text, Font font) {
        // a layout of nothing is not allowed
        this.layout = new TextLayout(text.isEmpty() ? " " : text, font, CONTEXT);
    }

    static Lettering plain(String text) {
        return new Lettering(text, PLAIN);
    }

    /** A plain line, cut short if it is wider than given. */
    static Lettering plain(String text, int width) {
        return fitted(text, PLAIN, width);
    }

    /** A title, cut short if it is wider than given. */
    static Lettering title(String text, int width) {
        return fitted(text, TITLE, width);
    }

    private static Lettering fitted(String text, Font font, int width) {
        Lettering whole = new Lettering(text, font);
        int length = text.length();
        while (whole.width() > width && length > 0) {
            length = text.offsetByCodePoints(length, -1);
            whole = new Lettering(text.substring(0, length) + CUT, font);
        }
        return whole;
    }

    double width() {
        return layout.getAdvance();
    }

    double ascent() {
        return layout.getAscent();
    }

    void paint(Graphics2D g, double x, double baseline, Color colour) {
        g.setColor(colour);
        g.fill(layout.getOutline(AffineTransform.getTranslateInstance(x, baseline)));
    }
}
