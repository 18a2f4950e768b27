package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same equations and switches as the simulator's, stepped by a general adaptive integrator of order 8 with its own
 * search for events: what the hourly loop is measured against, in accuracy and in time. Warming alone: circuits that cool
 * the pool and ice are left out.
 */
public final class AdaptiveSeason {

    private static final double HOUR_S = 3600;

    /** As often as the hourly loop cuts an hour before it takes a circuit to hunt. */
    private static final int MOST_PIECES = 200;

    private static final double CHECKED_EVERY_S = 600;
    private static final double FOUND_TO_S = 1e-3;
    private static final int MOST_TRIALS = 100;

    private final Installation installation;
    private final SeasonForcing forcing;
    private final DormandPrince853Integrator integrator;
    private final Pump[] pumps;
    private final HourBalance balance;
    private final SolarLimit limit;
    private final Thermostat heater;

    private int hour;
    private double share;
    private double heat;
    private double landsOn;

    private AdaptiveSeason(Installation installation, SeasonForcing forcing, double toleranceK) {
        this.installation = installation;
        this.forcing = forcing;
        this.integrator = new DormandPrince853Integrator(1e-3, HOUR_S, toleranceK, 0);
        double poolArea = installation.pool().areaM2();
        double pipesWm2K = installation.pipes().heatLossWK() / installation.collectorAreaM2();
        this.pumps = new Pump[installation.arrays().size()];
        for (int a = 0; a < pumps.length; a++) {
            Circuit circuit = new Circuit(
                    installation.arrays().get(a),
                    forcing.collectors().get(a),
                    pipesWm2K,
                    installation.control(),
                    poolArea);
            pumps[a] = new Pump(circuit, null);
        }
        this.balance = new HourBalance(forcing.pool(), pumps, null, new GroundHeat(forcing.pool(), Optional.empty()));
        this.limit = new SolarLimit(installation.control().limitC());
        this.heater = installation
                .heater()
                .map(h -> Thermostat.of(h.setPointC(), h.capacityKw(), poolArea))
                .orElse(Thermostat.OFF);
    }

    /**
     * Water temperature at the end of every hour of a season, °C.
     *
     * @param startC water temperature at opening, °C
     * @param toleranceK what a step may be off, K
     */
    public static double[] waterC(Installation installation, SeasonForcing forcing, double startC, double toleranceK) {
        return new AdaptiveSeason(installation, forcing, toleranceK).run(startC);
    }

    private double[] run(double startC) {
        int first = installation.season().firstHour();
        double[] ends = new double[installation.season().hours()];
        double water = startC;
        for (int index = 0; index < ends.length; index++) {
            hour = (first + index) % HourOfYear.HOURS;
            water = runHour(water);
            ends[index] = water;
        }
        return ends;
    }

    private double runHour(double startC) {
        double[] water = {startC};
        boolean mayRun = installation.control().pumping().at(hour) > 0;
        for (Pump pump : pumps) {
            pump.startHour(hour, startC, mayRun, Double.POSITIVE_INFINITY);
        }
        double time = 0;
        for (int piece = 1; time < HOUR_S; piece++) {
            balance.look(hour, water[0], 1);
            double others = balance.othersWm2();
            double solar = balance.solarWm2();
            share = limit.share(water[0], others + heater.regardlessWm2(water[0]), solar, piece > MOST_PIECES);
            heat = heater.heatWm2(water[0], others + share * solar);
            if ((share > 0 && share < 1) || heater.holds(water[0], heat)) {
                break;
            }
            watch();
            landsOn = Double.NaN;
            time = integrator.integrate(new Balance(), time, water, HOUR_S, water);
            water[0] = Double.isNaN(landsOn) ? water[0] : landsOn;
        }
        return water[0];
    }

    /** Sets up what may switch. */
    private void watch() {
        integrator.clearEventHandlers();
        if (heater.capacityWm2() > 0) {
            watch(waterC -> waterC - heater.setPointC(), false, () -> landsOn = heater.setPointC());
        }
        watch(waterC -> waterC - limit.limitC(), false, () -> landsOn = limit.limitC());
        for (Pump pump : pumps) {
            if (share > 0 && pump.running()) {
                watch(waterC -> surplusWm2(pump.circuit, waterC), true, () -> pump.setRunning(false));
            } else if (share > 0 && pump.circuit.warmsEnough(hour, pump.circuit.startC(hour))) {
                watch(waterC -> waterC - pump.circuit.startC(hour), true, () -> pump.setRunning(true));
            }
        }
    }

    /** By how much a running circuit gives more than where its pump stops, W/m². */
    private double surplusWm2(Circuit circuit, double waterC) {
        double collected = circuit.heatWm2(hour, waterC);
        double arrives = collected - circuit.toAirWm2(hour, waterC, collected);
        return Math.min(collected, arrives)
                - circuit.capacityFlow * installation.control().offDifferenceK();
    }

    private void watch(DoubleUnaryOperator distance, boolean fallingOnly, Runnable then) {
        integrator.addEventHandler(new Switch(distance, fallingOnly, then), CHECKED_EVERY_S, FOUND_TO_S, MOST_TRIALS);
    }

    /** Ends the step where a distance comes to nothing. */
    private record Switch(DoubleUnaryOperator distance, boolean fallingOnly, Runnable then) implements EventHandler {
        @Override
        public void init(double t0, double[] y0, double t) {}

        @Override
        public double g(double t, double[] y) {
            return distance.applyAsDouble(y[0]);
        }

        @Override
        public Action eventOccurred(double t, double[] y, boolean increasing) {
            if (fallingOnly && increasing) {
                return Action.CONTINUE;
            }
            then.run();
            return Action.STOP;
        }

        @Override
        public void resetState(double t, double[] y) {}
    }

    private final class Balance implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 1;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] yDot) {
            balance.look(hour, y[0], 1);
            balance.settle(share, heat);
            yDot[0] = balance.netWm2() / forcing.pool().heatCapacityJm2K();
        }
    }
}
