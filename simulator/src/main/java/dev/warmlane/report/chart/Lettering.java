package dev.warmlane.report.chart;

import dev.warmlane.files.Printable;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;

/** Words drawn as outlines, so that they look and measure the same wherever the picture is opened. */
final class Lettering {

    private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 11);
    private static final Font STRONG = new Font(Font.SANS_SERIF, Font.BOLD, 13);
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 17);
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final String CUT = "…";

    private final TextLayout layout;

    private Lettering(String text, Font font) {
        // a layout of nothing is not allowed
        this.layout = new TextLayout(text.isEmpty() ? " " : Printable.lines(text), font, CONTEXT);
    }

    static Lettering plain(String text) {
        return new Lettering(text, PLAIN);
    }

    /** A line that stands out. */
    static Lettering strong(String text) {
        return new Lettering(text, STRONG);
    }

    /** A plain line, cut short if it is wider than given. */
    static Lettering plain(String text, int width) {
        return fitted(text, PLAIN, width);
    }

    /** A line of a drawing for print, cut short if it is wider than given. */
    static Lettering small(String text, int width) {
        return fitted(text, SMALL, width);
    }

    /** A title, cut short if it is wider than given. */
    static Lettering title(String text, int width) {
        return fitted(text, TITLE, width);
    }

    /** A plain text as it fits a width: in two lines where one does not hold it, cut short where two do not. */
    static String broken(String text, int width) {
        if (plain(text).width() <= width) {
            return text;
        }
        int space = text.lastIndexOf(' ');
        while (space > 0 && plain(text.substring(0, space)).width() > width) {
            space = text.lastIndexOf(' ', space - 1);
        }
        return space > 0
                ? text.substring(0, space) + "\n" + cut(text.substring(space + 1), PLAIN, width)
                : cut(text, PLAIN, width);
    }

    private static Lettering fitted(String text, Font font, int width) {
        return new Lettering(cut(text, font, width), font);
    }

    private static String cut(String text, Font font, int width) {
        String fitting = text;
        int length = text.length();
        while (new Lettering(fitting, font).width() > width && length > 0) {
            length = text.offsetByCodePoints(length, -1);
            fitting = text.substring(0, length).stripTrailing() + CUT;
        }
        return fitting;
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
