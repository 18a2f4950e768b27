package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * Every flow of every real hour of a run over a weather record. An index counts its hours from 0 on. Immutable and safe to
 * share.
 */
public final class RecordLedger {

    private final SeasonLedger ledger;
    private final LocalDateTime start;
    private final List<Boolean> pumpsAtEnd;
    private final List<Double> groundAtEnd;

    RecordLedger(SeasonLedger ledger, LocalDateTime start, List<Boolean> pumpsAtEnd, List<Double> groundAtEnd) {
        this.ledger = ledger;
        this.start = start;
        this.pumpsAtEnd = pumpsAtEnd;
        this.groundAtEnd = groundAtEnd;
    }

    /** What was simulated. */
    public Installation installation() {
        return ledger.installation();
    }

    /** How many hours it has; indices run from 0 to one less. */
    public int hours() {
        return ledger.hours();
    }

    /** When an hour begins, local standard time; of {@link #hours}, when the run ended. */
    public LocalDateTime time(int index) {
        return start.plusHours(index);
    }

    /** Water temperature at the start of an hour, °C. */
    public double waterStartC(int index) {
        return ledger.waterStartC(index);
    }

    /** Water temperature at the end of an hour, °C. */
    public double waterEndC(int index) {
        return ledger.waterEndC(index);
    }

    /** Water temperature in the middle of an hour, °C: the mean of start and end. */
    public double waterC(int index) {
        return ledger.waterC(index);
    }

    /**
     * Water temperature at any moment of the run, °C: on a straight line within its hour.
     *
     * @throws IllegalArgumentException if the moment lies outside the run
     */
    public double waterC(LocalDateTime moment) {
        double hoursIn = ChronoUnit.SECONDS.between(start, moment) / 3600.0;
        if (!(hoursIn >= 0 && hoursIn <= hours())) {
            throw new IllegalArgumentException(
                    "the run is from " + start + " to " + time(hours()) + ", and " + moment + " lies outside");
        }
        int index = (int) Math.min(hours() - 1, Math.floor(hoursIn));
        double part = hoursIn - index;
        return (1 - part) * waterStartC(index) + part * waterEndC(index);
    }

    /** Heat of a kind in an hour, J per m² of water, positive into the water. */
    public double heatJm2(Flow flow, int index) {
        return ledger.heatJm2(flow, index);
    }

    /** Heat of a kind in an hour, kWh for the whole pool, positive into the water. */
    public double heatKwh(Flow flow, int index) {
        return ledger.heatKwh(flow, index);
    }

    /** Heat that went into warming the water and melting its ice in an hour, J per m² of water, from their state alone. */
    public double storedJm2(int index) {
        return ledger.storedJm2(index);
    }

    /** Heat that arrived from the collectors in an hour, the pipes' loss taken off, kWh for the whole pool. */
    public double deliveredKwh(int index) {
        return ledger.deliveredKwh(index);
    }

    /** Energy that was bought for the heater in an hour, kWh: a fuel as higher heating value. */
    public double boughtKwh(int index) {
        return ledger.boughtKwh(index);
    }

    /** Water that evaporated in an hour, kg for the whole pool. */
    public double evaporatedKg(int index) {
        return ledger.evaporatedKg(index);
    }

    /** Share of an hour in which an array's pump ran, 0 to 1. */
    public double runShare(int array, int index) {
        return ledger.runShare(array, index);
    }

    /** The state at the end, from which another run can go on. */
    public RecordState endState() {
        int last = hours() - 1;
        return new RecordState(time(hours()), waterEndC(last), ledger.iceJm2(last), pumpsAtEnd, groundAtEnd);
    }
}
