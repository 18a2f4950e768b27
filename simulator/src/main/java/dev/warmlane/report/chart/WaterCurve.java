package dev.warmlane.report.chart;

import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.WaterCourse;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.DoubleSummaryStatistics;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * Water temperature along a season, one point a day at noon; a season of a few days has one an hour, since its days
 * would be no curve.
 *
 * @param x places on the season's axis
 * @param mean means, in the unit shown
 * @param lowest what goes below them
 * @param highest what goes above them
 */
@SuppressWarnings("ArrayRecordComponent") // lives between a ledger and its chart, never compared
record WaterCurve(double[] x, double[] mean, double[] lowest, double[] highest) {

    /** A season of fewer days is drawn by the hour. */
    private static final int FEW_DAYS = 21;

    /** Each point with the lowest and the highest hour of its day. */
    static WaterCurve of(SeasonLedger ledger, SeasonAxis axis, UnitSystem units) {
        return of(ledger, axis, units, (from, to) -> {
            DoubleSummaryStatistics water =
                    IntStream.range(from, to).mapToDouble(ledger::waterC).summaryStatistics();
            // the mean of hours that are all alike may be rounded out of them
            return Estimate.around(water.getAverage(), water.getMin(), water.getMax());
        });
    }

    /** Each point with the bounds of the mean's doubt. */
    static WaterCurve doubtful(SeasonLedger ledger, SeasonBand band, SeasonAxis axis, UnitSystem units) {
        WaterCourse described = WaterCourse.of(ledger);
        return of(ledger, axis, units, (from, to) -> band.waterC(described, from, to));
    }

    private static WaterCurve of(
            SeasonLedger ledger, SeasonAxis axis, UnitSystem units, BiFunction<Integer, Integer, Estimate> hours) {
        int step = ledger.hours() < 24 * FEW_DAYS ? 1 : 24;
        int points = ledger.hours() / step;
        WaterCurve curve =
                new WaterCurve(new double[points], new double[points], new double[points], new double[points]);
        for (int point = 0; point < points; point++) {
            int from = point * step;
            Estimate water = hours.apply(from, from + step).map(celsius -> Measure.TEMPERATURE.in(units, celsius));
            curve.x[point] = axis.at(from + step / 2.0);
            curve.mean[point] = water.likely();
            curve.lowest[point] = water.low();
            curve.highest[point] = water.high();
        }
        return curve;
    }
}
