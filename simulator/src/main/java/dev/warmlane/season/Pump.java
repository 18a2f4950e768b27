package dev.warmlane.season;

import dev.warmlane.circuit.Controller.PumpRule;
import org.jspecify.annotations.Nullable;

/**
 * The pump of one circuit: whether it runs to warm or to cool the pool, and at which water temperature that changes within
 * an hour. It also keeps what the circuit gives at the temperature looked at last. Mutable, for one thread.
 */
final class Pump {

    /** Circuits that switch within this of each other switch together, K: a switching temperature is found to 1e-10 K. */
    private static final double SAME_K = 1e-9;

    final Circuit circuit;
    private final @Nullable PumpRule rule;

    // how much of the time it runs when it runs to warm the pool
    private double part = 1;

    // at the temperature looked at last, W per m² of collector
    double heat;
    double toAir;
    double heatSlope;
    private int lookedAtHour = -1;
    private double lookedAtC = Double.NaN;

    private boolean running;
    private boolean shedding;
    private boolean allowed;
    private double switchC = Double.NaN;

    /** @param rule decides when it runs to warm the pool; null for start and stop differences */
    Pump(Circuit circuit, @Nullable PumpRule rule) {
        this.circuit = circuit;
        this.rule = rule;
    }

    /** How much of the time it runs when it runs, 0 to 1. */
    double part() {
        return part;
    }

    /** Whether it runs to warm the pool. */
    boolean running() {
        return running;
    }

    /** Begins running, or standing. */
    void setRunning(boolean value) {
        running = value;
    }

    /** Whether it runs to cool the pool. */
    boolean shedding() {
        return shedding;
    }

    /** Finds what the circuit gives at a pool temperature. */
    void look(int hour, double poolC) {
        if (hour != lookedAtHour || poolC != lookedAtC) {
            heat = circuit.heatWm2(hour, poolC);
            heatSlope = circuit.heatSlopeWm2K(hour, poolC);
            toAir = circuit.toAirWm2(hour, poolC, heat);
            lookedAtHour = hour;
            lookedAtC = poolC;
        }
    }

    /** Decides at the start of an hour, when the weather changes. */
    void startHour(int hour, double poolC, boolean mayRun, double shedAboveC) {
        allowed = mayRun;
        if (rule == null) {
            running = mayRun && (running || circuit.mayStart(hour, poolC)) && warms(hour, poolC);
        }
        shedding = mayRun && poolC > shedAboveC && circuit.coolsEnough(hour, poolC);
        if (rule != null) {
            double share = mayRun && !shedding ? share(rule, hour, poolC) : 0;
            running = share > 0;
            part = running ? share : 1;
        }
    }

    private double share(PumpRule decides, int hour, double poolC) {
        look(hour, poolC);
        double share = decides.share(
                circuit.weather().hourOfYear(hour),
                poolC,
                circuit.dryPlateC(hour),
                (heat - toAir) / circuit.capacityFlow);
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("the pump rule gives a share of " + share + " of the hour at "
                    + circuit.weather().label(hour) + " with a pool of " + poolC + " degC; allowed: 0 to 1");
        }
        return share;
    }

    /**
     * The pool temperature at which it starts or stops to warm the pool, if the pool comes to it from one temperature to
     * another; NaN if it does not switch on that way.
     */
    double switchC(int hour, double startC, double endC) {
        switchC = Double.NaN;
        if (rule != null) {
            return switchC;
        }
        if (running && endC > startC) {
            switchC = circuit.stopC(hour, endC);
        } else if (!running && allowed && endC < startC) {
            double at = circuit.startC(hour);
            // whether it would stop at once is asked last: it costs more, and the pool seldom comes so far
            switchC = Way.crosses(startC, endC, at) && circuit.warmsEnough(hour, at) ? at : Double.NaN;
        }
        return switchC;
    }

    private boolean warms(int hour, double poolC) {
        look(hour, poolC);
        return circuit.warmsEnough(heat, toAir);
    }

    /** Leaves the pump as it is on the way looked at. */
    void stay() {
        switchC = Double.NaN;
    }

    /** Switches if the temperature that was reached is its own, and not otherwise: rounding has no say in it. */
    void reached(double poolC, double shedAboveC) {
        if (Math.abs(switchC - poolC) <= SAME_K) {
            running = !running;
        }
        shedding &= poolC > shedAboveC;
    }
}
