package dev.warmlane.collector;

import dev.warmlane.site.HourOfYear;

/**
 * The heat that one kind of collector, mounted one way, gives in every hour as a curve over the temperature of the water
 * that enters it, per m² of collector. Immutable; shared by all runs that share mounting, model, flow, roof and weather,
 * whatever their area.
 *
 * <p>Each hour has a cubic through four directly solved temperatures. Against the direct solution it is within 0.1 % of
 * a season's heat, see {@code HeatCurvesTest}.
 */
public final class HeatCurves {

    /** The temperatures, °C, at which the balance is solved: from the coldest pool in spring to the hottest allowed. */
    static final double[] NODES_C = {4, 17, 30, 43};

    private static final int TERMS = NODES_C.length;

    private static final int NEWTON_STEPS = 30;

    private final double[] coefficients = new double[HourOfYear.HOURS * TERMS];
    private final double[] stagnationC = new double[HourOfYear.HOURS];

    HeatCurves() {}

    /** Adds a share of a collector to an hour's curve. */
    void add(int hour, double share, HourlyHeat heat) {
        stagnationC[hour] += share * heat.stagnationC(hour);
        double h0 = heat.heatWm2(hour, NODES_C[0]);
        double h1 = heat.heatWm2(hour, NODES_C[1]);
        double h2 = heat.heatWm2(hour, NODES_C[2]);
        double h3 = heat.heatWm2(hour, NODES_C[3]);
        // Newton's divided differences: stable, and evaluated by Horner's scheme
        double d01 = (h1 - h0) / (NODES_C[1] - NODES_C[0]);
        double d12 = (h2 - h1) / (NODES_C[2] - NODES_C[1]);
        double d23 = (h3 - h2) / (NODES_C[3] - NODES_C[2]);
        double d012 = (d12 - d01) / (NODES_C[2] - NODES_C[0]);
        double d123 = (d23 - d12) / (NODES_C[3] - NODES_C[1]);
        int at = hour * TERMS;
        coefficients[at] += share * h0;
        coefficients[at + 1] += share * d01;
        coefficients[at + 2] += share * d012;
        coefficients[at + 3] += share * (d123 - d012) / (NODES_C[3] - NODES_C[0]);
    }

    /**
     * Useful heat with water entering at a temperature, W per m² of collector; negative where the collector would cool
     * the water.
     */
    public double heatWm2(int hour, double inletC) {
        int at = hour * TERMS;
        double x0 = inletC - NODES_C[0];
        double x1 = inletC - NODES_C[1];
        double x2 = inletC - NODES_C[2];
        return coefficients[at] + x0 * (coefficients[at + 1] + x1 * (coefficients[at + 2] + x2 * coefficients[at + 3]));
    }

    /** How the heat changes with the inlet temperature, W/m²K; below 0. */
    public double slopeWm2K(int hour, double inletC) {
        int at = hour * TERMS;
        double x0 = inletC - NODES_C[0];
        double x1 = inletC - NODES_C[1];
        double x2 = inletC - NODES_C[2];
        double inner = coefficients[at + 2] + x2 * coefficients[at + 3];
        double middle = coefficients[at + 1] + x1 * inner;
        return middle + x0 * (inner + x1 * coefficients[at + 3]);
    }

    /** The inlet temperature at which the collector gives a heat, °C, looked for from near {@code guessC}. */
    public double inletC(int hour, double heatWm2, double guessC) {
        double inlet = guessC;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double change = (heatWm2 - heatWm2(hour, inlet)) / slopeWm2K(hour, inlet);
            inlet += change;
            if (Math.abs(change) < 1e-10) {
                break;
            }
        }
        return inlet;
    }

    /** Temperature of the dry plate without flow, °C: what a collector in the sun reaches when the pump stands. */
    public double stagnationC(int hour) {
        return stagnationC[hour];
    }
}
