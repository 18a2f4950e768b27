package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.PlateFlow;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.SampleStudies;
import dev.warmlane.report.SensitivityTables;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.HeldPool;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.units.DateOrder;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.NumberStyle;
import dev.warmlane.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.HorizontalBarSeries;
import org.knowm.xchart.XYSeries;
import org.xml.sax.InputSource;

/** Charts of studies can be drawn and show the numbers of the studies. */
class StudyChartsTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    /** Sums in another order. */
    private static final double ROUNDING = 1e-9;

    /** The plate's temperature follows from a loss coefficient that is settled to 0.1 %, a share of what is absorbed. */
    private static final double CLOSURE = 1e-3;

    static Stream<Arguments> studies() {
        return SampleStudies.all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    private static List<Chart> charts(SampleStudies studies) {
        return studies.reports().stream()
                .flatMap(report -> SampleReports.charts(report).stream())
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void everyStudyCanBeDrawn(String name, SampleStudies studies) throws Exception {
        for (Chart chart : charts(studies)) {
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(chart.svg())));
        }
        assertThat(charts(studies)).extracting(Chart::name).doesNotHaveDuplicates();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void nothingIsDrawnOutsideTheScales(String name, SampleStudies studies) {
        for (Chart chart : charts(studies)) {
            if (chart.plot() instanceof LinePlot plot) {
                plot.series().forEach(line -> {
                    assertWithin(
                            chart, line.getYData(), plot.y().low(), plot.y().high());
                    assertWithin(chart, line.getXData(), plot.left(), plot.right());
                });
            } else if (chart.plot() instanceof RowPlot plot) {
                plot.series().forEach(bars -> assertWithin(chart, values(bars), plot.left(), plot.right()));
            }
        }
    }

    private static void assertWithin(Chart chart, double[] values, double low, double high) {
        for (double value : values) {
            assertThat(value).as(chart.name()).isBetween(low, high);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void gridOfRowsLiesOnTheTicks(String name, SampleStudies studies) {
        for (Chart chart : charts(studies)) {
            if (!(chart.plot() instanceof RowPlot plot)) {
                continue;
            }
            BufferedImage image = new BufferedImage(Chart.WIDTH, chart.height(), BufferedImage.TYPE_INT_RGB);
            chart.paint(image.createGraphics());
            int beside = RowLabels.width(plot.rows());
            // above the first bar nothing but grid and ground is drawn
            int y = chart.plotTop()
                    + (int) plot.painter().getScreenYFromChart(plot.y().high())
                    + 2;
            List<Double> lines = new ArrayList<>();
            int from = -1;
            for (int x = beside + (int) plot.painter().getScreenXFromChart(plot.left()) - 3; x < Chart.WIDTH; x++) {
                boolean white = (image.getRGB(x, y) & 0xff) > 250;
                if (!white && from < 0) {
                    from = x;
                } else if (white && from >= 0) {
                    lines.add((from + x) / 2.0);
                    from = -1;
                }
            }
            double[] ticks = plot.ticks(PLAIN).stream()
                    .mapToDouble(tick -> beside + plot.painter().getScreenXFromChart(tick.at()))
                    .toArray();
            assertThat(lines).as(chart.name()).hasSize(ticks.length);
            for (int i = 0; i < ticks.length; i++) {
                assertThat(lines.get(i)).as(chart.name()).isEqualTo(ticks[i], within(1.0));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void labelsBelowDoNotMeet(String name, SampleStudies studies) {
        for (Chart chart : charts(studies)) {
            Plot plot = chart.plot();
            chart.paint(new BufferedImage(Chart.WIDTH, chart.height(), BufferedImage.TYPE_INT_RGB).createGraphics());
            double end = Double.NEGATIVE_INFINITY;
            for (Plot.Tick tick : plot.ticks(PLAIN)) {
                double half = Arrays.stream(tick.label().split("\n", -1))
                                .mapToDouble(line -> Lettering.plain(line).width())
                                .max()
                                .orElse(0)
                        / 2;
                double at = plot.painter().getScreenXFromChart(tick.at());
                assertThat(at - half).as(chart.name() + ", " + tick.label()).isGreaterThan(end);
                end = at + half;
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void heatOfMountingsIsThatOfBothComparisons(String name, SampleStudies studies) {
        MountingStudy study = studies.mountings();
        RowPlot heat = (RowPlot) chart(charts(studies), "mounting-heat").plot();
        RowPlot perArea =
                (RowPlot) chart(charts(studies), "mounting-heat-per-area").plot();

        assertThat(heat.rows())
                .extracting(Plot.Tick::label)
                .containsExactlyElementsOf(study.compared().stream()
                        .map(one -> one.option().name())
                        .toList());
        for (int i = 0; i < study.compared().size(); i++) {
            MountingResult area = study.compared().get(i).sameArea();
            Optional<MountingResult> roof = study.compared().get(i).sameRoof();
            assertThat(row(heat, MountingCharts.SAME_AREA)[i])
                    .isEqualTo(Measure.HEAT.in(studies.units(), area.deliveredKwh()));
            assertThat(row(heat, MountingCharts.SAME_ROOF)[i])
                    .isEqualTo(Measure.HEAT.in(
                            studies.units(),
                            roof.map(MountingResult::deliveredKwh).orElse(0.0)));
            assertThat(row(perArea, MountingCharts.SAME_AREA)[i])
                    .isEqualTo(Measure.HEAT_PER_AREA.in(studies.units(), area.deliveredKwhPerM2()));
            assertThat(row(perArea, MountingCharts.SAME_ROOF)[i])
                    .isEqualTo(Measure.HEAT_PER_AREA.in(
                            studies.units(),
                            roof.map(MountingResult::deliveredKwhPerM2).orElse(0.0)));
        }
    }

    @Test
    void lightTakenInIsAsMuchAsWhatBecomesOfIt() {
        for (SampleStudies studies : List.of(SampleStudies.MUNICIPAL, SampleStudies.CLUB, SampleStudies.SOUTHERN)) {
            BarPlot plot = (BarPlot) chart(charts(studies), "mounting-light").plot();
            List<MountingResult> results = studies.mountings().sameArea();
            for (int i = 0; i < results.size(); i++) {
                int at = i;
                LightBudget light = results.get(i).light().orElseThrow();
                double sum = plot.series().stream()
                        .mapToDouble(bars -> bars.getYData()[at])
                        .sum();
                double absorbed = Measure.LIGHT.in(studies.units(), light.absorbed());
                assertThat(sum).isEqualTo(0, within(CLOSURE * absorbed));
                assertThat(bars(plot, "useful heat")[i]).isEqualTo(-Measure.LIGHT.in(studies.units(), light.useful()));
                assertThat(bars(plot, "sun absorbed by the front")[i])
                        .isEqualTo(Measure.LIGHT.in(studies.units(), light.kwhM2(PlateFlow.ABSORBED_FRONT)));
            }
        }
    }

    @Test
    void certificateHasNoLightToShow() {
        assertThat(charts(SampleStudies.INDOOR)).extracting(Chart::name).doesNotContain("mounting-light");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void monthsAddUpToTheHeatOfAnArea(String name, SampleStudies studies) {
        BarPlot plot = (BarPlot) chart(charts(studies), "mounting-months").plot();
        for (MountingResult result : studies.mountings().sameArea()) {
            double sum = Arrays.stream(bars(plot, result.option().name())).sum();
            double season = Measure.HEAT_PER_AREA.in(studies.units(), result.deliveredKwhPerM2());
            assertThat(sum).isEqualTo(season, within(ROUNDING * (1 + season)));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void heldPoolIsThatOfTheStudy(String name, SampleStudies studies) {
        LinePlot plot = (LinePlot) chart(charts(studies), "mounting-held-pool").plot();
        for (MountingResult result : studies.mountings().sameArea()) {
            assertThat(at(line(plot, result.option().name()), Measure.TEMPERATURE.in(studies.units(), 24)))
                    .isEqualTo(
                            Measure.HEAT_PER_AREA.in(
                                    studies.units(),
                                    HeldPool.heatKwhM2(
                                            result.forecast().installation(),
                                            result.forecast().forcing(),
                                            24)),
                            within(ROUNDING * 1000));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void linesOfAreasGoThroughTheDesigns(String name, SampleStudies studies) {
        List<AreaDesign> designs = studies.areas().designs();
        if (designs.size() == 1) {
            assertThat(SampleReports.charts(studies.areaReport())).isEmpty();
            return;
        }
        List<Chart> charts = charts(studies);
        LinePlot heat = (LinePlot) chart(charts, "area-heat").plot();
        LinePlot worth = (LinePlot) chart(charts, "area-worth").plot();
        // where the heater holds comfort anyway its days are not drawn
        Optional<LinePlot> comfort = charts.stream()
                .filter(chart -> chart.name().equals("area-comfort"))
                .map(chart -> (LinePlot) chart.plot())
                .findFirst();
        assertThat(comfort.isEmpty())
                .isEqualTo(studies.areas()
                        .installation()
                        .heater()
                        .filter(heater -> studies.areas().installation().comfortC() <= heater.setPointC())
                        .isPresent());
        for (AreaDesign design : designs) {
            double area = Measure.AREA.in(studies.units(), design.areaM2());
            double kwh = design.season().balance().deliveredKwh();
            assertThat(at(line(heat, AreaCharts.HEAT), area)).isEqualTo(Measure.HEAT.in(studies.units(), kwh));
            assertThat(at(line(worth, AreaCharts.MEAN), area))
                    .isEqualTo(Measure.HEAT_PER_AREA.in(studies.units(), kwh / design.areaM2()));
            assertThat(at(line(worth, AreaCharts.NEXT), area))
                    .isEqualTo(Measure.HEAT_PER_AREA.in(
                            studies.units(), design.next().deliveredKwhPerM2()));
            comfort.ifPresent(drawn -> assertThat(at(line(drawn, AreaCharts.WITH), area))
                    .isEqualTo(design.season().comfort().daysAtComfort()));
        }
    }

    /** In square feet, so that the area has thousands to write. */
    @Test
    void areaWorthMostIsWrittenAsThePlaceDoes() {
        Notation place = new Notation(NumberStyle.POINT_COMMA, DateOrder.MONTH_FIRST);
        SampleStudies studies =
                SampleStudies.MUNICIPAL.in(new ReportSettings("invented", UnitSystem.US, place, Letterhead.NONE));
        LinePlot plot = (LinePlot) chart(charts(studies), "area-value").plot();

        assertThat(plot.series())
                .extracting(XYSeries::getName)
                .anyMatch(name -> name.matches(AreaCharts.MOST + "\\d+\\.\\d{3} ft²"));
    }

    @Test
    void roofIsDrawnWhereItEnds() {
        LinePlot plot =
                (LinePlot) chart(charts(SampleStudies.MUNICIPAL), "area-heat").plot();
        double limit = SampleStudies.MUNICIPAL.areas().roofLimitM2().orElseThrow();

        assertThat(line(plot, AreaCharts.ROOF).getXData()).containsOnly(limit);
        LinePlot pitched =
                (LinePlot) chart(charts(SampleStudies.INDOOR), "area-heat").plot();
        assertThat(pitched.series()).noneMatch(line -> line.getName().startsWith(AreaCharts.ROOF));
    }

    @Test
    void gasIsDrawnOnlyWhereSomeIsDisplaced() {
        LinePlot heated =
                (LinePlot) chart(charts(SampleStudies.MUNICIPAL), "area-heat").plot();
        AreaDesign first = SampleStudies.MUNICIPAL.areas().designs().get(0);
        assertThat(at(line(heated, "gas displaced"), first.areaM2()))
                .isEqualTo(first.season().gas().replacedKwh());

        List<Chart> unheated = charts(SampleStudies.SOUTHERN);
        assertThat(unheated).extracting(Chart::name).doesNotContain("sensitivity-gas");
        assertThat(chart(unheated, "area-heat").plot().series())
                .noneMatch(line -> line.getName().contains("gas"));
        assertThat(unheated).noneMatch(chart -> chart.title().contains("gas"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("studies")
    void sensitivityIsSortedAndThatOfTheStudy(String name, SampleStudies studies) {
        RowPlot plot = (RowPlot) chart(charts(studies), "sensitivity-pool").plot();
        double[] low = row(plot, "at the low value");
        double[] high = row(plot, "at the high value");
        List<Double> largest = new ArrayList<>();
        for (int i = 0; i < low.length; i++) {
            largest.add(Math.max(Math.abs(low[i]), Math.abs(high[i])));
            String label = plot.rows().get(i).label();
            Sensitivity parameter = studies.sensitivity().effects().stream()
                    .filter(s -> SensitivityTables.varied(s, new Numbers(studies.units()))
                            .equals(label))
                    .findFirst()
                    .orElseThrow();
            assertThat(low[i])
                    .isEqualTo(Measure.TEMPERATURE_DIFFERENCE.in(
                            studies.units(), parameter.low().change().meanK()));
            assertThat(high[i])
                    .isEqualTo(Measure.TEMPERATURE_DIFFERENCE.in(
                            studies.units(), parameter.high().change().meanK()));
        }
        assertThat(largest).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        // the first row is on top
        assertThat(plot.rows()).extracting(Plot.Tick::at).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void namesThatAreTheSameOnceCutKeepTheirRows() {
        List<Chart> charts = charts(SampleStudies.named("a mounting with a name that goes on and on ".repeat(5)));
        RowPlot plot = (RowPlot) chart(charts, "mounting-heat").plot();

        assertThat(plot.rows()).hasSize(2);
        assertThat(RowLabels.width(plot.rows())).isLessThan(Chart.WIDTH / 2);
        assertThat(row(plot, MountingCharts.SAME_AREA)).hasSize(2);
        charts.forEach(chart -> assertThat(chart.png()).isNotEmpty());
    }

    @Test
    void longWordsAreBrokenOnceAndThenCut() {
        assertThat(Lettering.broken("short", 200)).isEqualTo("short");
        assertThat(Lettering.broken("racks that face the morning", 110)).matches("racks that.*\n.*");
        assertThat(Lettering.broken("uninterruptedlongname".repeat(4), 110))
                .endsWith("…")
                .doesNotContain("\n");
        for (String line :
                Lettering.broken("one two three four five six seven eight", 80).split("\n", -1)) {
            assertThat(Lettering.plain(line).width()).isLessThanOrEqualTo(80);
        }
    }

    private static Chart chart(List<Chart> charts, String name) {
        return charts.stream()
                .filter(chart -> chart.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double[] values(HorizontalBarSeries bars) {
        return bars.getXData().stream().mapToDouble(Number::doubleValue).toArray();
    }

    private static double[] row(RowPlot plot, String name) {
        return plot.series().stream()
                .filter(bars -> bars.getName().equals(name))
                .map(StudyChartsTest::values)
                .findFirst()
                .orElseThrow();
    }

    private static double[] bars(BarPlot plot, String name) {
        return plot.series().stream()
                .filter(bars -> bars.getName().equals(name))
                .map(CategorySeries::getYData)
                .findFirst()
                .orElseThrow();
    }

    private static XYSeries line(LinePlot plot, String beginning) {
        return plot.series().stream()
                .filter(series -> series.getName().startsWith(beginning))
                .findFirst()
                .orElseThrow();
    }

    /** The value of a line at one of its points. */
    private static double at(XYSeries line, double x) {
        double[] places = line.getXData();
        int nearest = 0;
        for (int i = 1; i < places.length; i++) {
            nearest = Math.abs(places[i] - x) < Math.abs(places[nearest] - x) ? i : nearest;
        }
        assertThat(places[nearest]).isEqualTo(x, within(ROUNDING * (1 + x)));
        return DoubleStream.of(line.getYData()).skip(nearest).findFirst().orElseThrow();
    }
}
