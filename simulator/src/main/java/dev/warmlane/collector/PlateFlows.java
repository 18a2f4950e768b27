package dev.warmlane.collector;

import java.util.Arrays;

/**
 * Where the light that falls on a running collector goes, W per m² of collector: what tells one mounting from another. A
 * mutable holder, filled again and again; not for sharing between threads.
 *
 * <p>What is taken in is what is lost and what is useful, at the plate's mean temperature and to the accuracy of the loss
 * coefficient (0.1 %).
 */
public final class PlateFlows {

    private static final int KINDS = PlateFlow.values().length;

    private final double[] wm2 = new double[KINDS];
    private double irradiance;
    private double filmFront;
    private double filmBack;
    private double plateC;

    /** Makes an empty holder. */
    public PlateFlows() {}

    /** Empties the holder. */
    void clear() {
        Arrays.fill(wm2, 0);
        irradiance = 0;
        filmFront = 0;
        filmBack = 0;
        plateC = 0;
    }

    /** Adds a kind, W/m². */
    void add(PlateFlow flow, double heatWm2) {
        wm2[flow.ordinal()] += heatWm2;
    }

    /** Adds a share of a plate's state: irradiance, W/m², films, W/m²K, and temperature, °C. */
    void addState(double share, double irradianceWm2, double filmFrontWm2K, double filmBackWm2K, double temperatureC) {
        irradiance += share * irradianceWm2;
        filmFront += share * filmFrontWm2K;
        filmBack += share * filmBackWm2K;
        plateC += share * temperatureC;
    }

    /** Heat of a kind, W/m². */
    public double wm2(PlateFlow flow) {
        return wm2[flow.ordinal()];
    }

    /** Irradiance on the front, W/m². */
    public double irradianceWm2() {
        return irradiance;
    }

    /** Film coefficient of the front, W/m²K. */
    public double filmFrontWm2K() {
        return filmFront;
    }

    /** Film coefficient of an open back, W/m²K; 0 where the back is closed. */
    public double filmBackWm2K() {
        return filmBack;
    }

    /** Mean temperature of the plate, °C. */
    public double plateC() {
        return plateC;
    }
}
