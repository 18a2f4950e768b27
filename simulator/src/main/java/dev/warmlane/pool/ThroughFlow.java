package dev.warmlane.pool;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Units;

/**
 * Water that flows through a basin all the time, in at a temperature of its own and out at the pool's: a spring, a pond, a
 * pool that is let run over. It brings ρ·c·d/τ·(T_in − T_w) per m² of water of depth d, and replaces what evaporates, so
 * that no make-up water does.
 *
 * @param retentionS time in which as much flows in as the pool holds, s
 * @param inflow how warm it comes
 */
public record ThroughFlow(double retentionS, InflowTemperature inflow) {

    /** Range of {@link #retentionS}. */
    public static final Range RETENTION = Range.of(
                    "retention time of the through-flow", Dimension.DURATION, 0.05 * Units.DAY, 1000 * Units.DAY)
            .writtenIn("days");

    /** Checks the range. */
    public ThroughFlow {
        RETENTION.check(retentionS);
    }
}
