package dev.warmlane.roof;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Something that stands on a roof surface or opens it: a vent, a chimney, a skylight, a courtyard.
 *
 * @param name what people call it
 * @param shape its outline on the surface
 * @param heightM how far it stands up, m; 0 for what is level with the roof
 * @param clearanceM how far panels stay away from it, m
 */
public record Obstacle(String name, Shape shape, double heightM, double clearanceM) {

    /** Corners of a ring that is drawn for a circle. */
    private static final int RING = 48;

    /** Range of {@link #heightM}. */
    public static final Range HEIGHT = Range.of("height of the obstacle", Dimension.LENGTH, 0, 50);

    /** Range of {@link #clearanceM}. */
    public static final Range CLEARANCE = Range.of("clearance of the obstacle", Dimension.LENGTH, 0, 20);

    /** Range of the diameter of a round obstacle. */
    public static final Range DIAMETER = Range.of("diameter of the obstacle", Dimension.LENGTH, 0.01, 200);

    /** Range of a side of a rectangular obstacle. */
    public static final Range SIDE = Range.of("side of the obstacle", Dimension.LENGTH, 0.01, 500);

    /** Usual {@link #clearanceM}. */
    public static final Usual USUAL_CLEARANCE = CLEARANCE.usually(0.3, "common practice, no source");

    /** Usual {@link #heightM}. */
    public static final Usual USUAL_HEIGHT = HEIGHT.usually(0, "level with the roof");

    /** Checks every range. */
    public Obstacle {
        HEIGHT.check(heightM);
        CLEARANCE.check(clearanceM);
    }

    /** The line that panels stay outside of; around a disc as a ring of corners. */
    public List<RoofPoint> reach() {
        return shape.match(
                disc -> ring(disc.centre, disc.diameterM / 2 + clearanceM),
                block -> Shapes.around(block.outline(), clearanceM));
    }

    /** Its own outline; of a disc a ring of corners. */
    List<RoofPoint> outline() {
        return shape.match(disc -> ring(disc.centre, disc.diameterM / 2), block -> block.outline()
                .corners());
    }

    private static List<RoofPoint> ring(RoofPoint centre, double radiusM) {
        return IntStream.range(0, RING)
                .mapToDouble(i -> 2 * Math.PI * i / RING)
                .mapToObj(angle ->
                        new RoofPoint(centre.xM() + radiusM * Math.cos(angle), centre.yM() + radiusM * Math.sin(angle)))
                .toList();
    }

    /** What an obstacle looks like from above the surface. */
    public sealed interface Shape {

        /** One answer for each kind. */
        <T> T match(Function<Disc, T> disc, Function<Block, T> block);
    }

    /**
     * A round one.
     *
     * @param centre its middle
     * @param diameterM its diameter, m
     */
    public record Disc(RoofPoint centre, double diameterM) implements Shape {

        /** Checks the range. */
        public Disc {
            DIAMETER.check(diameterM);
        }

        @Override
        public <T> T match(Function<Disc, T> disc, Function<Block, T> block) {
            return disc.apply(this);
        }
    }

    /**
     * One with straight edges, mostly a rectangle.
     *
     * @param outline its edges
     */
    public record Block(Outline outline) implements Shape {

        /** A rectangle along the axes around its middle, m. */
        public static Block around(RoofPoint centre, double lengthM, double widthM) {
            return new Block(Outline.rectangle(
                    new RoofPoint(centre.xM() - SIDE.check(lengthM) / 2, centre.yM() - SIDE.check(widthM) / 2),
                    lengthM,
                    widthM));
        }

        @Override
        public <T> T match(Function<Disc, T> disc, Function<Block, T> block) {
            return block.apply(this);
        }
    }
}
