package dev.warmlane.site;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How high what stands around a place reaches into the sky, by direction: hills, woods, buildings far enough away to look
 * alike from everywhere on it. Between two directions the line is straight, all the way round.
 *
 * @param heights directions with their heights, kept by direction, each once; none for a level horizon
 */
public record Horizon(List<Height> heights) {

    /** Range of {@link Height#azimuthDeg}. */
    public static final Range AZIMUTH = Range.of("direction of the horizon", Dimension.DIRECTION, 0, 360);

    /** Range of {@link Height#heightDeg}. */
    public static final Range HEIGHT = Range.of("height of the horizon", Dimension.TILT, 0, 90);

    /** The most directions: one for every tenth of a degree. */
    public static final int MOST_HEIGHTS = 3600;

    /** Nothing stands around. */
    public static final Horizon LEVEL = new Horizon(List.of());

    /**
     * A direction.
     *
     * @param azimuthDeg degrees clockwise from north; 360 is kept as 0
     * @param heightDeg how high the horizon is there, degrees above the level
     */
    public record Height(double azimuthDeg, double heightDeg) {

        /** Checks both ranges. */
        public Height {
            azimuthDeg = AZIMUTH.check(azimuthDeg) == 360 ? 0 : azimuthDeg;
            HEIGHT.check(heightDeg);
        }
    }

    /** Sorts by direction; one that is there twice must have the same height both times. */
    public Horizon {
        if (heights.size() > MOST_HEIGHTS) {
            throw new IllegalArgumentException(
                    "a horizon has at most " + MOST_HEIGHTS + " directions, was given " + heights.size());
        }
        List<Height> sorted = new ArrayList<>(heights);
        sorted.sort(Comparator.comparingDouble(Height::azimuthDeg));
        for (int i = sorted.size() - 1; i > 0; i--) {
            Height here = sorted.get(i);
            Height before = sorted.get(i - 1);
            if (here.azimuthDeg == before.azimuthDeg) {
                if (here.heightDeg != before.heightDeg) {
                    throw new IllegalArgumentException("the horizon has two heights at " + here.azimuthDeg + " deg, "
                            + before.heightDeg + " and " + here.heightDeg + " deg; give each direction once");
                }
                sorted.remove(i);
            }
        }
        heights = List.copyOf(sorted);
    }

    /** The same height all around, degrees. */
    public static Horizon even(double heightDeg) {
        return new Horizon(List.of(new Height(0, heightDeg)));
    }

    /** Whether nothing stands out anywhere. */
    public boolean isLevel() {
        return heights.stream().allMatch(one -> one.heightDeg == 0);
    }

    /**
     * Its height in a direction.
     *
     * @param azimuthDeg degrees clockwise from north, 0 to 360
     */
    public double heightDeg(double azimuthDeg) {
        if (heights.isEmpty()) {
            return 0;
        }
        Height before = heights.get(heights.size() - 1);
        double from = before.azimuthDeg - 360;
        for (Height after : heights) {
            if (azimuthDeg < after.azimuthDeg) {
                return between(azimuthDeg, from, before, after.azimuthDeg, after);
            }
            before = after;
            from = after.azimuthDeg;
        }
        Height first = heights.get(0);
        return between(azimuthDeg, from, before, first.azimuthDeg + 360, first);
    }

    private static double between(double azimuthDeg, double from, Height before, double to, Height after) {
        return before.heightDeg + (azimuthDeg - from) / (to - from) * (after.heightDeg - before.heightDeg);
    }

    /** The highest height of all, degrees. */
    public double highestDeg() {
        return heights.stream().mapToDouble(Height::heightDeg).max().orElse(0);
    }
}
