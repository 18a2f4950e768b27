package dev.warmlane.collector;

/**
 * The kinds of heat of a running collector's plate: what it takes in is what it loses and what is useful. What a kind is
 * stands in the plate's balance; the budget's sums and tables follow from the kinds that are here.
 */
public enum PlateFlow {
    /** Short-wave absorbed by the front. */
    ABSORBED_FRONT("sun absorbed by the front", Side.TAKEN_IN),
    /** Short-wave absorbed by an open back. */
    ABSORBED_BACK("sun absorbed by an open back", Side.TAKEN_IN),
    /** Convection from the front. */
    CONVECTION_FRONT("wind and air on the front", Side.LOST),
    /** Convection from an open back. */
    CONVECTION_BACK("wind and air on an open back", Side.LOST),
    /** Net long-wave from the front. */
    LONG_WAVE_FRONT("long-wave from the front", Side.LOST),
    /** Net long-wave from an open back; negative where the warm roof gives more than the back loses. */
    LONG_WAVE_BACK("long-wave from an open back", Side.LOST),
    /** Conduction through a closed back, to the room or to the outer face of a board. */
    THROUGH_BACK("through a closed back", Side.LOST),
    /** Useful heat. */
    USEFUL("useful heat", Side.USED);

    /** The side of the plate's balance that a kind stands on. */
    public enum Side {
        /** What the plate takes in, positive. */
        TAKEN_IN,
        /** What it loses, positive; gains from warm air or a warm roof are negative. */
        LOST,
        /** What goes into the water. */
        USED
    }

    private final String label;
    private final Side side;

    PlateFlow(String label, Side side) {
        this.label = label;
        this.side = side;
    }

    /** The words for it in tables and charts. */
    public String label() {
        return label;
    }

    /** The side of the balance it stands on. */
    public Side side() {
        return side;
    }
}
