package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

/** A season of two months has three ticks, farther apart than the plot is high. */
class FewTicksTest {

    @Test
    void labelsStandBelowThePlotAllTheSame() {
        int[] many = firstLabel(8);
        assertThat(firstLabel(2)).isEqualTo(many);
        int below = 0;
        for (int row = Chart.HEIGHT * 3 / 4 * 9; row < many.length; row++) {
            below += (many[row] & 0xff) < 128 ? 1 : 0;
        }
        assertThat(below).as("ink of the label").isPositive();
    }

    /** What is painted along the left end of the plot: the grid, and the label of the first tick. */
    private static int[] firstLabel(int steps) {
        LinePlot plot = new LinePlot(
                "", new Scale(0, steps, 1), (at, notation) -> at == 0 ? "0" : "", "y", new Scale(20, 26, 1));
        plot.level("level", 25, Palette.INK, Pen.HAIR);
        Chart chart = new Chart("chart", "title", "subtitle", plot);
        BufferedImage image = new BufferedImage(Chart.WIDTH, chart.height(), BufferedImage.TYPE_INT_RGB);
        chart.paint(image.createGraphics());
        int left = (int) plot.painter().getScreenXFromChart(plot.left());
        return image.getRGB(left - 4, 0, 9, chart.height(), null, 0, 9);
    }
}
