package dev.warmlane.season;

import dev.warmlane.units.Checks;
import java.time.LocalDateTime;
import java.util.List;

/**
 * Where a run over a record stands between two hours: all that the hours before leave to those that follow.
 *
 * @param time when the next hour begins, local standard time
 * @param waterC water temperature, °C, 0 to 70
 * @param iceJm2 heat that the ice on the pool takes to melt, J per m² of water, 0 or above; 0 where the water is warmer
 *     than its freezing point
 * @param pumpsRunning whether each collector circuit runs to warm the pool, in the installation's order; empty where all
 *     of them stand
 * @param groundC temperatures of the ground's stores ({@link dev.warmlane.pool.GroundStore}), °C; empty where all are as warm
 *     as the water, or none are counted
 */
public record RecordState(
        LocalDateTime time, double waterC, double iceJm2, List<Boolean> pumpsRunning, List<Double> groundC) {

    /** Checks every range. */
    public RecordState {
        Checks.within("water temperature", waterC, Ice.FREEZING_C, ImpossibleSeasonException.HOTTEST_C, "degC");
        Ice.checkHeat(iceJm2, waterC);
        pumpsRunning = List.copyOf(pumpsRunning);
        groundC = List.copyOf(groundC);
    }

    /** With ground that is as warm as the water, or whose store is not counted. */
    public RecordState(LocalDateTime time, double waterC, double iceJm2, List<Boolean> pumpsRunning) {
        this(time, waterC, iceJm2, pumpsRunning, List.of());
    }

    /** Water of a temperature without ice, every pump standing. */
    public static RecordState water(LocalDateTime time, double waterC) {
        return new RecordState(time, waterC, 0, List.of());
    }

    /** Refuses an installation that has other circuits. */
    void checkCircuits(Installation installation) {
        if (!pumpsRunning.isEmpty()
                && pumpsRunning.size() != installation.arrays().size()) {
            throw new IllegalArgumentException("the state has " + pumpsRunning.size() + " circuits, \""
                    + installation.name() + "\" has " + installation.arrays().size()
                    + " arrays: say for each whether its pump runs, or for none");
        }
    }
}
