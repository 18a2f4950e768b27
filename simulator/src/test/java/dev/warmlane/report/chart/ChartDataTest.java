package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.heater.Boiler;
import dev.warmlane.pool.Flow;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.Subject;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.WaterCourse;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.XYSeries;

/** Charts show the numbers of ledger and summaries. */
class ChartDataTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    /** Sums in another order. */
    private static final double ROUNDING = 1e-9;

    static Stream<Subject> reports() {
        return SampleReports.usual().values().stream();
    }

    @ParameterizedTest
    @MethodSource("reports")
    void seasonTemperatureShowsMeansAndRangesOfTheDays(Subject report) {
        Plot plot = SeasonTemperatureChart.of("name", report).plot();
        List<PeriodSummary> days = report.forecast().days();

        double[] with = points(line(plot, SeasonTemperatureChart.WITH), days.size());
        double[] without = points(line(plot, SeasonTemperatureChart.WITHOUT), days.size());
        double[] band = line(plot, SeasonTemperatureChart.RANGE).getYData();
        for (int day = 0; day < days.size(); day++) {
            PeriodSummary one = days.get(day);
            assertThat(with[day]).isEqualTo(shown(report, one.water().meanC()), within(ROUNDING));
            assertThat(without[day]).isEqualTo(shown(report, one.waterWithout().meanC()), within(ROUNDING));
            assertThat(band[day]).isEqualTo(shown(report, one.water().highestC()), within(ROUNDING));
            assertThat(band[band.length - 1 - day])
                    .isEqualTo(shown(report, one.water().lowestC()), within(ROUNDING));
        }
    }

    @ParameterizedTest
    @MethodSource("reports")
    void seasonTemperatureShowsComfortAndSetPoint(Subject report) {
        double[] levels = SeasonTemperatureChart.levels(report);

        assertThat(levels[0])
                .isEqualTo(shown(report, report.forecast().installation().comfortC()));
        report.forecast()
                .installation()
                .heater()
                .ifPresentOrElse(
                        heater -> assertThat(levels[1]).isEqualTo(shown(report, heater.setPointC())),
                        () -> assertThat(levels).hasSize(1));
    }

    @Test
    void daysAreShownBetweenTheBoundsOfTheirDoubt() {
        Subject report = SampleReports.SOUTHERN;
        SeasonBand doubts = SeasonBand.of(report.forecast());
        Plot plot = DoubtChart.of("name", report, doubts).plot();
        double[] band = line(plot, DoubtChart.BAND).getYData();
        Estimate day = doubts.waterC(WaterCourse.of(report.forecast().with()), 2400, 2424);

        assertThat(band[100]).isEqualTo(shown(report, day.high()), within(ROUNDING));
        assertThat(band[band.length - 1 - 100]).isEqualTo(shown(report, day.low()), within(ROUNDING));
        assertThat(points(
                        line(plot, SeasonTemperatureChart.WITH),
                        report.forecast().days().size())[100])
                .isEqualTo(shown(report, dayMean(report.forecast().with(), 100)), within(ROUNDING))
                .isBetween(shown(report, day.low()), shown(report, day.high()));
    }

    @ParameterizedTest
    @MethodSource("reports")
    void barsOfTheBalanceAddUpToTheHeatStored(Subject report) {
        List<PeriodSummary> months = report.forecast().months();
        BarPlot plot = (BarPlot) PoolBalanceChart.of("name", report).plot();

        for (int month = 0; month < months.size(); month++) {
            int m = month;
            double sum = plot.series().stream()
                    .mapToDouble(bars -> bars.getYData()[m])
                    .sum();
            double stored =
                    Measure.HEAT.in(report.units(), months.get(month).balance().storedKwh());
            double moved = plot.series().stream()
                    .mapToDouble(bars -> Math.abs(bars.getYData()[m]))
                    .sum();
            assertThat(sum).isEqualTo(stored, within(ROUNDING * moved));
        }
    }

    /** Those whose heater's efficiency is one number; without a heater too. */
    static Stream<Subject> burning() {
        return reports().filter(report -> report.forecast()
                .installation()
                .heater()
                .filter(heater -> !(heater instanceof Boiler))
                .isEmpty());
    }

    @ParameterizedTest
    @MethodSource("burning")
    void heatAndGasAreThoseOfTheMonths(Subject report) {
        List<PeriodSummary> months = report.forecast().months();
        BarPlot plot =
                (BarPlot) HeatAndGasChart.of("name", report).orElseThrow().plot();

        assertThat(plot.ticks(PLAIN).stream().map(Plot.Tick::label))
                .containsExactlyElementsOf(months.stream()
                        .map(m -> report.numbers().label(m.period()))
                        .toList());
        for (CategorySeries bars : plot.series()) {
            for (int m = 0; m < months.size(); m++) {
                PeriodSummary month = months.get(m);
                double kwh =
                        switch (bars.getName().replaceFirst("^biomethane", "gas")) {
                            case HeatAndGasChart.DELIVERED -> month.balance().deliveredKwh();
                            case "gas burned" + HeatAndGasChart.WITHOUT ->
                                burned(report, month.balanceWithout().kwh(Flow.HEATER));
                            default -> burned(report, month.balance().kwh(Flow.HEATER));
                        };
                assertThat(bars.getYData()[m])
                        .isEqualTo(Measure.HEAT.in(report.units(), kwh), within(ROUNDING * (1 + Math.abs(kwh))));
            }
        }
    }

    private static double burned(Subject report, double heaterKwh) {
        return heaterKwh / ((Boiler) report.forecast().installation().heater().orElseThrow()).efficiency();
    }

    @ParameterizedTest
    @MethodSource("reports")
    void durationCrossesComfortAtTheHoursAtComfort(Subject report) {
        XYSeries line = line(DurationChart.of("name", report).orElseThrow().plot(), SeasonTemperatureChart.WITH);
        PeriodSummary season = report.summary().season();
        double comfort = shown(report, report.forecast().installation().comfortC()) - 1e-6;

        double[] y = line.getYData();
        assertThat(Arrays.stream(y).boxed().toList()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        int last = 0;
        while (last + 1 < y.length && y[last + 1] >= comfort) {
            last++;
        }
        double hours = line.getXData()[last];
        // the curve has a point every few hours
        double spacing = line.getXData()[1] - line.getXData()[0] + 1;
        if (season.comfort().openHoursAtComfort() > 0) {
            assertThat(hours).isEqualTo(season.comfort().openHoursAtComfort(), within(spacing));
        }
        assertThat(line.getXData()[y.length - 1]).isEqualTo(season.comfort().openHours());
    }

    /** The points of a line among those that were put between them. */
    private static double[] points(XYSeries line, int count) {
        int parts = (line.getYData().length - 1) / (count - 1);
        double[] points = new double[count];
        for (int i = 0; i < count; i++) {
            points[i] = line.getYData()[i * parts];
        }
        return points;
    }

    private static XYSeries line(Plot plot, String name) {
        return ((LinePlot) plot)
                .series().stream()
                        .filter(series -> series.getName().equals(name))
                        .findFirst()
                        .orElseThrow();
    }

    private static double dayMean(SeasonLedger ledger, int day) {
        double sum = 0;
        for (int index = 24 * day; index < 24 * day + 24; index++) {
            sum += ledger.waterC(index);
        }
        return sum / 24;
    }

    private static double shown(Subject report, double celsius) {
        return Measure.TEMPERATURE.in(report.units(), celsius);
    }
}
