package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Roofs and rules of all kinds, the same for the same number. Invented. */
final class RandomRoofs {

    private final Random random;

    RandomRoofs(long seed) {
        this.random = new Random(seed);
    }

    Surface surface() {
        Outline outline = random.nextInt(3) == 0 ? angle() : around(4 + random.nextInt(6));
        List<Obstacle> obstacles = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            obstacles.add(obstacle());
        }
        return new Surface(
                "roof", outline, random.nextInt(360), 0, 6, 0, random.nextInt(3) * between(0.2, 1), obstacles);
    }

    PanelRules rules() {
        double shortest = between(1, 4);
        PanelRules.Lengths lengths = random.nextBoolean()
                ? new PanelRules.Cut(shortest, shortest + between(0, 4))
                : new PanelRules.Fixed(List.of(shortest, between(1, 6)));
        return new PanelRules(
                between(0.5, 1.5),
                lengths,
                random.nextBoolean() ? PanelRules.HeaderEnds.ONE : PanelRules.HeaderEnds.BOTH,
                between(0, 0.2),
                1 + random.nextInt(12),
                between(0, 1),
                random.nextInt(2) * between(0.1, 0.8));
    }

    Laying.Racks racks(PanelRules rules) {
        double tilt = between(5, 60);
        double chord = between(1, 3);
        double depth = new Laying.Racks(tilt, 0, chord, 1).depthM(rules);
        return new Laying.Racks(tilt, random.nextInt(360), chord, depth + between(0, 4));
    }

    Laying.Racks tents(PanelRules rules) {
        Laying.Racks racks = racks(rules);
        double way = racks.pitchM() - racks.depthM(rules);
        Laying.Racks tents = new Laying.Racks(racks.tiltDeg(), racks.facingDeg(), racks.chordM(), 1, true);
        return tents.withPitchM(tents.depthM(rules) + way);
    }

    private Obstacle obstacle() {
        RoofPoint middle = new RoofPoint(between(-12, 12), between(-12, 12));
        Obstacle.Shape shape = random.nextBoolean()
                ? new Obstacle.Disc(middle, between(0.05, 3))
                : Obstacle.Block.around(middle, between(0.05, 4), between(0.05, 4));
        return new Obstacle("obstacle", shape, between(0, 2), between(0, 1));
    }

    /** Corners around a middle, some of them pulled in. */
    private Outline around(int corners) {
        List<RoofPoint> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + between(-0.3, 0.3)) / corners;
            double radius = between(4, 16);
            points.add(new RoofPoint(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return new Outline(points);
    }

    private Outline angle() {
        double length = between(10, 30);
        double width = between(6, 20);
        double notchLength = length * between(0.2, 0.8);
        double notchWidth = width * between(0.2, 0.8);
        return new Outline(List.of(
                new RoofPoint(-10, -8),
                new RoofPoint(length - 10, -8),
                new RoofPoint(length - 10, width - notchWidth - 8),
                new RoofPoint(length - notchLength - 10, width - notchWidth - 8),
                new RoofPoint(length - notchLength - 10, width - 8),
                new RoofPoint(-10, width - 8)));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
