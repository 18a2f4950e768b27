package dev.warmlane.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;

/** A dot with an edge, so that it shows on a print without colour and upon other dots. */
final class Round {

    private static final BasicStroke EDGE = new BasicStroke(0.7f);

    private Round() {}

    static void paint(Graphics2D g, double x, double y, double radius, Color fill) {
        Ellipse2D circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        g.setColor(fill);
        g.fill(circle);
        g.setStroke(EDGE);
        g.setColor(Palette.INK);
        g.draw(circle);
    }
}
