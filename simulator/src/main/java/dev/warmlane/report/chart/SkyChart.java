package dev.warmlane.report.chart;

import dev.warmlane.irradiance.Skylines;
import dev.warmlane.season.ArraySky;
import dev.warmlane.season.Installation;
import dev.warmlane.study.ShadeStudy;
import dev.warmlane.sun.SolarDay;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The sky as collectors and pool see it: what hides it, by direction and height, and the ways of the sun through the year. */
final class SkyChart {

    private static final List<String> DIRECTIONS = List.of("N", "E", "S", "W");

    private static final int Y_STEPS = 9;
    private static final double TOP_DEG = 90;
    private static final double QUARTER_DEG = 90;

    /** Points in an hour of the sun's way. */
    private static final int AN_HOUR = 6;

    private static final double NOON = 12;

    /** So that what begins at noon lies on the afternoon's side, h. */
    private static final double A_MOMENT = 0.001;

    private static final int STEP_DEG = 1;

    private SkyChart() {}

    static Chart of(String name, String title, ShadeStudy study) {
        Installation built = study.shaded().installation();
        double latitude = study.shaded().weather().site().latitudeDeg();
        // the noon of the sun in the middle
        double left = latitude >= 0 ? 0 : -180;
        LinePlot plot = new LinePlot(
                "direction",
                new Scale(left / QUARTER_DEG, left / QUARTER_DEG + 4, 1),
                (place, notation) -> DIRECTIONS.get((int) Math.round(place + 4) % 4),
                "height above the level, degrees",
                Scale.holding(0, TOP_DEG, Y_STEPS));
        if (!built.arrays().isEmpty()) {
            // of several the first is drawn, and named
            Skylines seen = ArraySky.of(built).get(0).skylines();
            String whose = built.arrays().size() == 1
                    ? "the collectors"
                    : "“" + built.arrays().get(0).name() + "”";
            band(plot, "dark for a tenth of " + whose, left, at -> seen.darkBelowDeg(at, 0.1), false);
            band(plot, "dark for half of " + whose, left, at -> seen.darkBelowDeg(at, 0.5), true);
        }
        Skylines pool = ShadeStudy.pool(built);
        if (!pool.isOpen()) {
            line(plot, "dark for half of the pool", left, at -> pool.darkBelowDeg(at, 0.5));
        }
        sun(plot, "sun on the longest day", left, new SolarDay(latitude, latitude >= 0 ? 23.44 : -23.44), Pen.THICK);
        sun(plot, "21 March, 23 September", left, SolarDay.of(latitude, MonthDay.of(3, 21)), Pen.DASHED);
        sun(plot, "on the shortest day", left, new SolarDay(latitude, latitude >= 0 ? -23.44 : 23.44), Pen.DOTTED);
        return new Chart(name, "What is in the way of the sun through the year?", title, plot);
    }

    private static double[] places(double left) {
        return IntStream.rangeClosed(0, 360 / STEP_DEG)
                .mapToDouble(i -> left + STEP_DEG * i)
                .toArray();
    }

    /** Places along the axis, which counts in quarters of a turn. */
    private static double[] quarters(double[] places) {
        return Arrays.stream(places).map(place -> place / QUARTER_DEG).toArray();
    }

    private static double[] heights(double[] places, DoubleUnaryOperator heightDeg) {
        return Arrays.stream(places)
                .map(place -> heightDeg.applyAsDouble((place + 360) % 360))
                .toArray();
    }

    private static void band(LinePlot plot, String name, double left, DoubleUnaryOperator heightDeg, boolean dark) {
        double[] places = places(left);
        plot.band(
                name,
                quarters(places),
                new double[places.length],
                heights(places, heightDeg),
                dark ? Palette.FAINT_INK : Palette.PALE);
    }

    private static void line(LinePlot plot, String name, double left, DoubleUnaryOperator heightDeg) {
        double[] places = places(left);
        plot.line(name, quarters(places), heights(places, heightDeg), Palette.BLUE, Pen.DASH_DOT);
    }

    /** The part of a day's way that is above the level; near the equator it may lie at both ends of the chart. */
    private static void sun(LinePlot plot, String name, double left, SolarDay day, Pen pen) {
        double[][] before = way(left, day, NOON - 12, NOON);
        double[][] after = way(left, day, NOON + A_MOMENT, NOON + 12);
        if (before.length < 2 || after.length < 2) {
            return;
        }
        if (Math.abs(after[0][0] - before[before.length - 1][0]) < 0.1) {
            double[][] whole =
                    Stream.concat(Arrays.stream(before), Arrays.stream(after)).toArray(double[][]::new);
            plot.line(name, column(whole, 0), column(whole, 1), Palette.ORANGE, pen);
        } else {
            plot.line(name, column(before, 0), column(before, 1), Palette.ORANGE, pen);
            plot.branch("", column(after, 0), column(after, 1), Palette.ORANGE, pen);
        }
    }

    private static double[][] way(double left, SolarDay day, double from, double to) {
        return IntStream.rangeClosed(0, 12 * AN_HOUR)
                .mapToDouble(i -> from + (to - from) * i / (12 * AN_HOUR))
                .filter(hour -> day.zenithDeg(hour) <= 90)
                .mapToObj(hour -> {
                    double azimuth = day.azimuthDeg(hour);
                    return new double[] {
                        (azimuth >= left + 360 ? azimuth - 360 : azimuth) / QUARTER_DEG, 90 - day.zenithDeg(hour)
                    };
                })
                .sorted((one, other) -> Double.compare(one[0], other[0]))
                .toArray(double[][]::new);
    }

    private static double[] column(double[][] points, int index) {
        return Arrays.stream(points).mapToDouble(point -> point[index]).toArray();
    }
}
