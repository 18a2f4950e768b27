package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.physics.Water;
import dev.warmlane.units.Units;
import dev.warmlane.weather.HourlyWeather;
import java.util.Arrays;
import java.util.List;

/**
 * One hour of a pool, its collectors and its heater: moves the water temperature on and adds every flow to the hour's
 * account. Mutable, reused for every hour, for one thread.
 *
 * <p>Within the hour the forcing stands still and the temperature moves one way at a time, so the hour is cut where
 * something switches: the pool reaches the heater's set point, the collectors' limit or its freezing point, or a collector
 * circuit meets its start or stop difference. Each piece is one step of the implicit midpoint rule, whose length is chosen
 * to land on the switching temperature exactly; at set point and limit the temperature is held by just the part of heater
 * or collectors that it takes, at the freezing point by ice.
 */
final class PoolHour {

    /**
     * The water moves by no more than this in one piece, K: the flows are nearly straight over it. Pools of usual depth
     * never reach it in an hour; a paddling pool with a strong heater takes several pieces.
     */
    private static final double MOST_CHANGE_K = 2;

    /**
     * After this many pieces in an hour a circuit hunts, faster than any pump is switched; for the rest of the hour the
     * water then stays where it is and the circuits run for just the share of the time that this takes.
     */
    private static final int MOST_PIECES = 200;

    /** Specific heat of water in the collectors, J/kgK; over 10 to 40 °C it changes by 0.3 %. */
    static final double WATER_HEAT_J_KGK = Water.specificHeatJKgK(25);

    // what is built
    final HourlyWeather weather;
    private final double capacityJm2K;
    private final Targets targets;
    private final double shedAboveC;
    private final HourBalance balance;

    // the state that goes on from hour to hour
    double waterC;
    final Ice ice = new Ice();
    private final GroundHeat ground;
    private final Pump[] pumps;

    // of the hour that runs
    private SolarLimit limit;
    private Thermostat thermostat;

    PoolHour(Installation installation, SeasonForcing forcing) {
        List<CollectorArray> built = installation.arrays();
        double poolArea = installation.pool().areaM2();
        this.weather = forcing.weather();
        this.capacityJm2K = forcing.pool().heatCapacityJm2K();
        this.pumps = new Pump[built.size()];
        // all pipes are one, shared by area: each m² of collector has as much of them
        double pipesWm2K = installation.pipes().heatLossWK() / installation.collectorAreaM2();
        Control control = installation.control();
        for (int a = 0; a < pumps.length; a++) {
            pumps[a] = new Pump(
                    new Circuit(built.get(a), forcing.collectors().get(a), pipesWm2K, control, poolArea),
                    control.controller().pumps().orElse(null));
        }
        this.targets = new Targets(control, installation.heater(), poolArea, weather);
        this.limit = targets.limit(0);
        this.thermostat = targets.heater(0);
        this.shedAboveC = control.shedAboveC();
        this.ground = new GroundHeat(forcing.pool(), installation.pool().groundStore());
        this.balance =
                new HourBalance(forcing.pool(), pumps, installation.heater().orElse(null), ground);
    }

    /** Begins with water, and ground, of a temperature. */
    void fill(double fromC) {
        waterC = fromC;
        ground.settle(fromC);
    }

    /** Takes up a state; without any pumps all of them stand, without stores the ground is as warm as the water. */
    void resume(double fromC, double iceJm2, List<Boolean> pumpsRunning, List<Double> groundC) {
        waterC = fromC;
        ground.resume(groundC, fromC);
        ice.set(iceJm2);
        for (int a = 0; a < pumpsRunning.size(); a++) {
            pumps[a].setRunning(pumpsRunning.get(a));
        }
    }

    /** Which circuits run to warm the pool. */
    List<Boolean> pumpsRunning() {
        return Arrays.stream(pumps).map(Pump::running).toList();
    }

    /** Temperatures of the ground's stores, °C. */
    List<Double> groundC() {
        return ground.storesC();
    }

