package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.SampleReports;
import dev.warmlane.report.Subject;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.knowm.xchart.internal.chartpart.AxesChart;

class SeasonAxisTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    /** Positions on paper are computed in doubles from pixels. */
    private static final double PIXEL_ROUNDING = 1e-6;

    static Stream<Arguments> reports() {
        return Stream.concat(SampleReports.usual().entrySet().stream(), SampleReports.odd().entrySet().stream())
                .map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @Test
    void monthsRunOverNewYear() {
        assertThat(labels(SampleReports.SOUTHERN))
                .containsExactly("1 Nov", "1 Dec", "1 Jan", "1 Feb", "1 Mar", "1 Apr");
    }

    @Test
    void wholeYearHasEveryMonthOnce() {
        assertThat(labels(SampleReports.INDOOR)).hasSize(13).startsWith("1 Jan").endsWith("1 Jan");
    }

    @Test
    void axisBeginsAndEndsWithTheSeason() {
        assertThat(labels(SampleReports.odd("a year from mid-month")))
                .hasSize(12)
                .startsWith("1 Apr")
                .endsWith("1 Mar");
        SeasonAxis axis = new SeasonAxis(SampleReports.SOUTHERN.forecast().with());
        assertThat(axis.scale().low()).isEqualTo(axis.at(0));
        assertThat(axis.scale().high())
                .isEqualTo(axis.at(SampleReports.SOUTHERN.forecast().with().hours()));
    }

    @Test
    void shortSeasonsAreCountedInDaysOrHours() {
        assertThat(labels(SampleReports.odd("one month"))).startsWith("1 Jun", "6 Jun", "11 Jun");
        assertThat(labels(SampleReports.odd("one day")))
                .containsExactly("14 Jul 0:00", "14 Jul 5:00", "14 Jul 10:00", "14 Jul 15:00", "14 Jul 20:00");
        assertThat(labels(SampleReports.odd("new year's day")))
                .containsExactly("31 Dec 0:00", "31 Dec 10:00", "31 Dec 20:00", "1 Jan 6:00", "1 Jan 16:00");
    }

    @Test
    void daysLieWithinTheirMonths() {
        SeasonAxis axis = new SeasonAxis(SampleReports.SOUTHERN.forecast().with());

        // from 20 October: 12 days of October, then November
        assertThat(axis.at(0)).isEqualTo(9 + 19.0 / 31, within(PIXEL_ROUNDING));
        assertThat(axis.at(12 * 24)).isEqualTo(10, within(PIXEL_ROUNDING));
        assertThat(axis.at((12 + 30 + 31) * 24)).isEqualTo(12, within(PIXEL_ROUNDING));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("reports")
    void ticksAreEvenOnPaper(String name, Subject report) {
        Chart chart = SeasonTemperatureChart.of("name", report);
        chart.paint(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics());
        AxesChart<?, ?> painter = chart.plot().painter();
        List<Double> ticks = chart.plot().ticks(PLAIN).stream()
                .map(tick -> painter.getScreenXFromChart(tick.at()))
                .toList();

        double step = ticks.get(1) - ticks.get(0);
        for (int i = 1; i < ticks.size(); i++) {
            assertThat(ticks.get(i) - ticks.get(i - 1)).isEqualTo(step, within(PIXEL_ROUNDING));
        }
    }

    private static List<String> labels(Subject report) {
        return SeasonTemperatureChart.of("name", report).plot().ticks(PLAIN).stream()
                .map(Plot.Tick::label)
                .toList();
    }
}
