package dev.warmlane.report.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;

/** An arrow to the north on a drawing. */
final class NorthArrow {

    private static final double HALF = 20;

    private NorthArrow() {}

    /**
     * Draws it around a place.
     *
     * @param upDeg where the top of the sheet looks, degrees by the compass
     */
    static void paint(Graphics2D g, double x, double y, double upDeg, Color ink) {
        double turn = -Math.toRadians(upDeg);
        double up = Math.cos(turn);
        double right = Math.sin(turn);
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(x + right * HALF, y - up * HALF);
        arrow.lineTo(x - right * HALF - up * 7, y + up * HALF - right * 7);
        arrow.lineTo(x - right * HALF * 0.6, y + up * HALF * 0.6);
        arrow.lineTo(x - right * HALF + up * 7, y + up * HALF + right * 7);
        arrow.closePath();
        g.setColor(ink);
        g.fill(arrow);
        Lettering label = Lettering.small("N", 20);
        label.paint(g, x + right * (HALF + 9) - label.width() / 2, y - up * (HALF + 9) + 4, ink);
    }
}
