package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Every flow of every hour of a season, in the order the hours came. Immutable once the simulator has handed it out, and
 * safe to share.
 */
public final class SeasonLedger {

    private final Installation installation;
    private final int firstHour;
    private final int opening;
    private final int hours;
    private final double heatCapacityJm2K;
    private final double[] waterC;
    private final int width;
    private final double[] cells;
    private final double startIceJm2;
    private List<Boolean> pumpsAtEnd = List.of();
    private List<Double> groundAtEnd = List.of();

    SeasonLedger(Installation installation, double heatCapacityJm2K, PoolHour start) {
        this(
                installation,
                heatCapacityJm2K,
                start,
                installation.season().leadHours(),
                installation.season().leadHours() + installation.season().hours());
    }

    /** Of so many hours, whenever they are. */
    SeasonLedger(Installation installation, double heatCapacityJm2K, PoolHour start, int opening, int hours) {
        this.installation = installation;
        this.firstHour = installation.season().beginHour();
        this.opening = opening;
        this.hours = hours;
        this.heatCapacityJm2K = heatCapacityJm2K;
        this.waterC = new double[hours + 1];
        this.waterC[0] = start.waterC;
        this.startIceJm2 = start.ice.heatJm2();
        this.width = LedgerRow.width(installation.arrays().size());
        this.cells = new double[hours * width];
    }

    /** The rows that the simulator fills, one for each hour. */
    LedgerRow rows() {
        return new LedgerRow(cells, width);
    }

    /** Enters what an hour has come to. */
    void enter(int index, PoolHour hour) {
        waterC[index + 1] = hour.waterC;
    }

    /** Enters the state that the season ends in. */
    void close(PoolHour hour) {
        pumpsAtEnd = hour.pumpsRunning();
        groundAtEnd = hour.groundC();
    }

    /** What was simulated. */
    public Installation installation() {
        return installation;
    }

    /** The index at which the pool opens: 0, or the hours before opening in which collectors or heater may run. */
    public int opening() {
        return opening;
    }

    /** How many hours it has, those before opening too; indices run from 0 to one less. */
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

    /** Heat of the ice on the pool at the end of an hour, J per m² of water: what it takes to melt it. 0 without ice. */
    public double iceJm2(int index) {
        return cell(index, LedgerRow.ICE);
    }

    /** The same for the whole pool, kWh. */
    public double iceKwh(int index) {
        return cell(index, LedgerRow.ICE) * installation.pool().areaM2() / Units.KWH;
    }

    /** Whether there is ice on the pool at the end of any hour. */
    public boolean everIced() {
        for (int index = 0; index < hours; index++) {
            if (iceJm2(index) > 0) {
                return true;
            }
        }
        return false;
    }

    /** The state at the end of the season, from which another can go on. */
    public SeasonState endState() {
        return new SeasonState(hourOfYear(hours), waterC[hours], iceJm2(hours - 1), pumpsAtEnd, groundAtEnd);
    }

    /** Heat of a kind in an hour, J per m² of water, positive into the water. */
    public double heatJm2(Flow flow, int index) {
        return cell(index, flow.ordinal());
    }

    /** Heat that went into warming the water and melting its ice in an hour, J per m² of water, from their state alone. */
    public double storedJm2(int index) {
        double iceBefore = index == 0 ? startIceJm2 : iceJm2(index - 1);
        return heatCapacityJm2K * (waterC[index + 1] - waterC[index]) - (iceJm2(index) - iceBefore);
    }

    /** Heat of a kind in an hour, kWh for the whole pool. */
    public double heatKwh(Flow flow, int index) {
        return cell(index, flow.ordinal()) * installation.pool().areaM2() / Units.KWH;
    }

    /** Heat of a kind in a period, kWh for the whole pool. */
    public double heatKwh(Flow flow, Period period) {
        return sumKwh(flow.ordinal(), period);
    }

    /** Heat of every kind in a period, kWh for the whole pool: one way through the rows. */
    Map<Flow, Double> heatKwh(Period period) {
        double[] sums = new double[Flow.COUNT];
        for (int index = period.heatFrom(); index < period.to(); index++) {
            int row = index * width;
            for (int flow = 0; flow < Flow.COUNT; flow++) {
                sums[flow] += cells[row + flow];
            }
        }
        Map<Flow, Double> kwh = new EnumMap<>(Flow.class);
        for (Flow flow : Flow.values()) {
            kwh.put(flow, sums[flow.ordinal()] * installation.pool().areaM2() / Units.KWH);
        }
        return kwh;
    }

    /** Heat that arrived from the collectors in an hour, the pipes' loss taken off, kWh for the whole pool. */
    public double deliveredKwh(int index) {
        return heatKwh(Flow.COLLECTORS, index) + heatKwh(Flow.PIPES, index);
    }

    /** Useful heat of one array in an hour, kWh. */
    public double arrayHeatKwh(int array, int index) {
        return cell(index, LedgerRow.arrayCell(array, LedgerRow.HEAT))
                * installation.pool().areaM2()
                / Units.KWH;
    }

    /** Useful heat of one array in a period, kWh. */
    public double arrayHeatKwh(int array, Period period) {
        return sumKwh(LedgerRow.arrayCell(array, LedgerRow.HEAT), period);
    }

    /** Share of an hour in which an array's pump ran, 0 to 1. */
    public double runShare(int array, int index) {
        return cell(index, LedgerRow.arrayCell(array, LedgerRow.RUN)) / Units.HOUR;
    }

    /** Mean temperature of the water that left an array while it ran in an hour, °C; NaN if it did not run. */
    public double outletC(int array, int index) {
        double seconds = cell(index, LedgerRow.arrayCell(array, LedgerRow.RUN));
        return seconds > 0 ? cell(index, LedgerRow.arrayCell(array, LedgerRow.OUTLET)) / seconds : Double.NaN;
    }

    /** Heat that the collectors could have given in an hour but the pool, at its limit, did not take, kWh. */
    public double refusedKwh(int index) {
        return cell(index, LedgerRow.REFUSED) * installation.pool().areaM2() / Units.KWH;
    }

    /** The same in a period, kWh. */
    public double refusedKwh(Period period) {
        return sumKwh(LedgerRow.REFUSED, period);
    }

    /** Energy that was bought for the heater in an hour, kWh: a fuel as higher heating value. */
    public double boughtKwh(int index) {
        return cell(index, LedgerRow.BOUGHT) * installation.pool().areaM2() / Units.KWH;
    }

    /** The same in a period, kWh. */
    public double boughtKwh(Period period) {
        return sumKwh(LedgerRow.BOUGHT, period);
    }

    /** Water that evaporated in an hour, kg for the whole pool. */
    public double evaporatedKg(int index) {
        return cell(index, LedgerRow.EVAPORATED) * installation.pool().areaM2();
    }

    /** Water that evaporated in a period, kg for the whole pool. */
    public double evaporatedKg(Period period) {
        return sum(LedgerRow.EVAPORATED, period) * installation.pool().areaM2();
    }

    private double cell(int index, int cell) {
        return cells[index * width + cell];
    }

    private double sumKwh(int cell, Period period) {
        return sum(cell, period) * installation.pool().areaM2() / Units.KWH;
    }

    private double sum(int cell, Period period) {
        double sum = 0;
        for (int index = period.heatFrom(); index < period.to(); index++) {
            sum += cell(index, cell);
        }
        return sum;
    }
}
