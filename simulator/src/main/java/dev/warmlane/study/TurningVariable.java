package dev.warmlane.study;

import java.util.stream.IntStream;

/** What may turn the ranking of two mountings, and the range it is looked at in. */
public enum TurningVariable {
    /** Wind speed along the roof over the undisturbed speed at its height: the range of {@code Roof}. */
    ROOF_WIND_RATIO(0, 2, 10),
    /** Share of short-wave that the bare roof reflects, from soot to fresh white. */
    ROOF_ALBEDO(0.05, 0.85, 8),
    /** Temperature that the water is held at, °C, see {@link HeldPool}. */
    POOL_TEMPERATURE(10, 40, 30),
    /** Tilt of the racks, degrees, their rows spaced anew by the same rule. */
    RACK_TILT(0, 75, 15),
    /** Wind at every row of the racks but the first over that at the first; asked of several rows. */
    INNER_WIND(0.3, 1.2, 6),
    /** Conductance of the board behind the racks, W/m²K, from a perfect one to 12 mm of plywood; asked of boarded racks. */
    BOARD_U_VALUE(0, 11, 8);

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

    /** The range. */
    public Extent extent() {
        return new Extent(from, to);
    }

    /**
     * A range.
     *
     * @param from its low end
     * @param to its high end
     */
    public record Extent(double from, double to) {

        /** Whether a value lies in it. */
        public boolean holds(double value) {
            return value >= from && value <= to;
        }

        /** How far apart its ends are. */
        double width() {
            return to - from;
        }

        /** Its ends and what cuts it into equal steps. */
        double[] cut(int count) {
            return IntStream.rangeClosed(0, count)
                    .mapToDouble(i -> from + width() * i / count)
                    .toArray();
        }
    }
}
