package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.chart.Chart;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * A chart of the handbook, beside its page. {@code -Ddocs.write=true} draws it; without, it must be there. What it shows is
 * held by the page's numbers: pictures differ with the fonts of a machine.
 */
final class DocChart {

    private static final int WIDTH = 1200;

    private DocChart() {}

    static void check(Chart chart) throws IOException {
        Path file = Path.of("..", "docs", "validation", chart.name() + ".png");
        if (Boolean.getBoolean("docs.write")) {
            BufferedImage large = ImageIO.read(new ByteArrayInputStream(chart.png()));
            int height = large.getHeight() * WIDTH / large.getWidth();
            BufferedImage small = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = small.createGraphics();
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            g.drawImage(large, 0, 0, WIDTH, height, null);
            g.dispose();
            ImageIO.write(small, "png", file.toFile());
        }
        assertThat(file).isNotEmptyFile();
    }
}
