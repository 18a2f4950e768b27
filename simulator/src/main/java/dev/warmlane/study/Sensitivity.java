package dev.warmlane.study;

import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.WaterCourse;

/**
 * What one parameter does to a season.
 *
 * @param name the parameter
 * @param why why it was varied so far
 * @param described what the installation has
 * @param low the season at one end
 * @param high the season at the other
 */
public record Sensitivity(String name, String why, Setting described, End low, End high) {

    /**
     * One end.
     *
     * @param setting what the parameter was set to
     * @param season the season with it
     * @param change what became different
     * @param water the pool hour by hour, days before opening too
     * @param opening how it opens
     */
    public record End(
            Setting setting, PeriodSummary season, Change change, WaterCourse water, OpeningSummary opening) {}

    /**
     * A season less the one described.
     *
     * @param meanK season's mean temperature of the pool, K
     * @param deliveredKwh heat delivered by the collectors, kWh
     * @param replacedKwh gas displaced, or gas that a heater would have burned for the same heat, kWh
     */
    public record Change(double meanK, double deliveredKwh, double replacedKwh) {

        static Change of(PeriodSummary described, PeriodSummary changed) {
            return new Change(
                    changed.water().meanC() - described.water().meanC(),
                    changed.balance().deliveredKwh() - described.balance().deliveredKwh(),
                    changed.gas().replacedKwh() - described.gas().replacedKwh());
        }
    }

    /** The larger of its two effects on the heat delivered, without sign, kWh. */
    public double effectOnHeatKwh() {
        return Math.max(Math.abs(low.change.deliveredKwh), Math.abs(high.change.deliveredKwh));
    }
}
