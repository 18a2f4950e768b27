package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.FuelWords;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.Subject;
import dev.warmlane.season.Installation;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.RealYears;
import dev.warmlane.weather.WeatherYears;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYSeries;

/** Charts of real years: what has a zero is a bar from it, what has none a dot. */
class YearsChartsTest {

    private static final Subject DESCRIBED = SampleReports.MUNICIPAL;
    private static final WeatherYears YEARS = WeatherYears.of(IntStream.range(0, 4)
            .mapToObj(i -> RealYears.like(DESCRIBED.forecast().weather(), 2001 + i, i - 2, 1))
            .toList());
    private static final Installation BUILT = DESCRIBED.forecast().installation();
    private static final YearsStudy STUDY = YearsStudy.of(BUILT, YEARS);

    /** Sums in another order, and pixels. */
    private static final double ROUNDING = 1e-9;

    @Test
    void temperaturesAreDotsWithAndWithoutCollectors() {
        Plot plot =
                YearsCharts.water("name", STUDY, UnitSystem.US).orElseThrow().plot();

        assertThat(plot.series())
                .as("levels alone are lines, and nothing is a bar")
                .noneMatch(YearsChartsTest::bar);
        assertThat(plot.dots()).extracting(Plot.Dots::name).containsExactly(YearsCharts.WITHOUT, YearsCharts.WITH);
        assertDots(plot.dots().get(0), YearNumber.WATER_MEAN_WITHOUT);
        assertDots(plot.dots().get(1), YearNumber.WATER_MEAN);
        for (Plot.Dots dots : plot.dots()) {
            assertThat(dots.places())
                    .allMatch(dot ->
                            dot.y() > plot.y().low() && dot.y() < plot.y().high());
        }
    }

    private static void assertDots(Plot.Dots dots, YearNumber number) {
        for (int i = 0; i < STUDY.seasons().size(); i++) {
            Plot.Dot dot = dots.places().get(i);
            assertThat(dot.x()).isEqualTo(i + 1);
            assertThat(dot.y())
                    .isEqualTo(Measure.TEMPERATURE.in(
                            UnitSystem.US, number.of(STUDY.seasons().get(i)).orElseThrow()));
        }
        assertThat(dots.places()).hasSize(STUDY.seasons().size());
    }

    /** A line of each year leads from the one dot to the other, and none from year to year. */
    @Test
    void twoDotsOfAYearAreJoined() {
        LinePlot plot = (LinePlot) YearsCharts.water("name", STUDY, UnitSystem.METRIC)
                .orElseThrow()
                .plot();
        List<XYSeries> joins = plot.painter().getSeriesCollection().stream()
                .filter(series -> !plot.series().contains(series))
                .toList();

        assertThat(joins).hasSize(STUDY.seasons().size());
        for (int i = 0; i < joins.size(); i++) {
            assertThat(joins.get(i).getXData()).containsExactly(i + 1, i + 1);
            assertThat(joins.get(i).getYData())
                    .containsExactly(
                            plot.dots().get(0).places().get(i).y(),
                            plot.dots().get(1).places().get(i).y());
        }
    }

    @Test
    void aPoolWithoutCollectorsHasOneDotAYear() {
        Plot plot = YearsCharts.water("name", YearsStudy.of(BUILT.withoutCollectors(), YEARS), UnitSystem.METRIC)
                .orElseThrow()
                .plot();

        assertThat(plot.dots()).extracting(Plot.Dots::name).containsExactly(YearsCharts.POOL);
    }

    @Test
    void daysAndFuelAreBarsFromZero() {
        for (Chart chart : List.of(
                YearsCharts.comfort("name", STUDY, new Numbers(UnitSystem.METRIC))
                        .orElseThrow(),
                YearsCharts.fuel("name", STUDY, FuelWords.of(DESCRIBED.summary().season()), UnitSystem.METRIC)
                        .orElseThrow())) {
            Plot plot = chart.plot();
            List<XYSeries> bars = plot.series().stream()
                    .filter(YearsChartsTest::bar)
                    .map(XYSeries.class::cast)
                    .toList();

            assertThat(plot.y().low()).isZero();
            assertThat(plot.dots()).isEmpty();
            assertThat(bars).hasSize(2);
            for (XYSeries outline : bars) {
                assertThat(Arrays.stream(outline.getYData()).min().orElseThrow())
                        .isCloseTo(0, within(ROUNDING));
            }
        }
    }

    private static boolean bar(Object series) {
        return ((XYSeries) series)
                .getXYSeriesRenderStyle()
                .filter(XYSeries.XYSeriesRenderStyle.PolygonArea::equals)
                .isPresent();
    }
}
