package dev.warmlane.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.knowm.xchart.internal.chartpart.RenderableSeries.LegendRenderType;
import org.knowm.xchart.internal.series.AxesChartSeries;

/** What the lines and fills of a chart mean: a sample and a name each, in as many rows as they need. */
final class Legend {

    private static final int LINE = 32;
    private static final int BOX = 14;
    private static final int GAP = 7;
    private static final int BETWEEN = 18;
    private static final int ROW = 20;

    private final List<List<Entry>> rows = new ArrayList<>();

    /** Breaks the entries into rows no wider than given, each as wide as its words are drawn. */
    Legend(Plot plot, int width) {
        double used = Double.POSITIVE_INFINITY;
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < plot.series().size(); i++) {
            entries.add(Entry.of(plot.series().get(i), plot.hatch(i)));
        }
        plot.dots().forEach(dots -> entries.add(Entry.of(dots)));
        for (Entry entry : entries) {
            if (used + BETWEEN + entry.width() > width) {
                rows.add(new ArrayList<>());
                used = -BETWEEN;
            }
            rows.get(rows.size() - 1).add(entry);
            used += BETWEEN + entry.width();
        }
    }

    int height() {
        return rows.size() * ROW;
    }

    void paint(Graphics2D g, double left, double top) {
        double middle = top + ROW / 2.0;
        for (List<Entry> row : rows) {
            double x = left;
            for (Entry entry : row) {
                entry.paint(g, x, middle);
                x += entry.width() + BETWEEN;
            }
            middle += ROW;
        }
    }

    private record Entry(
            Lettering name, Color colour, @Nullable BasicStroke stroke, Hatch hatch, boolean round) {

        static Entry of(Plot.Dots dots) {
            return new Entry(Lettering.plain(dots.name()), dots.fill(), null, Hatch.NONE, true);
        }

        static Entry of(AxesChartSeries series, Hatch hatch) {
            Lettering name = Lettering.plain(series.getLabel());
            return series.getLegendRenderType() == LegendRenderType.Line
                    ? new Entry(name, series.getLineColor(), series.getLineStyle(), Hatch.NONE, false)
                    : new Entry(name, series.getFillColor(), null, hatch, false);
        }

        double width() {
            return (stroke == null ? BOX : LINE) + GAP + name.width();
        }

        void paint(Graphics2D g, double x, double middle) {
            g.setColor(colour);
            if (round) {
                Round.paint(g, x + BOX / 2.0, middle, BOX / 2.0 - 1, colour);
            } else if (stroke == null) {
                Rectangle2D box = new Rectangle2D.Double(x, middle - BOX / 2.0, BOX, BOX);
                g.fill(box);
                hatch.paint(g, box, colour);
            } else {
                g.setStroke(stroke);
                g.draw(new Line2D.Double(x, middle, x + LINE, middle));
            }
            name.paint(g, x + (stroke == null ? BOX : LINE) + GAP, middle + name.ascent() / 2 - 1, Palette.INK);
        }
    }
}
