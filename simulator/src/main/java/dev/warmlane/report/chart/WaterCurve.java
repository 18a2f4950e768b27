package dev.warmlane.report.chart;

import dev.warmlane.season.SeasonLedger;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;

/**
 * Water temperature along a season, one point a day at noon; a season of a few days has one an hour, since its days
 * would be no curve.
 *
 * @param x places on the season's axis
 * @param mean means, in the unit shown
 * @param lowest lowest hours
 * @param highest highest hours
 */
@SuppressWarnings("ArrayRecordComponent") // lives between a ledger and its chart, never compared
record WaterCurve(double[] x, double[] mean, double[] lowest, double[] highest) {

    /** A season of fewer days is drawn by the hour. */
    private static final int FEW_DAYS = 21;

    static WaterCurve of(SeasonLedger ledger, SeasonAxis axis, UnitSystem units) {
        int step = ledger.hours() < 24 * FEW_DAYS ? 1 : 24;
        int points = ledger.hours() / step;
        WaterCurve curve =
                new WaterCurve(new double[points], new double[points], new double[points], new double[points]);
        for (int point = 0; point < points; point++) {
            int from = point * step;
            double sum = 0;
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (int index = from; index < from + step; index++) {
                double water = ledger.waterC(index);
                sum += water;
                lowest = Math.min(lowest, water);
                highest = Math.max(highest, water);
            }
            curve.x[point] = axis.at(from + step / 2.0);
            curve.mean[point] = Measure.TEMPERATURE.in(units, sum / step);
            curve.lowest[point] = Measure.TEMPERATURE.in(units, lowest);
            curve.highest[point] = Measure.TEMPERATURE.in(units, highest);
        }
        return curve;
    }
}
