package dev.warmlane.irradiance;

import dev.warmlane.site.Horizon;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What an area sees of the sky above the things around it: the lines of the horizon from many places on it, each as large a
 * part of the area as the others. For light from a direction the share of the area that is lit is the share of the places
 * whose line lies below it. Directions are kept in steps of two degrees, each for all within half a step.
 * Immutable.
 */
public final class Skylines {

    /** Nothing hides any sky. */
    public static final Skylines OPEN = new Skylines(new double[0][0]);

    /** Step of the directions, degrees; the sun takes some eight minutes for one. Own choice. */
    private static final int STEP_DEG = 2;

    private static final int STEPS = 360 / STEP_DEG;

    /** Step of the height, degrees, over which light of the sky is summed up; own choice. */
    private static final int HEIGHT_STEP_DEG = 1;

    private static final int HEIGHTS = 90 / HEIGHT_STEP_DEG;

    /** For each direction the heights of the places' lines, degrees, from low to high. */
    private final double[][] heightsDeg;

    private Skylines(double[][] heightsDeg) {
        this.heightsDeg = heightsDeg;
    }

    /** One line that is the same from everywhere. */
    public static Skylines of(Horizon horizon) {
        return seen(List.of(new Wall.Eye(0, 0, 0)), List.of(), horizon);
    }

    /**
     * The lines from places among walls, before a horizon.
     *
     * @param places where one looks from, each as large a part of the area as the others; at least one
     * @param walls what stands near
     * @param horizon what stands far away
     */
    public static Skylines seen(List<Wall.Eye> places, List<Wall> walls, Horizon horizon) {
        if (horizon.isLevel() && walls.isEmpty()) {
            return OPEN;
        }
        if (places.isEmpty()) {
            throw new IllegalArgumentException("skylines are seen from at least one place");
        }
        double[][] heights = new double[STEPS][places.size()];
        for (int step = 0; step < STEPS; step++) {
            double azimuth = Math.toRadians(STEP_DEG * step);
            double sin = Math.sin(azimuth);
            double cos = Math.cos(azimuth);
            double far = horizon.heightDeg(STEP_DEG * step);
            for (int place = 0; place < places.size(); place++) {
                double steepest = 0;
                for (Wall wall : walls) {
                    steepest = Math.max(steepest, wall.slope(places.get(place), sin, cos));
                }
                heights[step][place] = Math.max(far, Math.toDegrees(Math.atan(steepest)));
            }
            Arrays.sort(heights[step]);
        }
        boolean level = Arrays.stream(heights).allMatch(all -> all[all.length - 1] == 0);
        return level ? OPEN : new Skylines(heights);
    }

    /**
     * Those of several areas as one.
     *
     * @param areas each of them; at least one
     * @param places how many places each has, by which it counts
     */
    public static Skylines together(List<Skylines> areas, List<Integer> places) {
        if (areas.stream().allMatch(Skylines::isOpen)) {
            return OPEN;
        }
        double[][] heights = new double[STEPS][];
        for (int step = 0; step < STEPS; step++) {
            int here = step;
            heights[step] = IntStream.range(0, areas.size())
                    .boxed()
                    .flatMapToDouble(i -> areas.get(i).isOpen()
                            ? DoubleStream.generate(() -> 0).limit(places.get(i))
                            : Arrays.stream(areas.get(i).heightsDeg[here]))
                    .sorted()
                    .toArray();
        }
        return new Skylines(heights);
    }

    /** Whether nothing hides any sky. */
    public boolean isOpen() {
        return heightsDeg.length == 0;
    }

    /**
     * Share of the area that light from a direction reaches, 0 to 1.
     *
     * @param azimuthDeg degrees clockwise from north, 0 to 360
     * @param heightDeg degrees above the level
     */
    public double litShare(double azimuthDeg, double heightDeg) {
        if (isOpen()) {
            return 1;
        }
        double[] heights = heightsDeg[(int) Math.round(azimuthDeg / STEP_DEG) % STEPS];
        int below = 0;
        int above = heights.length;
        while (below < above) {
            int middle = (below + above) / 2;
            if (heights[middle] < heightDeg || heights[middle] == 0) {
                below = middle + 1;
            } else {
                above = middle;
            }
        }
        return (double) below / heights.length;
    }

    /**
     * Height below which a direction is dark for a share of the area, degrees; what a chart of the sky shows.
     *
     * @param azimuthDeg degrees clockwise from north, 0 to 360
     * @param share of the area, above 0 to 1
     */
    public double darkBelowDeg(double azimuthDeg, double share) {
        if (isOpen()) {
            return 0;
        }
        double[] heights = heightsDeg[(int) Math.round(azimuthDeg / STEP_DEG) % STEPS];
        return heights[(int) Math.min(heights.length - 1, Math.floor((1 - share) * heights.length))];
    }

    /**
     * What is left of an even sky's light, and of its long-wave, on the front of a plane, of what nothing hides, 0 to 1:
     *
     * <p>{@code ∫∫ lit·max(0, cosθ)·cos h dh dφ / ∫∫ max(0, cosθ)·cos h dh dφ} over heights h and directions φ. On a
     * plane that lies an even horizon of height H leaves cos²H (derived).
     */
    public double skyShare(Plane plane) {
        return skyShare(plane, false, (azimuthDeg, zenithDeg) -> 1);
    }

    /**
     * The same for a face in an interior row of racks, which its neighbours hide from part of the sky already.
     *
     * @param rows the rows
     * @param place where among them
     * @param back whether it is their backs
     */
    public double skyShare(RackRows rows, RowPlace place, boolean back) {
        return skyShare(
                rows.plane(),
                back,
                (azimuthDeg, zenithDeg) ->
                        place == RowPlace.FIRST ? 1 : 1 - rows.shadedShare(rows.profileDeg(zenithDeg, azimuthDeg)));
    }

    private double skyShare(Plane plane, boolean back, DoubleBinaryOperator reached) {
        if (isOpen()) {
            return 1;
        }
        double tilt = Math.toRadians(plane.tiltDeg());
        double side = back ? -1 : 1;
        double whole = 0;
        double seen = 0;
        double[] fromHere = new double[HEIGHTS + 1];
        for (int step = 0; step < STEPS; step++) {
            double azimuth = STEP_DEG * step;
            double towards = Math.cos(Math.toRadians(azimuth - plane.azimuthDeg()));
            for (int i = HEIGHTS - 1; i >= 0; i--) {
                double heightDeg = HEIGHT_STEP_DEG * (i + 0.5);
                double height = Math.toRadians(heightDeg);
                double cos = Math.cos(tilt) * Math.sin(height) + Math.sin(tilt) * Math.cos(height) * towards;
                fromHere[i] = fromHere[i + 1]
                        + Math.max(0, side * cos) * Math.cos(height) * reached.applyAsDouble(azimuth, 90 - heightDeg);
            }
            whole += fromHere[0];
            double here = 0;
            for (double line : heightsDeg[step]) {
                int i = Math.min(HEIGHTS - 1, (int) (line / HEIGHT_STEP_DEG));
                here += fromHere[i] + (line / HEIGHT_STEP_DEG - i) * (fromHere[i + 1] - fromHere[i]);
            }
            seen += here / heightsDeg[step].length;
        }
        return whole == 0 ? 1 : Math.min(1, seen / whole);
    }
}
