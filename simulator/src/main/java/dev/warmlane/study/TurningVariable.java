package dev.warmlane.study;

/** What may turn the ranking of two mountings, and the range it is looked at in. */
public enum TurningVariable {
    /** Wind speed along the roof over the undisturbed speed at its height: the range of {@code Roof}. */
    ROOF_WIND_RATIO(0, 2, 10),
    /** Share of short-wave that the bare roof reflects, from soot to fresh white. */
    ROOF_ALBEDO(0.05, 0.85, 8),
    /** Temperature that the water is held at, °C, see {@link HeldPool}. */
    POOL_TEMPERATURE(10, 40, 30),
    /** Tilt of the racks, degrees, their rows spaced anew by the same rule. */
    RACK_TILT(0, 75, 15);

    private final double from;
    private final double to;
    private final int steps;

    TurningVariable(double from, double to, int steps) {
        this.from = from;
        this.to = to;
        this.steps = steps;
    }

    /** The low end of the range. */
    public double from() {
        return from;
    }

    /** The high end of the range. */
    public double to() {
        return to;
    }

    /** How many equal steps the range is scanned in. */
    int steps() {
        return steps;
    }
}
