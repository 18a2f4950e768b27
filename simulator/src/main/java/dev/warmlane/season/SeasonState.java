package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Checks;
import java.util.List;

/**
 * Where a season stands between two hours: all that the hours before leave to those that follow.
 *
 * @param hourOfYear the hour that comes next, 0 to 8759
 * @param waterC water temperature, °C, 0 to 70
 * @param iceJm2 heat that the ice on the pool takes to melt, J per m² of water, 0 or above; 0 where the water is warmer
 *     than its freezing point
 * @param pumpsRunning whether each collector circuit runs to warm the pool, in the installation's order: a pump that runs
 *     goes on where one that stands would not start
 * @param groundC temperatures of the ground's stores ({@link dev.warmlane.pool.GroundStore}), °C; empty where all are as warm
 *     as the water, or none are counted
 */
public record SeasonState(
        int hourOfYear, double waterC, double iceJm2, List<Boolean> pumpsRunning, List<Double> groundC) {

    /** Checks every range. */
    public SeasonState {
        Checks.within("hour of the year", hourOfYear, 0, HourOfYear.HOURS - 1, "");
        Checks.within("water temperature", waterC, Ice.FREEZING_C, ImpossibleSeasonException.HOTTEST_C, "degC");
        Ice.checkHeat(iceJm2, waterC);
        pumpsRunning = List.copyOf(pumpsRunning);
        groundC = List.copyOf(groundC);
    }

    /** With ground that is as warm as the water, or whose store is not counted. */
    public SeasonState(int hourOfYear, double waterC, double iceJm2, List<Boolean> pumpsRunning) {
        this(hourOfYear, waterC, iceJm2, pumpsRunning, List.of());
    }

    /** Refuses an installation whose season begins elsewhere, or that has other circuits. */
    void checkBegins(Installation installation) {
        int first = installation.season().beginHour();
        if (hourOfYear != first) {
            throw new IllegalArgumentException("the state stands at " + HourOfYear.label(hourOfYear)
                    + " (month-day hour), the season of \"" + installation.name() + "\" begins at "
                    + HourOfYear.label(first) + ": let it open on that day");
        }
        if (pumpsRunning.size() != installation.arrays().size()) {
            throw new IllegalArgumentException("the state has " + pumpsRunning.size() + " circuits, \""
                    + installation.name() + "\" has " + installation.arrays().size()
                    + " arrays: say for each whether its pump runs");
        }
    }
}
