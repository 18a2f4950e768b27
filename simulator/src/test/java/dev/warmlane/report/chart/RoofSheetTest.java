package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.Numbers;
import dev.warmlane.roof.LaidRoof;
import dev.warmlane.roof.LaidSurface;
import dev.warmlane.roof.Laying;
import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.Surface;
import dev.warmlane.roof.Wanted;
import dev.warmlane.units.UnitSystem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes are measured on the drawing as on paper and multiplied by its scale. */
class RoofSheetTest {

    private static final Pattern PATH = Pattern.compile("<path d=\"([^\"]*)\" style=\"([^\"]*)\"");
    private static final Pattern POINT = Pattern.compile("(-?[\\d.]+),(-?[\\d.]+)");

    private static final Pattern LINE =
            Pattern.compile("x1=\"([\\d.]+)\" x2=\"([\\d.]+)\" y1=\"([\\d.]+)\" y2=\"([\\d.]+)\"");

    /** A hundredth of a pixel, to which coordinates are written, at a scale of 1:5000 and twice. */
    private static double roundingM(RoofSheet sheet) {
        return 2 * 0.01 * metresPerPixel(sheet);
    }

    private static double metresPerPixel(RoofSheet sheet) {
        return sheet.scale() / 1000.0 / RoofSheet.PIXELS_PER_MM;
    }

    private static RoofSheet sheet(String name, double lengthM, double widthM, double azimuthDeg) {
        Surface surface = new Surface(
                name,
                Outline.rectangle(lengthM, widthM),
                azimuthDeg,
                0,
                6,
                0,
                1,
                List.of(new Obstacle("vent", new Obstacle.Disc(new RoofPoint(5, 5), 0.5), 0.4, 0.3)));
        RoofLayout layout = RoofLayout.most(List.of(surface), PanelRules.usual(1.2, 3.0), new Laying.Mats());
        return new RoofSheet("plan", name, alone(layout), new Numbers(UnitSystem.METRIC));
    }

    private static LaidSurface alone(RoofLayout layout) {
        return new LaidSurface(
                List.of(new LaidSurface.On("mats", layout.surfaces().get(0), layout.laying())));
    }

    /** Width and height of the paths that are drawn with a style, in pixels, in their order. */
    private static List<double[]> boxes(String svg, String style) {
        List<double[]> boxes = new ArrayList<>();
        Matcher path = PATH.matcher(svg);
        while (path.find()) {
            if (path.group(2).contains(style)) {
                double[] box = {1e9, 1e9, -1e9, -1e9};
                Matcher point = POINT.matcher(path.group(1));
                while (point.find()) {
                    box[0] = Math.min(box[0], Double.parseDouble(point.group(1)));
                    box[1] = Math.min(box[1], Double.parseDouble(point.group(2)));
                    box[2] = Math.max(box[2], Double.parseDouble(point.group(1)));
                    box[3] = Math.max(box[3], Double.parseDouble(point.group(2)));
                }
                boxes.add(new double[] {box[2] - box[0], box[3] - box[1]});
            }
        }
        return boxes;
    }

    @ParameterizedTest
    @CsvSource({"30, 14", "120, 33", "8.4, 61", "450, 280", "12.34, 9.87"})
    void theRoofHasItsSizeOnPaper(double lengthM, double widthM) {
        RoofSheet sheet = sheet("hall", lengthM, widthM, 180);

        // the thick line is drawn once
        List<double[]> edges = boxes(sheet.svg(), "stroke-width:2.4");

        assertThat(edges).hasSize(1);
        // rows run one way or the other
        double shorter = Math.min(edges.get(0)[0], edges.get(0)[1]) * metresPerPixel(sheet);
        double longer = Math.max(edges.get(0)[0], edges.get(0)[1]) * metresPerPixel(sheet);
        assertThat(longer).isCloseTo(Math.max(lengthM, widthM), within(roundingM(sheet)));
        assertThat(shorter).isCloseTo(Math.min(lengthM, widthM), within(roundingM(sheet)));
        assertThat(sheet.width() / RoofSheet.PIXELS_PER_MM).isCloseTo(184, within(0.2));
        assertThat(sheet.height() / RoofSheet.PIXELS_PER_MM)
                .as("Letter has 259 mm")
                .isLessThan(240);
    }

    @Test
    void panelsAndHeadersHaveTheirSizesOnPaper() {
        RoofSheet sheet = sheet("hall", 30, 14, 180);
        List<double[]> lines = boxes(sheet.svg(), "stroke-width:0.5");

        long panels = lines.stream()
                .filter(box -> Math.abs(box[0] * metresPerPixel(sheet) - 1.2) < roundingM(sheet)
                        && Math.abs(box[1] * metresPerPixel(sheet) - 3) < roundingM(sheet))
                .count();

        // 70 fit on the empty roof; the vent and its clearance take some of one row
        assertThat(panels).isBetween(60L, 70L);
    }

