package dev.warmlane.pool;

/**
 * The kinds of heat that warm and cool a pool, each positive into the water. What a kind is at a water temperature stands
 * in {@link PoolForcing#evaluate}, or in the season's loop for what is built beside the pool; the balance, its slope, the
 * ledger and the tables follow from the kinds that are here.
 */
public enum Flow {
    /** Sun absorbed in the water. */
    SUN("sun on the pool"),
    /** Useful heat of the collectors, before the pipes. */
    COLLECTORS("collectors"),
    /** Heat that the collector circuit's pipes lose, negative, or gain. */
    PIPES("collector pipes"),
    /** Heat of the heater. */
    HEATER("heater"),
    /** Heat of the people in the water. */
    BATHERS("bathers"),
    /** Heat that the circulation pump leaves in the water. */
    CIRCULATION("circulation pump"),
    /** Evaporation. */
    EVAPORATION("evaporation"),
    /** Convection to the air. */
    CONVECTION("convection"),
    /** Net long-wave radiation. */
    LONG_WAVE("long-wave"),
    /** Conduction to the ground. */
    GROUND("ground"),
    /** Through walls above the ground to the air. */
    WALLS("walls"),
    /** Warming of make-up water. */
    MAKE_UP("make-up water"),
    /** Water that flows through. */
    THROUGH_FLOW("through-flow");

    /** How many kinds there are. */
    public static final int COUNT = values().length;

    private final String label;

    Flow(String label) {
        this.label = label;
    }

    /** The words for it in tables and charts. */
    public String label() {
        return label;
    }
}
