package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.physics.Water;
import dev.warmlane.plant.GasHeater;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import java.util.Arrays;
import java.util.List;

/**
 * One hour of a pool, its collectors and its heater: moves the water temperature on and adds every flow to the hour's
 * account. Mutable, reused for every hour, for one thread.
 *
 * <p>Within the hour the forcing stands still and the temperature moves one way at a time, so the hour is cut where
 * something switches: the pool reaches the heater's set point or the collectors' limit, or a collector circuit meets its
 * start or stop difference. Each piece is one step of the implicit midpoint rule, whose length is chosen to land on the
 * switching temperature exactly; at set point and limit the temperature is held by just the part of heater or collectors
 * that it takes.
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

    /** Circuits that switch within this of each other switch together, K: a switching temperature is found to 1e-10 K. */
    private static final double SAME_K = 1e-9;

    private static final double HOUR_S = 3600;

    /** Specific heat of water in the collectors, J/kgK; over 10 to 40 °C it changes by 0.3 %. */
    static final double WATER_HEAT_J_KGK = Water.specificHeatJKgK(25);

    // what is built
    private final PoolForcing pool;
    private final int arrays;
    private final Circuit[] circuits;
    private final double limitC;
    private final double shedAboveC;
    private final double setPointC;
    private final double heaterWm2;

    // the state that goes on from hour to hour
    double waterC;
    private final boolean[] running;
    private final boolean[] shedding;

    // whether the circuits may run in this hour
    private boolean allowed;

    // the hour's account, J/m² of water, s, kg/m²
    final double[] heat = new double[Flow.values().length];
    final double[] arrayHeat;
    final double[] runSeconds;
    final double[] outletSum;
    double refused;
    double evaporated;

    // the flows at the temperature looked at last
    private final PoolFlows flows = new PoolFlows();
    private double base;
    private double solar;
    private double solarSlope;
    private double lookedAtC;

    // the temperature at which each circuit switches next on the way looked at; NaN where it does not
    private final double[] switchC;

    PoolHour(Installation installation, SeasonForcing forcing) {
        List<CollectorArray> built = installation.arrays();
        double poolArea = installation.pool().areaM2();
        this.pool = forcing.pool();
        this.arrays = built.size();
        this.circuits = new Circuit[arrays];
        // all pipes are one, shared by area: each m² of collector has as much of them
        double pipesWm2K = installation.pipes().heatLossWK() / installation.collectorAreaM2();
        for (int a = 0; a < arrays; a++) {
            circuits[a] =
                    new Circuit(built.get(a), forcing.collectors().get(a), pipesWm2K, installation.control(), poolArea);
        }
        this.switchC = new double[arrays];
        this.running = new boolean[arrays];
        this.shedding = new boolean[arrays];
        this.arrayHeat = new double[arrays];
        this.runSeconds = new double[arrays];
        this.outletSum = new double[arrays];
        this.limitC = installation.control().limitC();
        this.shedAboveC = installation.control().shedAboveC();
        this.setPointC = installation.heater().map(GasHeater::setPointC).orElse(Double.NEGATIVE_INFINITY);
        this.heaterWm2 = installation.heater().map(GasHeater::capacityKw).orElse(0.0) * 1000 / poolArea;
    }

    /**
     * Runs an hour.
     *
     * @param hour hour of the year
     * @param inUse 1 in the open season, 0 while the pool only stands filled: then neither collectors nor heater run
     * @param mayPump whether the collector circuits may run
     */
    void run(int hour, double inUse, boolean mayPump) {
        Arrays.fill(heat, 0);
        Arrays.fill(arrayHeat, 0);
        Arrays.fill(runSeconds, 0);
        Arrays.fill(outletSum, 0);
        refused = 0;
        evaporated = 0;
        boolean heaterReady = inUse > 0 && heaterWm2 > 0;
        switchAtStartOfHour(hour, inUse > 0 && mayPump);
        double left = HOUR_S;
        for (int piece = 1; left > 0; piece++) {
            look(hour, waterC, inUse);
            double heater = heaterReady && waterC < setPointC ? heaterWm2 : 0;
            double solarShare = waterC > limitC ? 0 : 1;
            boolean hunting = piece > MOST_PIECES;
            if (solar > 0 && (waterC == limitC || hunting)) {
                double others = base + heater;
                if (others >= 0) {
                    solarShare = 0;
                } else if (others + solar >= 0) {
                    add(hour, left, -others / solar, heater);
                    return;
                }
            }
            if (heaterReady && waterC == setPointC) {
                double others = base + solarShare * solar;
                if (others < 0 && others + heaterWm2 >= 0) {
                    add(hour, left, solarShare, -others);
                    return;
                }
                heater = others < 0 ? heaterWm2 : 0;
            }
            left -= move(hour, left, inUse, solarShare, heater, !hunting);
        }
    }

    /** Moves freely until something switches, the water has moved enough, or the time is up; returns the time it took, s. */
    private double move(int hour, double left, double inUse, double solarShare, double heater, boolean maySwitch) {
        double capacity = pool.heatCapacityJm2K();
        double start = waterC;
        double rate = base + solarShare * solar + heater;
        double slope = flows.slope + solarShare * solarSlope;
        double seconds = Math.min(left, MOST_CHANGE_K * capacity / Math.abs(rate));
        look(hour, start + seconds / 2 * rate / (capacity - seconds / 2 * slope), inUse);
        rate = base + solarShare * solar + heater;
        double end = start + seconds * rate / capacity;
        double target = maySwitch ? firstSwitch(hour, start, end, solarShare) : Double.NaN;
        double landing = target;
        if (Double.isNaN(target)) {
            add(hour, seconds, solarShare, heater);
            waterC = end;
            return seconds;
        }
        look(hour, (start + target) / 2, inUse);
        rate = base + solarShare * solar + heater;
        double needed = capacity * (target - start) / rate;
        if (!(needed >= 0 && needed < seconds)) {
            // the target is only just reached at the end of the piece
            needed = seconds;
            target = start + seconds * rate / capacity;
        }
        add(hour, needed, solarShare, heater);
        waterC = target;
        if (target == landing) {
            switchOver(target);
        }
        return needed;
    }

    /** The first temperature on the way from start to end at which something switches; NaN if nothing does. */
    private double firstSwitch(int hour, double start, double end, double solarShare) {
        double nearest = end;
        boolean found = false;
        if (crosses(start, nearest, setPointC)) {
            nearest = setPointC;
            found = true;
        }
        if (crosses(start, nearest, limitC)) {
            nearest = limitC;
            found = true;
        }
        if (shedsInAny() && crosses(start, nearest, shedAboveC)) {
            nearest = shedAboveC;
            found = true;
        }
        for (int a = 0; a < arrays; a++) {
            boolean rightWay = running[a] ? end > start : end < start;
            switchC[a] = solarShare > 0 && rightWay ? switchC(hour, a, end) : Double.NaN;
            if (crosses(start, nearest, switchC[a])) {
                nearest = switchC[a];
                found = true;
            }
        }
        return found ? nearest : Double.NaN;
    }

    /** Whether a temperature lies on the way from start to end; the start itself does not, the end does. */
    private static boolean crosses(double start, double end, double at) {
        return start < end ? at > start && at <= end : at < start && at >= end;
    }

    private double switchC(int hour, int a, double uptoC) {
        if (running[a]) {
            return circuits[a].stopC(hour, uptoC);
        }
        return allowed ? circuits[a].startC(hour) : Double.NEGATIVE_INFINITY;
    }

    private void switchAtStartOfHour(int hour, boolean mayRun) {
        allowed = mayRun;
        for (int a = 0; a < arrays; a++) {
            Circuit circuit = circuits[a];
            running[a] = mayRun && (running[a] ? circuit.warmsEnough(hour, waterC) : circuit.starts(hour, waterC));
            shedding[a] = mayRun && waterC > shedAboveC && circuit.coolsEnough(hour, waterC);
        }
    }

    /** Switches what the temperature that was reached belongs to, and nothing else: rounding has no say in it. */
    private void switchOver(double temperatureC) {
        for (int a = 0; a < arrays; a++) {
            if (Math.abs(switchC[a] - temperatureC) <= SAME_K) {
                running[a] = !running[a];
            }
        }
        for (int a = 0; a < arrays; a++) {
            shedding[a] &= temperatureC > shedAboveC;
        }
    }

    /** Finds the flows at a temperature. */
    private void look(int hour, double temperatureC, double inUse) {
        pool.evaluate(hour, temperatureC, inUse, flows);
        base = flows.net();
        solar = 0;
        solarSlope = 0;
        lookedAtC = temperatureC;
        for (int a = 0; a < arrays; a++) {
            if (running[a]) {
                solar += circuits[a].areaRatio * circuits[a].givenWm2(hour, temperatureC);
                solarSlope += circuits[a].areaRatio * circuits[a].givenSlopeWm2K(hour, temperatureC);
            } else if (shedding[a]) {
                base += circuits[a].areaRatio * circuits[a].givenWm2(hour, temperatureC);
                flows.slope += circuits[a].areaRatio * circuits[a].givenSlopeWm2K(hour, temperatureC);
            }
        }
    }

    private boolean shedsInAny() {
        for (boolean sheds : shedding) {
            if (sheds) {
                return true;
            }
        }
        return false;
    }

    /** Adds the flows looked at last, for some seconds, with a share of the collectors and some heater. */
    private void add(int hour, double seconds, double solarShare, double heater) {
        heat[Flow.SUN.ordinal()] += flows.sun * seconds;
        heat[Flow.BATHERS.ordinal()] += flows.bathers * seconds;
        heat[Flow.CIRCULATION.ordinal()] += flows.circulation * seconds;
        heat[Flow.EVAPORATION.ordinal()] += flows.evaporation * seconds;
        heat[Flow.CONVECTION.ordinal()] += flows.convection * seconds;
        heat[Flow.LONG_WAVE.ordinal()] += flows.longWave * seconds;
        heat[Flow.GROUND.ordinal()] += flows.ground * seconds;
        heat[Flow.MAKE_UP.ordinal()] += flows.makeUp * seconds;
        heat[Flow.HEATER.ordinal()] += heater * seconds;
        evaporated += flows.evaporatedKgSM2 * seconds;
        for (int a = 0; a < arrays; a++) {
            if (running[a] || shedding[a]) {
                double on = shedding[a] ? seconds : solarShare * seconds;
                Circuit circuit = circuits[a];
                double q = circuit.heatWm2(hour, lookedAtC);
                double toAir = circuit.toAirWm2(hour, lookedAtC, q);
                arrayHeat[a] += circuit.areaRatio * q * on;
                heat[Flow.COLLECTORS.ordinal()] += circuit.areaRatio * q * on;
                heat[Flow.PIPES.ordinal()] -= circuit.areaRatio * toAir * on;
                runSeconds[a] += on;
                outletSum[a] += (lookedAtC + q / circuit.capacityFlow) * on;
                // what the pipes would lose on the way is no heat that the pool was spared
                refused += circuit.areaRatio * Math.max(0, q - toAir) * (seconds - on);
            }
        }
    }
}
