package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the command prints and draws; written again with {@code -Ddocs.write=true}. */
class ReadmeTest {

    private static final Path PICTURE = Path.of("..", "docs", "season-temperature.png");

    private static final int WIDTH = 1440;

    /** Cells that two pictures are compared in: fonts differ from machine to machine, curves do not; own choice. */
    private static final int CELLS = 48;

    /** Of 255, mean of the cells; own choice: letters that differ move it by less. */
    private static final double ALIKE = 3;

    @TempDir
    private Path folder;

    @Test
    void theReadmeShowsWhatTheDemoPrintsAndDraws() throws IOException {
        StringWriter out = new StringWriter();
        Main.run(
                new PrintWriter(out),
                new PrintWriter(new StringWriter()),
                "forecast",
                Path.of("scenarios", "municipal-25m.toml").toString(),
                "--output",
                folder.toString());
        ShownOutput.isAsPrinted(
                Path.of("..", "README.md"), Pattern.compile("(?s)\n```\n(In short\n.*?)\n```"), 1, out.toString());
        Path drawn = folder.resolve("charts").resolve("season-temperature.png");
        BufferedImage now = ImageIO.read(drawn.toFile());
        if (Boolean.getBoolean("docs.write")) {
            ImageIO.write(scaled(now, WIDTH, WIDTH * now.getHeight() / now.getWidth()), "png", PICTURE.toFile());
            return;
        }
        int[] shown = cells(ImageIO.read(PICTURE.toFile()));
        int[] current = cells(now);
        assertThat(IntStream.range(0, shown.length)
                        .mapToDouble(i -> Math.abs(shown[i] - current[i]))
                        .average()
                        .orElseThrow())
                .as("mean difference of %s from the chart that is drawn now", PICTURE)
                .isLessThan(ALIKE);
    }

    private static int[] cells(BufferedImage picture) {
        BufferedImage small = scaled(picture, CELLS, CELLS);
        return IntStream.range(0, CELLS * CELLS)
                .map(i -> small.getRGB(i % CELLS, i / CELLS) >> 8 & 0xff)
                .toArray();
    }

    private static BufferedImage scaled(BufferedImage picture, int width, int height) {
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.drawImage(picture.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING), 0, 0, null);
        g.dispose();
        return small;
    }
}
