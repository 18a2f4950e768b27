package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.site.HourOfYear;

/**
 * The same equations, forcing and hysteresis as the simulator's, stepped plainly: explicit steps of one minute, pump and
 * heater decided once a minute, and at the full hour whether a circuit runs to cool. What {@link PoolHour} must converge
 * to.
 */
final class MinuteSteps {

    private static final int STEPS = 60;
    private static final double STEP_S = 60;

    final double[] waterC;
    double collectorsJm2;
    double heaterJm2;

    MinuteSteps(Installation installation, SeasonForcing forcing, double startC) {
        int hours = installation.season().hours();
        int first = installation.season().firstHour();
        waterC = new double[hours];
        PoolForcing pool = forcing.pool();
        PoolFlows flows = new PoolFlows();
        double poolArea = installation.pool().areaM2();
        double set = installation.heater().map(Heater::setPointC).orElse(-1e9);
        double capacity = installation.heater().map(Heater::capacityKw).orElse(0.0) * 1000 / poolArea;
        boolean[] running = new boolean[installation.arrays().size()];
        boolean[] shedding = new boolean[running.length];
        Control control = installation.control();
        double water = startC;
        for (int index = 0; index < hours; index++) {
            int hour = (first + index) % HourOfYear.HOURS;
            boolean may = control.pumping().at(hour) > 0;
            for (int step = 0; step < STEPS; step++) {
                pool.evaluate(hour, water, 1, flows);
                double net = flows.net();
                for (int a = 0; a < running.length; a++) {
                    CollectorArray array = installation.arrays().get(a);
                    HeatCurves curves = forcing.collectors().get(a).curves();
                    double heat = curves.heatWm2(hour, water);
                    double flow = array.flowKgSM2() * PoolHour.WATER_HEAT_J_KGK;
                    double pipesWm2K = installation.pipes().heatLossWK() / installation.collectorAreaM2();
                    double airC = forcing.collectors().get(a).airC(hour);
                    // supply, collector, return: each pipe of half the conductance draws the water towards the air
                    double nearer = Math.exp(-pipesWm2K / 2 / flow);
                    double backC = airC + ((water - airC) * nearer + heat / flow) * nearer;
                    double arrives = flow * (backC - water);
                    double difference = running[a]
                            ? Math.min(heat, arrives) / flow - control.offDifferenceK()
                            : curves.stagnationC(hour) - control.onDifferenceK() - water;
                    running[a] = may && difference >= 0;
                    boolean cools = water - curves.stagnationC(hour) >= control.onDifferenceK()
                            && -Math.max(heat, arrives) / flow > control.offDifferenceK();
                    shedding[a] = may && water > control.shedAboveC() && (step == 0 ? cools : shedding[a]);
                    if ((running[a] && water < control.limitC()) || shedding[a]) {
                        double given = array.areaM2() / poolArea * arrives;
                        net += given;
                        collectorsJm2 += given * STEP_S;
                    }
                }
                double heater = Math.max(0, Math.min(capacity, (set - water) * pool.heatCapacityJm2K() / STEP_S - net));
                heaterJm2 += heater * STEP_S;
                water += (net + heater) * STEP_S / pool.heatCapacityJm2K();
            }
            waterC[index] = water;
        }
    }
}