    /**
     * Runs an hour.
     *
     * @param hour hour of the weather
     * @param inUse 1 in the open season, 0 while the pool only stands filled
     * @param mayPump whether the collector circuits may run
     * @param mayHeat whether the heater may run
     * @param row the hour's account, empty
     */
    void run(int hour, double inUse, boolean mayPump, boolean mayHeat, LedgerRow row) {
        limit = targets.limit(hour);
        thermostat = targets.heater(hour);
        Thermostat heater = mayHeat ? thermostat : Thermostat.OFF;
        for (Pump pump : pumps) {
            pump.startHour(hour, waterC, mayPump, shedAboveC);
        }
        ground.startHour();
        double left = Units.HOUR;
        for (int piece = 1; left > 0; piece++) {
            boolean hunting = piece > MOST_PIECES;
            balance.look(hour, waterC, inUse);
            double others = balance.othersWm2();
            double solar = balance.solarWm2();
            double share = limit.share(waterC, others + heater.regardlessWm2(waterC), solar, hunting);
            double heat = heater.heatWm2(waterC, others + share * solar);
            balance.settle(share, heat);
            if ((share > 0 && share < 1) || heater.holds(waterC, heat)) {
                balance.addTo(row, left, share);
                break;
            }
            double frozen = waterC > Ice.FREEZING_C ? 0 : freezeOrMelt(left, solar > 0 || heat > 0, share, row);
            left -= frozen > 0 ? frozen : move(hour, left, inUse, share, heat, !hunting, row);
        }
        ground.endHour();
        row.ice(ice.heatJm2());
    }

    /** Stays at the freezing point; returns for how long, s. Where heat is brought in the surface is taken to stay open. */
    private double freezeOrMelt(double left, boolean heated, double share, LedgerRow row) {
        double net = balance.netWm2();
        double lets = net < 0 && !heated ? ice.lets(balance.slopeWm2K()) : 1;
        double seconds = ice.hold(waterC, lets * net, left);
        balance.addTo(row, lets * seconds, share);
        return seconds;
    }

    /** Moves freely until something switches, the water has moved enough, or the time is up; returns the time it took, s. */
    private double move(
            int hour, double left, double inUse, double share, double heat, boolean maySwitch, LedgerRow row) {
        double start = waterC;
        double rate = balance.netWm2();
        double seconds = Math.min(left, MOST_CHANGE_K * capacityJm2K / Math.abs(rate));
        double half = seconds / 2;
        lookAt(start + half * rate / (capacityJm2K - half * balance.slopeWm2K()), hour, inUse, share, heat);
        double end = start + seconds * balance.netWm2() / capacityJm2K;
        double landing = Way.first(start, end, Double.NaN, Ice.FREEZING_C);
        if (maySwitch) {
            landing = firstSwitch(hour, start, end, share, landing);
        }
        if (Double.isNaN(landing)) {
            balance.addTo(row, seconds, share);
            waterC = end;
            return seconds;
        }
        lookAt((start + landing) / 2, hour, inUse, share, heat);
        rate = balance.netWm2();
        double needed = capacityJm2K * (landing - start) / rate;
        boolean lands = needed >= 0 && needed < seconds;
        if (!lands) {
            // the switching temperature is only just reached at the end of the piece
            needed = seconds;
        }
        balance.addTo(row, needed, share);
        waterC = lands ? landing : Math.max(Ice.FREEZING_C, start + needed * rate / capacityJm2K);
        if (maySwitch && waterC == landing) {
            for (Pump pump : pumps) {
                pump.reached(landing, shedAboveC);
            }
        }
        return needed;
    }

    private void lookAt(double temperatureC, int hour, double inUse, double share, double heat) {
        balance.look(hour, temperatureC, inUse);
        balance.settle(share, heat);
    }

    /** The first temperature on the way from start to end at which something switches, or what was found before. */
    private double firstSwitch(int hour, double start, double end, double solarShare, double before) {
        double found = Way.first(start, end, before, thermostat.setPointC());
        found = Way.first(start, end, found, limit.limitC());
        for (Pump pump : pumps) {
            if (pump.shedding()) {
                found = Way.first(start, end, found, shedAboveC);
            }
            if (solarShare > 0) {
                found = Way.first(start, end, found, pump.switchC(hour, start, end));
            } else {
                pump.stay();
            }
        }
        return found;
    }
}