    /** Lines at 45 degrees that are longer than a tick. */
    private static long slanted(RoofSheet sheet) {
        return LINE.matcher(sheet.svg())
                .results()
                .filter(line -> {
                    double x = Double.parseDouble(line.group(1)) - Double.parseDouble(line.group(2));
                    double y = Double.parseDouble(line.group(3)) - Double.parseDouble(line.group(4));
                    return Math.abs(Math.abs(x) - Math.abs(y)) < 0.1 && Math.abs(x) > 12;
                })
                .count();
    }

    @Test
    void collectorsThatShareItAreHatchedAndNamed() {
        Surface hall = Surface.flat("hall", Outline.rectangle(30, 14), 180, 6);
        PanelRules rules = PanelRules.usual(1.2, 3.0);
        LaidRoof roof = LaidRoof.of(
                rules,
                List.of(
                        new Wanted(List.of(hall), new Laying.Mats(), 36),
                        new Wanted(List.of(hall), new Laying.Mats(), 72)));
        List<LaidSurface.On> on = roof.laid().stream()
                .map(laid -> new LaidSurface.On(
                        "mats", laid.layout().surfaces().get(0), laid.layout().laying()))
                .toList();
        Numbers numbers = new Numbers(UnitSystem.METRIC);
        RoofSheet both = new RoofSheet("plan", "hall", new LaidSurface(on), numbers);
        RoofSheet first = new RoofSheet("plan", "hall", new LaidSurface(on.subList(0, 1)), numbers);
        RoofSheet second = new RoofSheet("plan", "hall", new LaidSurface(on.subList(1, 2)), numbers);

        assertThat(slanted(first)).isZero();
        assertThat(slanted(second)).as("alone nothing is hatched").isZero();
        assertThat(slanted(both)).isGreaterThan(20);
        assertThat(both.height()).as("the names have their lines").isGreaterThan(first.height() + 30);
        double pixel = 1.2 / metresPerPixel(both);
        assertThat(boxes(both.svg(), "stroke-width:0.5").stream()
                        .filter(box -> Math.abs(box[0] - pixel) < 0.1
                                && Math.abs(box[1] * metresPerPixel(both) - 3) < roundingM(both)))
                .as("panels of both")
                .hasSize(30);
    }

    @Test
    void northIsWhereTheAzimuthSays() {
        // rows of the same roof, its reference edge to the south and to the west: the arrow is turned by a quarter
        double[] south = arrow(sheet("hall", 30, 14, 180));
        double[] west = arrow(sheet("hall", 30, 14, 270));

        assertThat(south[0]).isCloseTo(west[1], within(0.1));
        assertThat(south[1]).isCloseTo(west[0], within(0.1));
        assertThat(Math.abs(south[0] - south[1])).as("it is longer than wide").isGreaterThan(10);
    }

    /** The only filled path of four corners that is no rectangle. */
    private static double[] arrow(RoofSheet sheet) {
        String svg = sheet.svg();
        Matcher path = PATH.matcher(svg);
        while (path.find()) {
            Matcher corners = POINT.matcher(path.group(1));
            long count = corners.results().count();
            boolean straight = !path.group(1).contains("Q") && !path.group(1).contains("C");
            if (straight && count == 4 && path.group(2).contains("fill:rgb(0,0,0)")) {
                List<double[]> box = boxes(path.group(), "fill");
                if (Math.abs(Math.max(box.get(0)[0], box.get(0)[1]) - 40) < 0.1
                        && Math.abs(Math.min(box.get(0)[0], box.get(0)[1]) - 14) < 0.1) {
                    return box.get(0);
                }
            }
        }
        throw new AssertionError("no arrow on " + svg);
    }

    @Test
    void namesCannotBecomeMarkup() {
        String svg = sheet("\"><script>alert(1)</script>&", 30, 14, 180).svg();

        assertThat(svg).doesNotContain("<script").contains("&lt;script&gt;").contains("&amp;");
    }

    @Test
    void theSameDrawingIsTheSameToTheLetter() throws IOException {
        assertThat(sheet("hall", 30, 14, 180).svg())
                .isEqualTo(sheet("hall", 30, 14, 180).svg());
        assertThat(ImageIO.read(new ByteArrayInputStream(
                                sheet("hall", 30, 14, 180).png()))
                        .getWidth())
                .as("300 dots to the inch")
                .isCloseTo((int) (184 / 25.4 * 300), within(10));
    }
}
