package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.warmlane.report.chart.ComputedOverMeasured.Points;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYSeries;

class ComputedOverMeasuredTest {

    private static final Points POINTS =
            new Points("a day", new double[] {-20, 110, 390}, new double[] {-35, 120, 410});

    @Test
    void pointsStandMeasuredAcrossAndComputedUp() {
        Plot plot = chart(0, List.of(POINTS)).plot();

        XYSeries points = plot.series().stream()
                .map(XYSeries.class::cast)
                .filter(series -> series.getName().equals("a day"))
                .findFirst()
                .orElseThrow();
        assertThat(points.getXData()).containsExactly(POINTS.measured());
        assertThat(points.getYData()).containsExactly(POINTS.computed());
        assertThat(points.getXYSeriesRenderStyle()).contains(XYSeries.XYSeriesRenderStyle.Scatter);
    }

    @Test
    void bothAxesHaveOneScaleThatHoldsAll() {
        Plot plot = chart(0, List.of(POINTS)).plot();

        assertThat(plot.left()).isEqualTo(plot.y().low()).isLessThanOrEqualTo(-35);
        assertThat(plot.right()).isEqualTo(plot.y().high()).isGreaterThanOrEqualTo(410);
        assertThat(plot.xTitle()).isEqualTo("measured heat, W/m²");
    }

    @Test
    void bandIsTwiceTheUncertaintyOnEitherSide() {
        Plot plot = chart(10, List.of(POINTS)).plot();

        XYSeries band = plot.series().stream()
                .map(XYSeries.class::cast)
                .filter(series -> series.getXYSeriesRenderStyle()
                        .filter(style -> style == XYSeries.XYSeriesRenderStyle.PolygonArea)
                        .isPresent())
                .findFirst()
                .orElseThrow();
        double[] x = band.getXData();
        double[] y = band.getYData();
        assertThat(x).isNotEmpty();
        for (int i = 0; i < x.length; i++) {
            assertThat(Math.abs(y[i] - x[i])).isLessThanOrEqualTo(20.0);
            assertThat(y[i]).isBetween(plot.y().low(), plot.y().high());
        }
        assertThat(y[1]).isEqualTo(x[1] + 20);
        assertThat(chart(0, List.of(POINTS)).plot().series())
                .hasSize(plot.series().size() - 1);
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> chart(0, List.of()))
                .withMessageContaining("one to four");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Points("two", new double[] {1, 2}, new double[] {1}))
                .withMessageContaining("1 and 2");
    }

    private static Chart chart(double within, List<Points> points) {
        return ComputedOverMeasured.of("name", "title", "subtitle", "heat, W/m²", within, points);
    }
}
