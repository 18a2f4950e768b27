package dev.warmlane.report.chart;

import dev.warmlane.units.Notation;
import java.awt.BasicStroke;
import java.awt.Font;
import java.util.Locale;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.AxesChartStyler.TextAlignment;

/** The look that all plots share. Titles and legends are not theirs but {@link Chart}'s. */
final class PlotStyle {

    private static final Font LABELS = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

    /** Leaves a little room beyond the last ticks, without which their labels would be dropped. */
    private static final double CONTENT = 0.985;

    /** About how much of the picture's width and height the axes leave; ticks need no better estimate. */
    private static final double WIDTH_LEFT = 0.91;

    private static final double HEIGHT_LEFT = 0.68;

    private PlotStyle() {}

    static void apply(AxesChartStyler styler, Scale y) {
        styler.setChartTitleVisible(false)
                .setLegendVisible(false)
                .setChartBackgroundColor(Palette.PAPER)
                .setChartFontColor(Palette.INK)
                .setChartPadding(Chart.PADDING)
                .setPlotBackgroundColor(Palette.PAPER)
                .setPlotBorderVisible(false)
                .setPlotContentSize(CONTENT)
                .setBaseFont(LABELS)
                .setLocale(Locale.ROOT)
                .setAntiAlias(true)
                .setTextAntiAlias(true)
                .setXAxisTitleColor(Palette.INK)
                .setYAxisTitleColor(Palette.INK);
        styler.setPlotGridLinesColor(Palette.GRID)
                .setPlotGridLinesStroke(new BasicStroke(1))
                .setPlotMargin(0)
                .setAxisTicksMarksVisible(false)
                .setAxisTicksLineVisible(false)
                .setXAxisTicksVisible(false)
                .setYAxisLabelAlignment(TextAlignment.Right)
                .setAxisTickLabelsFont(LABELS)
                .setAxisTickLabelsColor(Palette.INK)
                .setAxisTickPadding(6)
                .setAxisTitleFont(LABELS)
                .setAxisTitlePadding(8)
                .setYAxisMin(y.low())
                .setYAxisMax(y.high())
                .setYAxisTickMarkSpacingHint(spacing(height(), y));
    }

    /** Spreads the ticks along y over a picture that is so many pixels higher than usual. */
    static void high(AxesChartStyler styler, Scale y, int more) {
        styler.setYAxisTickMarkSpacingHint(spacing(height() + more, y));
    }

    /** Has the numbers along the axes written; those of x are not seen, but take room. */
    static void write(AxesChartStyler styler, Plot plot, Notation notation) {
        styler.setYAxisTickLabelsFormattingFunction(
                value -> notation.show(value, plot.y().decimals()));
        plot.x()
                .ifPresent(
                        x -> styler.setXAxisTickLabelsFormattingFunction(value -> notation.show(value, x.decimals())));
    }

    /** About how wide a plot with ticks along y is. */
    static int width() {
        return (int) (Chart.WIDTH * WIDTH_LEFT);
    }

    /** About how high a plot is. */
    static double height() {
        return Chart.HEIGHT * HEIGHT_LEFT;
    }

    /** Room from tick to tick of a scale along x. */
    static int xSpacing(Scale x) {
        return xSpacing(x, Chart.WIDTH * WIDTH_LEFT);
    }

    /** The same of a plot of a given width. */
    static int xSpacing(Scale x, double width) {
        return spacing(width, x);
    }

    private static int spacing(double pixels, Scale scale) {
        return (int) Math.max(1, Math.round(pixels * CONTENT / scale.steps()));
    }
}
