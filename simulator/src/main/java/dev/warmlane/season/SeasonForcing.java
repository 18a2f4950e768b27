package dev.warmlane.season;

import dev.warmlane.collector.HeatCurves;
import dev.warmlane.pool.PoolForcing;
import java.util.List;

/**
 * What a season needs for every hour that does not depend on the pool's temperature. Immutable and shared: runs that
 * differ only in collector area, heater, control or season use the same one.
 *
 * @param pool the pool's side
 * @param curves the heat curves of each collector array, in the installation's order
 */
public record SeasonForcing(PoolForcing pool, List<HeatCurves> curves) {

    /** Keeps its own copy of the list. */
    public SeasonForcing {
        curves = List.copyOf(curves);
    }
}
