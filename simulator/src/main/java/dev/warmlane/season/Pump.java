package dev.warmlane.season;

/**
 * The pump of one circuit: whether it runs to warm or to cool the pool, and at which water temperature that changes within
 * an hour. It also keeps what the circuit gives at the temperature looked at last. Mutable, for one thread.
 */
final class Pump {

    /** Circuits that switch within this of each other switch together, K: a switching temperature is found to 1e-10 K. */
    private static final double SAME_K = 1e-9;

    final Circuit circuit;

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

    Pump(Circuit circuit) {
        this.circuit = circuit;
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
        running = mayRun && (running || circuit.mayStart(hour, poolC)) && warms(hour, poolC);
        shedding = mayRun && poolC > shedAboveC && circuit.coolsEnough(hour, poolC);
    }

    /**
     * The pool temperature at which it starts or stops to warm the pool, if the pool comes to it from one temperature to
     * another; NaN if it does not switch on that way.
     */
    double switchC(int hour, double startC, double endC) {
        switchC = Double.NaN;
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
