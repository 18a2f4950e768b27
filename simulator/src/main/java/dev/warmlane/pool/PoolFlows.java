package dev.warmlane.pool;

/**
 * The heat flows of a pool at one water temperature in one hour, W per m² of water, positive into the water. A mutable
 * holder that the hourly loop fills again and again, so that it allocates nothing; not for sharing between threads.
 */
public final class PoolFlows {

    /** Sun absorbed in the water, W/m². */
    public double sun;

    /** Heat from the people in the water, W/m². */
    public double bathers;

    /** Heat that the circulation pump leaves in the water, W/m². */
    public double circulation;

    /** Latent heat of evaporation, W/m²; positive where vapour condenses. */
    public double evaporation;

    /** Convection to the air, W/m². */
    public double convection;

    /** Net long-wave radiation, W/m². */
    public double longWave;

    /** Conduction to the ground, W/m². */
    public double ground;

    /** Warming of make-up water, W/m². */
    public double makeUp;

    /** Water evaporated, kg/m²s; never below 0. */
    public double evaporatedKgSM2;

    /** How the sum changes with water temperature, W/m²K; below 0. */
    public double slope;

    /** Makes an empty holder. */
    public PoolFlows() {}

    /** Sum of all flows, W/m². */
    public double net() {
        return sun + bathers + circulation + evaporation + convection + longWave + ground + makeUp;
    }
}
