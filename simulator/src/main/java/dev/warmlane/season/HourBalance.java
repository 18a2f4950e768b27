package dev.warmlane.season;

import dev.warmlane.heater.Heater;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import org.jspecify.annotations.Nullable;

/**
 * All flows of a pool with its circuits and its heater at one water temperature. What is put into it warms the water and
 * stands in the ledger, from one holder: the two cannot differ. Mutable, for one thread.
 */
final class HourBalance {

    private final PoolForcing pool;
    private final Pump[] pumps;
    private final @Nullable Heater heater;
    private final GroundHeat ground;
    private final PoolFlows flows = new PoolFlows();

    private int hourOfYear;
    private double waterC;
    private double heaterWm2;
    private double others;
    private double solar;
    private double warmingHeat;
    private double warmingToAir;
    private double warmingHeatSlope;
    private double warmingToAirSlope;
    private double coolingHeat;
    private double coolingToAir;
    private double coolingHeatSlope;
    private double coolingToAirSlope;

    HourBalance(PoolForcing pool, Pump[] pumps, @Nullable Heater heater, GroundHeat ground) {
        this.pool = pool;
        this.pumps = pumps;
        this.heater = heater;
        this.ground = ground;
    }

    /** Finds the flows at a water temperature; circuits and heater join them by {@link #settle}. */
    void look(int hour, double temperatureC, double inUse) {
        hourOfYear = hour;
        waterC = temperatureC;
        pool.evaluate(hour, temperatureC, inUse, flows);
        ground.addTo(flows, temperatureC);
        warmingHeat = 0;
        warmingToAir = 0;
        warmingHeatSlope = 0;
        warmingToAirSlope = 0;
        coolingHeat = 0;
        coolingToAir = 0;
        coolingHeatSlope = 0;
        coolingToAirSlope = 0;
        for (Pump pump : pumps) {
            if (pump.running()) {
                pump.look(hour, temperatureC);
                double ratio = pump.circuit.areaRatio * pump.part();
                warmingHeat += ratio * pump.heat;
                warmingToAir += ratio * pump.toAir;
                warmingHeatSlope += ratio * pump.heatSlope;
                warmingToAirSlope += ratio * pump.circuit.toAirSlopeWm2K(pump.heatSlope);
            } else if (pump.shedding()) {
                pump.look(hour, temperatureC);
                double ratio = pump.circuit.areaRatio;
                coolingHeat += ratio * pump.heat;
                coolingToAir += ratio * pump.toAir;
                coolingHeatSlope += ratio * pump.heatSlope;
                coolingToAirSlope += ratio * pump.circuit.toAirSlopeWm2K(pump.heatSlope);
            }
        }
        others = flows.net() + (coolingHeat - coolingToAir);
        solar = warmingHeat - warmingToAir;
    }

    /** What flows but for circuits that warm the pool, and for the heater, W/m². */
    double othersWm2() {
        return others;
    }

    /** What the circuits that warm the pool would give, W/m². */
    double solarWm2() {
        return solar;
    }

    /** Lets the circuits run for a share of the time, and the heater give some heat, W/m²; once after each look. */
    void settle(double solarShare, double heatWm2) {
        heaterWm2 = heatWm2;
        flows.put(
                Flow.COLLECTORS,
                coolingHeat + solarShare * warmingHeat,
                coolingHeatSlope + solarShare * warmingHeatSlope);
        flows.put(
                Flow.PIPES,
                -(coolingToAir + solarShare * warmingToAir),
                -(coolingToAirSlope + solarShare * warmingToAirSlope));
        flows.put(Flow.HEATER, heaterWm2, 0);
    }

    /** Sum of all flows, W/m². */
    double netWm2() {
        return flows.net();
    }

    /** How the sum changes with the water's temperature, W/m²K. */
    double slopeWm2K() {
        return flows.slope();
    }

    /** Adds what was settled to the hour's account, for some seconds with the same share of the collectors. */
    void addTo(LedgerRow row, double seconds, double solarShare) {
        row.add(flows, seconds);
        ground.took(waterC, seconds);
        if (heater != null && heaterWm2 > 0) {
            double airC = pool.weather().airTemperatureC(hourOfYear);
            row.bought(heaterWm2 / heater.heatPerBought(airC, waterC) * seconds);
        }
        for (int a = 0; a < pumps.length; a++) {
            Pump pump = pumps[a];
            if (pump.running() || pump.shedding()) {
                double most = pump.shedding() ? seconds : pump.part() * seconds;
                double on = pump.shedding() ? seconds : solarShare * most;
                double ratio = pump.circuit.areaRatio;
                row.ran(a, on, ratio * pump.heat, waterC + pump.heat / pump.circuit.capacityFlow);
                // what the pipes would lose on the way is no heat that the pool was spared
                row.refused(ratio * Math.max(0, pump.heat - pump.toAir) * (most - on));
            }
        }
    }
}
