package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;

/**
 * Every flow of every hour of a season, in the order the hours came. Immutable once the simulator has handed it out, and
 * safe to share.
 */
public final class SeasonLedger {

    private static final double J_PER_KWH = 3.6e6;

    private final Installation installation;
    private final int firstHour;
    private final int hours;
    private final double heatCapacityJm2K;
    private final double[] waterC;
    private final double[][] heat;
    private final double[][] arrayHeat;
    private final double[][] runSeconds;
    private final double[][] outletC;
    private final double[] refused;
    private final double[] evaporated;

    SeasonLedger(Installation installation, double heatCapacityJm2K, double startC) {
        this.installation = installation;
        this.firstHour = installation.season().firstHour();
        this.hours = installation.season().hours();
        this.heatCapacityJm2K = heatCapacityJm2K;
        int arrays = installation.arrays().size();
        this.waterC = new double[hours + 1];
        this.waterC[0] = startC;
        this.heat = new double[Flow.values().length][hours];
        this.arrayHeat = new double[arrays][hours];
        this.runSeconds = new double[arrays][hours];
        this.outletC = new double[arrays][hours];
        this.refused = new double[hours];
        this.evaporated = new double[hours];
    }

    void enter(int index, PoolHour hour) {
        waterC[index + 1] = hour.waterC;
        for (int flow = 0; flow < heat.length; flow++) {
            heat[flow][index] = hour.heat[flow];
        }
        for (int a = 0; a < arrayHeat.length; a++) {
            arrayHeat[a][index] = hour.arrayHeat[a];
            runSeconds[a][index] = hour.runSeconds[a];
            outletC[a][index] = hour.runSeconds[a] > 0 ? hour.outletSum[a] / hour.runSeconds[a] : Double.NaN;
        }
        refused[index] = hour.refused;
        evaporated[index] = hour.evaporated;
    }

    /** What was simulated. */
    public Installation installation() {
        return installation;
    }

    /** How many hours the season has; indices of this ledger run from 0 to one less. */
    public int hours() {
        return hours;
    }

    /** The hour of the year that an index stands for. */
    public int hourOfYear(int index) {
        return (firstHour + index) % HourOfYear.HOURS;
    }

    /** Water temperature at the start of an hour, °C. */
    public double waterStartC(int index) {
        return waterC[index];
    }

    /** Water temperature at the end of an hour, °C. */
    public double waterEndC(int index) {
        return waterC[index + 1];
    }

    /** Water temperature in the middle of an hour, °C: the mean of start and end. */
    public double waterC(int index) {
        return (waterC[index] + waterC[index + 1]) / 2;
    }

    /** Heat of a kind in an hour, J per m² of water, positive into the water. */
    public double heatJm2(Flow flow, int index) {
        return heat[flow.ordinal()][index];
    }

    /** Heat that went into warming the water in an hour, J per m² of water, from its temperatures alone. */
    public double storedJm2(int index) {
        return heatCapacityJm2K * (waterC[index + 1] - waterC[index]);
    }

    /** Heat of a kind in an hour, kWh for the whole pool. */
    public double heatKwh(Flow flow, int index) {
        return heat[flow.ordinal()][index] * installation.pool().areaM2() / J_PER_KWH;
    }

    /** Heat of a kind from one index to before another, kWh for the whole pool. */
    public double heatKwh(Flow flow, int from, int to) {
        return sumKwh(heat[flow.ordinal()], from, to);
    }

    /** Useful heat of one array from one index to before another, kWh. */
    public double arrayHeatKwh(int array, int from, int to) {
        return sumKwh(arrayHeat[array], from, to);
    }

    /** Share of an hour in which an array's pump ran, 0 to 1. */
    public double runShare(int array, int index) {
        return runSeconds[array][index] / 3600;
    }

    /** Mean temperature of the water that left an array while it ran in an hour, °C; NaN if it did not run. */
    public double outletC(int array, int index) {
        return outletC[array][index];
    }

    /** Heat that the collectors could have given but the pool, at its limit, did not take, kWh for the whole pool. */
    public double refusedKwh(int from, int to) {
        return sumKwh(refused, from, to);
    }

    /** Water that evaporated from one index to before another, kg for the whole pool. */
    public double evaporatedKg(int from, int to) {
        double sum = 0;
        for (int index = from; index < to; index++) {
            sum += evaporated[index];
        }
        return sum * installation.pool().areaM2();
    }

    private double sumKwh(double[] joules, int from, int to) {
        double sum = 0;
        for (int index = from; index < to; index++) {
            sum += joules[index];
        }
        return sum * installation.pool().areaM2() / J_PER_KWH;
    }
}
