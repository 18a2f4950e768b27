package dev.warmlane.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lines over a fill, so that fills can be told apart on a print without colour. */
enum Hatch {
    NONE(0, 0),
    RISING(1, -1),
    LEVEL(1, 0),
    FALLING(1, 1),
    UPRIGHT(0, 1);

    private static final double APART = 5;

    /** Fills darker than this, of 255, bear light lines. */
    private static final double DARK = 140;

    private final int right;
    private final int down;

    Hatch(int right, int down) {
        this.right = right;
        this.down = down;
    }

    /** The hatch of the nth fill of a chart; eight fills differ in hatch or in lightness. */
    static Hatch of(int n) {
        return values()[n % values().length];
    }

    /** Draws it over a fill of a colour. */
    void paint(Graphics2D g, Rectangle2D fill, Color colour) {
        if (this == NONE || fill.getWidth() < 1 || fill.getHeight() < 1) {
            return;
        }
        // lightness as the eye weighs the colours (ITU-R BT.601)
        double light = 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue();
        g.setColor(light < DARK ? Palette.PAPER : Palette.INK);
        g.setStroke(new BasicStroke(0.9f));
        lines(fill).forEach(g::draw);
    }

    /** Draws it with the pen that is taken over a shape without hollows, whichever way that is turned. */
    void draw(Graphics2D g, List<Point2D> corners) {
        Rectangle2D around =
                new Rectangle2D.Double(corners.get(0).getX(), corners.get(0).getY(), 0, 0);
        corners.forEach(around::add);
        for (Line2D line : lines(around)) {
            within(line, corners).ifPresent(g::draw);
        }
    }

    /** The part of a line that lies within a shape without hollows; nothing where none does. */
    static Optional<Line2D> within(Line2D line, List<Point2D> corners) {
        double from = 0;
        double to = 1;
        double way = Math.signum(beside(corners.get(0), corners.get(1), corners.get(2)));
        for (int i = 0; i < corners.size(); i++) {
            double first = way * beside(corners.get(i), corners.get((i + 1) % corners.size()), line.getP1());
            double last = way * beside(corners.get(i), corners.get((i + 1) % corners.size()), line.getP2());
            if (first < 0 && last < 0) {
                return Optional.empty();
            }
            if (first < 0) {
                from = Math.max(from, first / (first - last));
            } else if (last < 0) {
                to = Math.min(to, first / (first - last));
            }
        }
        double right = line.getX2() - line.getX1();
        double down = line.getY2() - line.getY1();
        return from < to
                ? Optional.of(new Line2D.Double(
                        line.getX1() + from * right,
                        line.getY1() + from * down,
                        line.getX1() + to * right,
                        line.getY1() + to * down))
                : Optional.empty();
    }

    /** Above 0 on one side of a straight way, below 0 on the other. */
    private static double beside(Point2D from, Point2D to, Point2D place) {
        return (to.getX() - from.getX()) * (place.getY() - from.getY())
                - (to.getY() - from.getY()) * (place.getX() - from.getX());
    }

    /** Its lines within a rectangle, equally far apart whatever its size. */
    List<Line2D> lines(Rectangle2D in) {
        List<Line2D> lines = new ArrayList<>();
        if (this == NONE) {
            return lines;
        }
        double apart = right != 0 && down != 0 ? APART * Math.sqrt(2) : APART;
        if (down == 0) {
            for (double y = in.getMinY() + apart / 2; y < in.getMaxY(); y += apart) {
                lines.add(new Line2D.Double(in.getMinX(), y, in.getMaxX(), y));
            }
            return lines;
        }
        double lean = right == 0 ? 0 : (double) right / down;
        // each line passes the top of the rectangle at x and its foot at x + lean * height
        double reach = lean * in.getHeight();
        double first = in.getMinX() - Math.max(0, reach) + apart / 2;
        for (double x = first; x < in.getMaxX() - Math.min(0, reach); x += apart) {
            double from =
                    lean == 0 ? 0 : Math.max(0, Math.min(side(x, in.getMinX(), lean), side(x, in.getMaxX(), lean)));
            double to = lean == 0
                    ? in.getHeight()
                    : Math.min(in.getHeight(), Math.max(side(x, in.getMinX(), lean), side(x, in.getMaxX(), lean)));
            if (to > from) {
                lines.add(new Line2D.Double(x + lean * from, in.getMinY() + from, x + lean * to, in.getMinY() + to));
            }
        }
        return lines;
    }

    /** How far below the top a line crosses an upright. */
    private static double side(double top, double upright, double lean) {
        return (upright - top) / lean;
    }
}
