package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.report.chart.ComputedOverMeasured;
import dev.warmlane.report.chart.ComputedOverMeasured.Points;
import dev.warmlane.report.chart.ResidualsOver;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Nine months of a measured basin: docs/validation/basin.md, with {@code -Dmeasured.dir=}. {@code -Ddocs.write=true} writes its
 * tables and charts. Sums and statistics are told, no row of the measurement.
 */
@Tag("handbook")
class MeasuredBasinTest {

    private static final String PAGE = "validation/basin.md";

    @Test
    void pageIsWhatIsComputed() throws IOException {
        BasinLog log = BasinLog.read();
        WeatherRecord weather = BasinLog.weather();
        List<Double> found = log.pieces().stream()
                .map(piece -> LogClock.shiftHours(piece, weather))
                .toList();
        List<Integer> clock = clock(found);
        BasinRun alone = BasinRun.of(BasinPools.WATER_ALONE, weather, log, clock);
        BasinRun described = BasinRun.of(BasinPools.DESCRIBED, weather, log, clock);
        DocBlock.check(PAGE, "clock", BasinTables.clockFound(log, found));
        DocBlock.check(PAGE, "results", BasinTables.results(weather, log, clock));
        DocBlock.check(PAGE, "months", BasinTables.months(alone, described));
        DocBlock.check(PAGE, "swings", BasinTables.swings(weather, log, clock));
        DocBlock.check(PAGE, "hours of day", BasinTables.hoursOfDay(alone, described));
        DocBlock.check(PAGE, "wind and light", BasinTables.windAndLight(weather, alone, described));
        DocBlock.check(PAGE, "one at a time", BasinTables.oneAtATime(weather, log, clock));
        DocBlock.check(PAGE, "uncertainty", BasinTables.uncertainty(log, clock, described));
        Handbook.check(PAGE, BasinTables.quantities(described));
        charts(described);
    }

    /** Legal summer time began on 25 September 2016 and ended on 2 April 2017; whoever read the logger out set its clock. */
    @Test
    void theClockIsThatOfSummerTimeInTheDataAlone() throws IOException {
        WeatherRecord weather = BasinLog.weather();
        for (BasinLog.Piece piece : BasinLog.read().pieces()) {
            boolean summer = piece.first().toLocalDate().toString().compareTo("2016-09-25") >= 0
                    && piece.first().toLocalDate().toString().compareTo("2017-04-02") <= 0;
            assertThat(LogClock.shiftHours(piece, weather))
                    .as("from %s", piece.first())
                    .isBetween(summer ? -1.4 : -0.4, summer ? -0.8 : 0.2);
        }
    }

    /** Each part of the description has a reason of its own, and together they bring the basin nearer by the hour and the day. */
    @Test
    void wallsStoreAndThroughFlowBringItNearer() throws IOException {
        BasinLog log = BasinLog.read();
        WeatherRecord weather = BasinLog.weather();
        List<Integer> clock = clock(log.pieces().stream()
                .map(piece -> LogClock.shiftHours(piece, weather))
                .toList());
        BasinRun alone = BasinRun.of(BasinPools.WATER_ALONE, weather, log, clock);
        BasinRun described = BasinRun.of(BasinPools.DESCRIBED, weather, log, clock);
        // the aim: 0.8 K by the hour, 0.5 K by the day, every month within 0.4 K
        assertThat(described.byHour().rms())
                .isLessThan(Math.min(0.8, alone.byHour().rms()));
        assertThat(described.byDay().rms())
                .isLessThan(Math.min(0.5, 0.95 * alone.byDay().rms()));
        assertThat(described.months())
                .allSatisfy(month ->
                        assertThat(Math.abs(described.month(month).bias())).isLessThan(0.4));
    }

    private static List<Integer> clock(List<Double> found) {
        return found.stream().map(hours -> (int) Math.round(hours)).toList();
    }

    private static void charts(BasinRun run) throws IOException {
        Residuals days = run.byDay();
        List<Points> seasons = new ArrayList<>();
        String[] names = {"winter, August", "spring", "summer", "autumn"};
        for (int season = 0; season < 4; season++) {
            int of = season;
            Residuals rows = days.where(row -> season(run.dayStarts().get(row).getMonthValue()) == of);
            seasons.add(new Points(names[season], rows.measured(), rows.computed()));
        }
        DocChart.check(ComputedOverMeasured.of(
                "basin-days",
                "The basin's water, mean of each day, nothing fitted",
                "Pilot pond of Chambonnière, Bronlund and Guieysse, August 2016 to May 2017; as described, wind factor 0.30",
                "water, °C",
                0.3,
                seasons));
        Residuals hours = run.byHour();
        DocChart.check(ResidualsOver.of(
                "basin-hours",
                "The basin's water, computed less measured, by the hour of the day",
                "As described, wind factor 0.30; each hour, and the mean of all of one hour of the day",
                "hour of the day, New Zealand standard time",
                "computed less measured, K",
                IntStream.range(0, hours.rows())
                        .mapToDouble(row -> run.start(row).getHour() + 0.5)
                        .toArray(),
                IntStream.range(0, hours.rows())
                        .mapToDouble(row -> hours.computed()[row] - hours.measured()[row])
                        .toArray()));
    }

    /** Of the southern half of the earth, from winter on. */
    private static int season(int month) {
        return (month + 6) / 3 % 4;
    }
}
