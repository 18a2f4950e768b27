package dev.warmlane.report.chart;

import dev.warmlane.units.Notation;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.internal.series.AxesChartSeries;

/** Axes and what is drawn between them. */
sealed interface Plot permits LinePlot, BarPlot, RowPlot {

    /** What paints it. */
    AxesChart<?, ?> painter();

    /** What is drawn, in the order of the legend. */
    List<? extends AxesChartSeries> series();

    /** The ticks of the x axis, whose labels the library would set on no common line. */
    List<Tick> ticks(Notation notation);

    /** The range of the x axis and its ticks; nothing where things are named along it. */
    default Optional<Scale> x() {
        return Optional.empty();
    }

    /** What the x axis counts; empty where its labels say it. */
    String xTitle();

    /** Where the x axis begins. */
    double left();

    /** Where the x axis ends. */
    double right();

    /** The range of the y axis and its ticks. */
    Scale y();

    /** The line that bars stand on, in the numbers of the axes; nothing where there are no bars. */
    Optional<Line2D> ground();

    /** The bars, in the numbers of the axes, that are hatched; none where there are no bars. */
    default List<Bar> bars() {
        return List.of();
    }

    /** The hatch of the nth of {@link #series}. */
    default Hatch hatch(int n) {
        return Hatch.NONE;
    }

    /** The labels beside rows of bars, at their heights; none where the y axis has ticks. */
    default List<Tick> rows() {
        return List.of();
    }

    /** Dots upon everything else, kind by kind; none where a plot has none. */
    default List<Dots> dots() {
        return List.of();
    }

    /** Words within the plot; none where a plot has none. */
    default List<Words> words() {
        return List.of();
    }

    /** Height of the whole picture. */
    default int height() {
        return Chart.HEIGHT;
    }

    /**
     * A bar that is to be hatched.
     *
     * @param place where it lies, in the numbers of the axes
     * @param colour its fill
     * @param hatch its hatch
     */
    record Bar(Rectangle2D place, Color colour, Hatch hatch) {}

    /** Writes what stands at a place of an axis. */
    @FunctionalInterface
    interface Label {

        /** A number without decimals. */
        Label WHOLE = (place, notation) -> notation.show(place, 0);

        /** What stands there. */
        String at(double place, Notation notation);
    }

    /**
     * A dot.
     *
     * @param x its place, in the numbers of the axes
     * @param y likewise
     * @param radius its size, pixels
     */
    record Dot(double x, double y, double radius) {}

    /**
     * Dots of one kind.
     *
     * @param name what the legend calls them
     * @param fill their fill; they are edged in ink
     * @param places where they lie
     */
    record Dots(String name, Color fill, List<Dot> places) {}

    /**
     * Words about their middle.
     *
     * @param x the middle, in the numbers of the axes
     * @param y likewise
     * @param text the words
     */
    record Words(double x, double y, String text) {}

    /**
     * A tick of an axis.
     *
     * @param at its place
     * @param label what stands at it, line by line
     */
    record Tick(double at, String label) {}
}
