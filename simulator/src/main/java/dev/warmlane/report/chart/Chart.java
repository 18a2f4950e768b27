package dev.warmlane.report.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/** A chart, ready to be drawn. */
public final class Chart {

    /** Width of the picture; a pixel is 1/96 inch. */
    public static final int WIDTH = 960;

    /** Height of the picture. */
    public static final int HEIGHT = 460;

    static final int PADDING = 16;

    private static final int HEAD = 52;

    private final String name;
    private final String title;
    private final String subtitle;
    private final Plot plot;

    Chart(String name, String title, String subtitle, Plot plot) {
        this.name = name;
        this.title = title;
        this.subtitle = subtitle;
        this.plot = plot;
    }

    /** The name of its files, without an ending. */
    public String name() {
        return name;
    }

    /** What it shows. */
    public String title() {
        return title;
    }

    /** The picture as PNG, for print. */
    public byte[] png() {
        return Png.of(this);
    }

    /** The picture as an SVG element, without the head of an XML file. */
    public String svg() {
        return Svg.of(this);
    }

    /** The plot, to be read back. */
    Plot plot() {
        return plot;
    }

    String subtitle() {
        return subtitle;
    }

    void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Palette.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        int inner = WIDTH - 2 * PADDING;
        Lettering.title(title, inner).paint(g, PADDING, PADDING + 14, Palette.INK);
        Lettering.plain(subtitle, inner).paint(g, PADDING, PADDING + 33, Palette.FAINT_INK);
        Legend legend = new Legend(plot.series(), inner);
        int plotHeight = HEIGHT - HEAD - legend.height() - PADDING / 2;
        AffineTransform before = g.getTransform();
        g.translate(0, HEAD - PADDING / 2.0);
        plot.painter().paint(g, WIDTH, plotHeight + PADDING / 2);
        g.setTransform(before);
        legend.paint(g, PADDING, HEIGHT - PADDING / 2.0 - legend.height());
    }
}
