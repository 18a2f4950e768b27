package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import dev.warmlane.pool.PoolFlows;
import java.util.Arrays;

/**
 * The account of one hour, a row in the cells of a ledger: what the hourly loop writes, side by side in memory. Mutable: it
 * goes from row to row.
 */
final class LedgerRow {

    // the cells of a row: one for each flow, J/m², then these
    static final int EVAPORATED = Flow.COUNT;
    static final int REFUSED = EVAPORATED + 1;
    static final int ICE = REFUSED + 1;
    static final int BOUGHT = ICE + 1;
    private static final int FIRST_ARRAY = BOUGHT + 1;

    // the cells of each array
    static final int HEAT = 0;
    static final int RUN = 1;
    static final int OUTLET = 2;
    private static final int CELLS_OF_ARRAY = 3;

    private final double[] cells;
    private final int width;
    private int at;

    LedgerRow(double[] cells, int width) {
        this.cells = cells;
        this.width = width;
    }

    /** A row of its own, which no ledger keeps. */
    static LedgerRow alone(int arrays) {
        return new LedgerRow(new double[width(arrays)], width(arrays));
    }

    /** How many cells a row has. */
    static int width(int arrays) {
        return arrayCell(arrays, 0);
    }

    /** The cell of a row that holds something of an array. */
    static int arrayCell(int array, int what) {
        return FIRST_ARRAY + array * CELLS_OF_ARRAY + what;
    }

    /** Goes to a row and empties it. */
    void open(int index) {
        at = index * width;
        Arrays.fill(cells, at, at + width, 0);
    }

    /** Adds flows that last for some seconds. */
    void add(PoolFlows flows, double seconds) {
        flows.addTo(cells, at, seconds);
        cells[at + EVAPORATED] += flows.evaporatedKgSM2() * seconds;
    }

    /** Adds some seconds of an array's running, with its heat in W per m² of water and the water that leaves it, °C. */
    void ran(int array, double seconds, double heatWm2, double outletC) {
        int cell = at + arrayCell(array, 0);
        cells[cell + HEAT] += heatWm2 * seconds;
        cells[cell + RUN] += seconds;
        cells[cell + OUTLET] += outletC * seconds;
    }

    /** Adds heat that the pool did not take, J/m². */
    void refused(double heatJm2) {
        cells[at + REFUSED] += heatJm2;
    }

    /** Adds energy that was bought for the heater, J/m². */
    void bought(double energyJm2) {
        cells[at + BOUGHT] += energyJm2;
    }

    /** Enters the ice at the end of the hour, J/m². */
    void ice(double heatJm2) {
        cells[at + ICE] = heatJm2;
    }
}
