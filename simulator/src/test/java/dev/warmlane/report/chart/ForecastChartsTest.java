package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.SampleReports;
import dev.warmlane.report.Subject;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.xml.sax.InputSource;

class ForecastChartsTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");
    private static final double INCH_M = 0.0254;

    static Stream<Arguments> reports() {
        return Stream.concat(SampleReports.usual().entrySet().stream(), SampleReports.odd().entrySet().stream())
                .map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("reports")
    void everySeasonCanBeDrawn(String name, Subject report) throws Exception {
        for (Chart chart : SampleReports.charts(SampleReports.report(report))) {
            BufferedImage image = new BufferedImage(chart.width(), chart.height(), BufferedImage.TYPE_INT_RGB);
            chart.paint(image.createGraphics());
            assertThat(darkPixels(image)).as(chart.name()).isGreaterThan(500);
            parse(chart.svg());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("reports")
    void nothingIsDrawnOutsideTheScale(String name, Subject report) {
        for (Chart chart : SampleReports.charts(SampleReports.report(report))) {
            if (chart.plot() instanceof LinePlot plot) {
                double low = plot.painter().getStyler().getYAxisMin();
                double high = plot.painter().getStyler().getYAxisMax();
                plot.series().forEach(series -> {
                    for (double y : series.getYData()) {
                        assertThat(y).as(chart.name() + ", " + series.getName()).isBetween(low, high);
                    }
                });
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("reports")
    void gridLiesOnTheTicks(String name, Subject report) {
        for (Chart chart : bothWays(report)) {
            Plot plot = chart.plot();
            AxesChart<?, ?> painter = plot.painter();
            BufferedImage image = new BufferedImage(Chart.WIDTH, Chart.HEIGHT, BufferedImage.TYPE_INT_RGB);
            chart.paint(image.createGraphics());
            int top = chart.plotTop();
            // beside the first and below the last tick nothing but grid is drawn
            int x = (int) painter.getScreenXFromChart(plot.left()) - 3;
            int y = (int) painter.getScreenYFromChart(plot.y().low()) + 2;
            List<Double> levels = DoubleStream.iterate(
                            plot.y().low(),
                            at -> at <= plot.y().high() * (1 + 1e-9) + 1e-9,
                            at -> at + plot.y().step())
                    .mapToObj(painter::getScreenYFromChart)
                    .sorted()
                    .toList();
            assertLines(
                    lines(
                            (int) painter.getScreenYFromChart(plot.y().high()) - 3,
                            y + 2,
                            at -> image.getRGB(x, top + at)),
                    levels,
                    chart.name() + ", levels");
            if (plot instanceof LinePlot) {
                List<Double> places = plot.ticks(PLAIN).stream()
                        .map(tick -> painter.getScreenXFromChart(tick.at()))
                        .toList();
                assertLines(lines(x, Chart.WIDTH, at -> image.getRGB(at, top + y)), places, chart.name() + ", places");
            }
        }
    }

    /** As files of their own and within the page, where they have more room. */
    private static List<Chart> bothWays(Subject report) {
        return SampleReports.charts(SampleReports.report(report)).stream()
                .flatMap(chart -> Stream.of(chart, chart.inPage()))
                .toList();
    }

    /** Middles of what is not white along a line of pixels. */
    private static List<Double> lines(int first, int end, IntUnaryOperator colour) {
        List<Double> lines = new ArrayList<>();
        int from = -1;
        for (int at = first; at <= end; at++) {
            boolean white = at == end || (colour.applyAsInt(at) & 0xff) > 250;
            if (!white && from < 0) {
                from = at;
            } else if (white && from >= 0) {
                lines.add((from + at) / 2.0);
                from = -1;
            }
        }
        return lines;
    }

    private static void assertLines(List<Double> drawn, List<Double> expected, String what) {
        assertThat(drawn).as(what).hasSameSizeAs(expected);
        for (int i = 0; i < drawn.size(); i++) {
            assertThat(drawn.get(i)).as(what).isEqualTo(expected.get(i), within(1.0));
        }
    }

    @Test
    void usualForecastHasAllCharts() {
        assertThat(names(SampleReports.MUNICIPAL))
                .containsExactly(
                        "season-doubt",
                        "season-temperature",
                        "temperature-duration",
                        "money-over-years",
                        "alternatives",
                        "pool-balance",
                        "heat-and-gas");
    }

    @Test
    void whatThereIsNothingToShowOnIsLeftOut() {
        assertThat(names(SampleReports.odd("neither collectors nor heater"))).doesNotContain("heat-and-gas");
        assertThat(names(SampleReports.odd("never open"))).doesNotContain("temperature-duration");
    }

    @Test
    void namesInOnePageAreUnique() {
        List<String> ids = new ArrayList<>();
        for (Chart chart : SampleReports.charts(SampleReports.report(SampleReports.MUNICIPAL))) {
            Matcher id = ID.matcher(chart.svg());
            while (id.find()) {
                ids.add(id.group(1));
            }
        }
        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void pngIsMadeForPrint() throws IOException {
        byte[] png = SeasonTemperatureChart.of("name", SampleReports.MUNICIPAL).png();
        assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(2400);
        int chunk = new String(png, StandardCharsets.ISO_8859_1).indexOf("pHYs");

        assertThat(chunk).isPositive();
        double dotsPerMetre = ByteBuffer.wrap(png, chunk + 4, 4).getInt();
        assertThat(dotsPerMetre * INCH_M).isEqualTo(300, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "$x^2$",
                "<script>alert('no')</script> & \"more\"",
                "池 Ωμέγα 🏊",
                "a title that goes on and on and on and on and on and on and on and on and on and on and on and on and on"
                        + " and on and on and on and on and on and on and on and on and on"
            })
    void anyTitleCanBeDrawn(String title) throws Exception {
        Chart chart = SeasonTemperatureChart.of("name", SampleReports.titled(title));

        parse(chart.svg());
        assertThat(chart.svg()).doesNotContain("script").doesNotContainPattern("\\d[Ee][-+]?\\d+[\",\\s)]");
        assertThat(chart.png()).isNotEmpty();
    }

    @Test
    void longWordsAreCutToTheirRoom() {
        assertThat(Lettering.plain("a very long line of words", 80).width()).isLessThanOrEqualTo(80);
        assertThat(Lettering.plain("short", 80).width())
                .isEqualTo(Lettering.plain("short").width());
    }

    @Test
    void legendNeedsAsManyRowsAsItsWords() {
        LinePlot plot = (LinePlot)
                SeasonTemperatureChart.of("name", SampleReports.MUNICIPAL).plot();

        int oneRow = new Legend(plot, 10_000).height();
        assertThat(new Legend(plot, Chart.WIDTH - 2 * Chart.PADDING).height()).isEqualTo(oneRow);
        assertThat(new Legend(plot, 10).height())
                .isEqualTo(oneRow * plot.series().size());
    }

    private static List<String> names(Subject report) {
        return SampleReports.charts(SampleReports.report(report)).stream()
                .map(Chart::name)
                .toList();
    }

    private static long darkPixels(BufferedImage image) throws IOException {
        long dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        return dark;
    }

    private static void parse(String svg) throws Exception {
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
