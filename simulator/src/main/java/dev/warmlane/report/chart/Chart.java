package dev.warmlane.report.chart;

import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.internal.chartpart.AxesChart;

/** A chart, ready to be drawn. */
public final class Chart extends Painted {

    /** Width of the picture; a pixel is 1/96 inch. */
    public static final int WIDTH = 960;

    /** Height of the picture, unless it has many rows. */
    public static final int HEIGHT = 420;

    static final int PADDING = 16;

    private static final int HEAD = 62;

    private static final int SUBTITLE = 19;

    /** Room for the last label of the x axis. */
    private static final int RIGHT = 14;

    private static final int LABEL_ROW = 20;

    /** What a picture needs beside the room between its axes, at the most. */
    private static final int AROUND = 150;

    private final String name;
    private final String title;
    private final String subtitle;
    private final Plot plot;
    private final Notation notation;
    private final int height;

    Chart(String name, String title, String subtitle, Plot plot) {
        this(name, title, subtitle, plot, Notation.usual(UnitSystem.METRIC), plot.height());
    }

    private Chart(String name, String title, String subtitle, Plot plot, Notation notation, int height) {
        this.height = height;
        this.notation = notation;
        this.name = name;
        this.title = title;
        this.subtitle = subtitle;
        this.plot = plot;
    }

    @Override
    public String name() {
        return name;
    }

    /** The same without the report's title, for a page that bears it already. */
    public Chart inPage() {
        return new Chart(name, title, "", plot, notation, height);
    }

    /** The same with the numbers and dates along its axes in a notation. */
    public Chart in(Notation other) {
        return new Chart(name, title, subtitle, plot, other, height);
    }

    /** The same for a place of a height, pixels, for as wide as it is; as near to it as it can be read. */
    public Chart high(int pixels) {
        int rows = plot.rows().isEmpty() ? 0 : plot.height();
        // the library places nothing on an axis that is shorter than a step along x
        int least = Math.max(rows, AROUND + plot.painter().getStyler().getXAxisTickMarkSpacingHint());
        return new Chart(name, title, subtitle, plot, notation, Math.max(least, pixels));
    }

    @Override
    public int width() {
        return WIDTH;
    }

    @Override
    public int height() {
        return height;
    }

    @Override
    public String title() {
        return title;
    }

    /** The plot, to be read back. */
    Plot plot() {
        return plot;
    }

    String subtitle() {
        return subtitle;
    }

    /** Where the plot's own picture begins. */
    int plotTop() {
        return head() - PADDING;
    }

    private int head() {
        return HEAD - (subtitle.isEmpty() ? SUBTITLE : 0);
    }

    /** At 300 dots to the inch it is 8 inches wide. */
    @Override
    double dotsPerPixel() {
        return 2.5;
    }

    @Override
    String onPaper() {
        return "";
    }

    @Override
    void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Palette.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, WIDTH, height()));
        int inner = WIDTH - 2 * PADDING;
        Legend legend = new Legend(plot, inner);
        int foot = LABEL_ROW * labelRows() + (plot.xTitle().isEmpty() ? 0 : LABEL_ROW) + legend.height() + PADDING;
        paintPlot(g, height() - head() - foot);
        Lettering.title(title, inner).paint(g, PADDING, PADDING + 14, Palette.INK);
        Lettering.plain(subtitle, inner).paint(g, PADDING, PADDING + 33, Palette.FAINT_INK);
        legend.paint(g, PADDING, height() - PADDING / 2.0 - legend.height());
    }

    /** The plot pads itself all around; the labels of its x axis go into the padding and below. */
    private void paintPlot(Graphics2D g, int height) {
        AxesChart<?, ?> painter = plot.painter();
        PlotStyle.write(painter.getStyler(), plot, notation);
        PlotStyle.high(painter.getStyler(), plot.y(), this.height - plot.height());
        AffineTransform before = g.getTransform();
        int beside = RowLabels.width(plot.rows());
        g.translate(beside, plotTop());
        painter.paint(g, WIDTH - RIGHT - beside, height + 2 * PADDING);
        // asked where a y lies, the library compares the plot's height with the room between ticks of x, and where they
        // stand farther apart answers with the middle: that room is needed for painting alone
        int room = painter.getStyler().getXAxisTickMarkSpacingHint();
        painter.getStyler().setXAxisTickMarkSpacingHint(1);
        plot.bars().forEach(bar -> hatch(g, painter, bar));
        plot.dots().forEach(dots -> dots(g, painter, dots));
        plot.words().forEach(words -> words(g, painter, words));
        double left = painter.getScreenXFromChart(plot.left());
        double right = painter.getScreenXFromChart(plot.right());
        double baseline = painter.getScreenYFromChart(plot.y().low()) + LABEL_ROW;
        for (Plot.Tick tick : plot.ticks(notation)) {
            double row = baseline;
            for (String line : tick.label().split("\n", -1)) {
                Lettering label = Lettering.plain(line);
                label.paint(g, painter.getScreenXFromChart(tick.at()) - label.width() / 2, row, Palette.INK);
                row += LABEL_ROW;
            }
        }
        RowLabels.paint(g, plot.rows(), left, painter::getScreenYFromChart);
        Lettering xTitle = Lettering.plain(plot.xTitle());
        xTitle.paint(g, (left + right - xTitle.width()) / 2, baseline + LABEL_ROW * labelRows(), Palette.INK);
        plot.ground().ifPresent(ground -> {
            g.setStroke(new BasicStroke(1));
            g.setColor(Palette.FAINT_INK);
            g.draw(new Line2D.Double(
                    painter.getScreenXFromChart(ground.getX1()),
                    painter.getScreenYFromChart(ground.getY1()),
                    painter.getScreenXFromChart(ground.getX2()),
                    painter.getScreenYFromChart(ground.getY2())));
        });
        painter.getStyler().setXAxisTickMarkSpacingHint(room);
        g.setTransform(before);
    }

    private static void hatch(Graphics2D g, AxesChart<?, ?> painter, Plot.Bar bar) {
        double left = painter.getScreenXFromChart(bar.place().getMinX());
        double top = painter.getScreenYFromChart(bar.place().getMaxY());
        double width = painter.getScreenXFromChart(bar.place().getMaxX()) - left;
        double height = painter.getScreenYFromChart(bar.place().getMinY()) - top;
        bar.hatch().paint(g, new Rectangle2D.Double(left, top, width, height), bar.colour());
    }

    private static void dots(Graphics2D g, AxesChart<?, ?> painter, Plot.Dots dots) {
        dots.places()
                .forEach(dot -> Round.paint(
                        g,
                        painter.getScreenXFromChart(dot.x()),
                        painter.getScreenYFromChart(dot.y()),
                        dot.radius(),
                        dots.fill()));
    }

    private static void words(Graphics2D g, AxesChart<?, ?> painter, Plot.Words words) {
        Lettering text = Lettering.strong(words.text());
        double left = painter.getScreenXFromChart(words.x()) - text.width() / 2;
        double baseline = painter.getScreenYFromChart(words.y()) + text.ascent() / 2;
        text.paint(g, left, baseline, Palette.INK);
    }

    /** Lines of the tallest label below the plot. */
    private int labelRows() {
        return plot.ticks(notation).stream()
                .mapToInt(tick -> tick.label().split("\n", -1).length)
                .max()
                .orElse(1);
    }
}
