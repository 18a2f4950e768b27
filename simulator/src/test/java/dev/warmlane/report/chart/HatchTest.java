package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.SampleReports;
import dev.warmlane.report.SampleStudies;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Fills that differ without colour. */
class HatchTest {

    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @EnumSource(Hatch.class)
    void linesStayWithinTheirFill(Hatch hatch) {
        Rectangle2D fill = new Rectangle2D.Double(10, 20, 47, 33);
        Rectangle2D room = new Rectangle2D.Double(10 - ROUNDING, 20 - ROUNDING, 47 + 2 * ROUNDING, 33 + 2 * ROUNDING);
        List<Line2D> lines = hatch.lines(fill);

        assertThat(lines).hasSizeGreaterThan(hatch == Hatch.NONE ? -1 : 4);
        assertThat(lines).allSatisfy(line -> {
            assertThat(room.contains(line.getP1())).isTrue();
            assertThat(room.contains(line.getP2())).isTrue();
        });
    }

    /** A square on its corner, 10 to either side of (50, 50), either way round. */
    @Test
    void aTurnedShapeHoldsItsPartOfALine() {
        List<Point2D> square = List.of(at(40, 50), at(50, 60), at(60, 50), at(50, 40));
        List<Point2D> otherWay = List.of(at(50, 40), at(60, 50), at(50, 60), at(40, 50));
        for (List<Point2D> corners : List.of(square, otherWay)) {
            Line2D level =
                    Hatch.within(new Line2D.Double(0, 55, 100, 55), corners).orElseThrow();
            Line2D begun =
                    Hatch.within(new Line2D.Double(50, 50, 50, 100), corners).orElseThrow();

            assertThat(level.getP1().distance(45, 55)).isLessThan(ROUNDING);
            assertThat(level.getP2().distance(55, 55)).isLessThan(ROUNDING);
            assertThat(begun.getP1().distance(50, 50)).isLessThan(ROUNDING);
            assertThat(begun.getP2().distance(50, 60)).isLessThan(ROUNDING);
            assertThat(Hatch.within(new Line2D.Double(0, 61, 100, 61), corners)).isEmpty();
            assertThat(Hatch.within(new Line2D.Double(40, 58, 42, 62), corners)).isEmpty();
        }
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    @Test
    void everyBarOfAChartHasItsOwnHatchOverItsFill() {
        Chart sideBySide = HeatAndGasChart.of("name", SampleReports.MUNICIPAL).orElseThrow();
        Chart stacked = PoolBalanceChart.of("name", SampleReports.MUNICIPAL);
        Chart rows = MountingCharts.heat("name", SampleStudies.CLUB.mountings(), SampleStudies.CLUB.units())
                .orElseThrow();
        for (Chart chart : List.of(sideBySide, stacked, rows)) {
            barsLieOverTheirFills(chart);
            Set<Object> looks = new HashSet<>();
            for (int n = 0; n < chart.plot().series().size(); n++) {
                assertThat(looks.add(List.of(
                                chart.plot().hatch(n),
                                chart.plot().series().get(n).getFillColor())))
                        .isTrue();
            }
        }
    }

    /** The middle of every bar of some size, where it is not hatched, has the colour of its series. */
    private static void barsLieOverTheirFills(Chart chart) {
        BufferedImage picture = new BufferedImage(Chart.WIDTH, chart.height(), BufferedImage.TYPE_INT_RGB);
        chart.paint(picture.createGraphics());
        var painter = chart.plot().painter();
        int looked = 0;
        for (Plot.Bar bar : chart.plot().bars()) {
            double x0 = painter.getScreenXFromChart(bar.place().getMinX())
                    + RowLabels.width(chart.plot().rows());
            double x1 = painter.getScreenXFromChart(bar.place().getMaxX())
                    + RowLabels.width(chart.plot().rows());
            double y0 = painter.getScreenYFromChart(bar.place().getMaxY()) + chart.plotTop();
            double y1 = painter.getScreenYFromChart(bar.place().getMinY()) + chart.plotTop();
            if (x1 - x0 > 6 && y1 - y0 > 6) {
                Set<Color> inside = new HashSet<>();
                for (int x = (int) x0 + 2; x < x1 - 2; x++) {
                    for (int y = (int) y0 + 2; y < y1 - 2; y++) {
                        inside.add(new Color(picture.getRGB(x, y)));
                    }
                }
                assertThat(inside).contains(bar.colour()).doesNotContain(Palette.GRID);
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(3);
    }
}
