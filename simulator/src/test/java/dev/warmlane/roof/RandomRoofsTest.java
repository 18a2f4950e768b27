package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Every layout of thousands of invented roofs keeps its rules. Distances are measured by a geometry library between the
 * shapes as they were given, not by what laid them.
 */
class RandomRoofsTest {

    private static final int ROOFS = 1000;

    /** Coordinates are whole micrometres, of two things. */
    private static final double ROUNDING_M = 1e-5;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Test
    void matsKeepTheirDistances() {
        int laid = 0;
        for (int seed = 0; seed < ROOFS; seed++) {
            RandomRoofs random = new RandomRoofs(seed);
            Surface surface = random.surface();
            PanelRules rules = random.rules();
            RoofLayout most = RoofLayout.most(List.of(surface), rules, new Laying.Mats());
            check("mats " + seed, most, rules.walkwayM(), rules.splitsAroundM());
            laid += most.panels();
        }
        // or nothing was held
        assertThat(laid).isGreaterThan(ROOFS);
    }

    @Test
    void racksKeepTheirDistances() {
        int laid = 0;
        for (int seed = 0; seed < ROOFS; seed++) {
            RandomRoofs random = new RandomRoofs(seed);
            Surface surface = random.surface();
            PanelRules rules = random.rules();
            Laying.Racks racks = random.racks(rules);
            RoofLayout most = RoofLayout.most(List.of(surface), rules, racks);
            check("racks " + seed, most, Math.min(rules.walkwayM(), racks.pitchM() - racks.depthM(rules)), 0);
            laid += most.panels();
        }
        assertThat(laid).isGreaterThan(ROOFS);
    }

    @Test
    void tentsKeepTheirDistancesAndBothTheirSides() {
        int laid = 0;
        for (int seed = 0; seed < ROOFS; seed++) {
            RandomRoofs random = new RandomRoofs(seed);
            Surface surface = random.surface();
            PanelRules rules = random.rules();
            Laying.Racks tents = random.tents(rules);
            RoofLayout most = RoofLayout.most(List.of(surface), rules, tents);
            double way = Math.min(rules.walkwayM(), tents.pitchM() - tents.depthM(rules));
            checkTents("tents " + seed, most, way);
            if (seed % 5 == 0) {
                RoofLayout some = RoofLayout.ofArea(List.of(surface), rules, tents, 0.6 * most.areaM2())
                        .orElseThrow();
                checkTents("some tents " + seed, some, way);
                assertThat(some.areaM2()).isGreaterThanOrEqualTo(0.6 * most.areaM2() - ROUNDING_M);
            }
            laid += most.panels();
        }
        assertThat(laid).isGreaterThan(ROOFS);
    }

    /** Both sides together keep the distances of one; they touch at the ridge and have the same panels. */
    static void checkTents(String what, RoofLayout layout, double walkwayM) {
        SurfaceLayout on = layout.surfaces().get(0);
        List<Bank> whole = new ArrayList<>();
        for (int i = 0; i < on.banks().size(); i += 2) {
            Bank near = on.banks().get(i);
            Bank far = on.banks().get(i + 1);
            assertThat(far.row()).as(what).isEqualTo(near.row() + 1);
            assertThat(far.panels()).as(what).isEqualTo(near.panels());
            Patch place = near.place();
            Patch ridge = place.part(0, place.depthM(), place.lengthM(), place.depthM());
            assertThat(far.place().corner().distanceM(ridge.corner())).as(what).isLessThan(ROUNDING_M);
            assertThat(far.nearHeader()).isEqualTo(near.farHeader());
            whole.add(new Bank(
                    near.row(),
                    place.part(0, 0, place.lengthM(), 2 * place.depthM()),
                    near.panels(),
                    near.panelLengthM(),
                    near.panelWidthM(),
                    near.nearHeader(),
                    near.farHeader()));
        }
        check(what, new RoofLayout(List.of(on.withBanks(whole)), layout.rules(), layout.laying()), walkwayM, 0);
    }

    @Test
    void anAreaThatFitsIsFoundAndNoMoreThanAPanelTooLarge() {
        for (int seed = 0; seed < ROOFS / 5; seed++) {
            RandomRoofs random = new RandomRoofs(seed);
            Surface surface = random.surface();
            PanelRules rules = random.rules();
            RoofLayout most = RoofLayout.most(List.of(surface), rules, new Laying.Mats());
            double wanted = 0.7 * most.areaM2();
            RoofLayout found = RoofLayout.ofArea(List.of(surface), rules, new Laying.Mats(), wanted)
                    .orElseThrow();
            check("area " + seed, found, rules.walkwayM(), rules.splitsAroundM());
            double longest = rules.lengths()
                    .match(fixed -> fixed.lengthsM().get(fixed.lengthsM().size() - 1), PanelRules.Cut::longestM);
            assertThat(found.areaM2()).as("area %d", seed).isGreaterThanOrEqualTo(wanted - ROUNDING_M);
            if (rules.splitsAroundM() == 0) {
                assertThat(found.areaM2())
                        .as("area %d", seed)
                        .isLessThanOrEqualTo(wanted + longest * rules.widthM() + ROUNDING_M);
            }
            assertThat(found.banks()).as("area %d", seed).isLessThanOrEqualTo(most.banks());
        }
    }

    @Test
    void moreLengthsNeverCoverLess() {
        for (int seed = 0; seed < ROOFS / 5; seed++) {
            Surface surface = new RandomRoofs(seed).surface();
            double one = most(surface, 3.0);
            assertThat(most(surface, 1.7, 3.0, 4.1)).as("roof %d", seed).isGreaterThanOrEqualTo(one - ROUNDING_M);
        }
    }

    /** On so large a roof not every place can be tried, and none of it may be forgotten. */
    @Test
    void aVeryLargeRoofIsCoveredToItsFarEnd() {
        Surface field = Surface.flat("field", Outline.rectangle(480, 400), 180, 6);
        double whole = 478 * 398;

        // a row of panels of 3 m takes 3.8 m, ten panels of 12 m take 12.6 m
        double share = 3 / 3.8 * 12 / 12.6;
        assertThat(most(field, 3.0) / whole).isCloseTo(share, within(0.01));
        assertThat(most(field, 2.0, 2.4, 2.7, 3.0)).isGreaterThanOrEqualTo(most(field, 3.0) - ROUNDING_M);
        double cut = RoofLayout.most(
                        List.of(field),
                        PanelRules.usual(1.2, 3.0).withLengths(new PanelRules.Cut(2, 3)),
                        new Laying.Mats())
                .areaM2();
        assertThat(cut / whole).isCloseTo(share, within(0.01));
    }

    private static double most(Surface surface, Double... lengthsM) {
        return RoofLayout.most(List.of(surface), PanelRules.usual(1.2, lengthsM), new Laying.Mats())
                .areaM2();
    }

    @Test
    void aLayoutTurnedWithItsRoofIsTheSameLayout() {
        for (int seed = 0; seed < ROOFS / 5; seed++) {
            RandomRoofs random = new RandomRoofs(seed);
            Surface surface = random.surface();
            PanelRules rules = random.rules();
            Laying laying =
                    seed % 3 == 0 ? new Laying.Mats() : seed % 3 == 1 ? random.racks(rules) : random.tents(rules);
            RoofLayout before = RoofLayout.most(List.of(surface), rules, laying);
            RoofLayout after = RoofLayout.most(List.of(turned(surface)), rules, turned(laying));

            assertThat(after.pieces().stream().map(Piece::count))
                    .as("turned %d", seed)
                    .containsExactlyElementsOf(
                            before.pieces().stream().map(Piece::count).toList());
            assertThat(after.areaM2()).isCloseTo(before.areaM2(), within(ROUNDING_M));
            List<Bank> first = before.surfaces().get(0).banks();
            List<Bank> second = after.surfaces().get(0).banks();
            for (int i = 0; i < first.size(); i++) {
                RoofPoint corner = turned(first.get(i).place().corner());
                assertThat(second.get(i).place().corner().distanceM(corner))
                        .as("turned %d, bank %d", seed, i)
                        .isLessThan(ROUNDING_M);
            }
        }
    }

    /** Turned anticlockwise on the drawing; the compass stays with the drawing, so what racks face turns too. */
    static Laying turned(Laying laying) {
        return laying.match(
                mats -> mats,
                racks -> new Laying.Racks(
                        racks.tiltDeg(),
                        (racks.facingDeg() + 270) % 360,
                        racks.chordM(),
                        racks.pitchM(),
                        racks.tents()));
    }

    static RoofPoint turned(RoofPoint point) {
        return new RoofPoint(-point.yM(), point.xM());
    }

    private static Outline turned(Outline outline) {
        return new Outline(
                outline.corners().stream().map(RandomRoofsTest::turned).toList());
    }

    static Surface turned(Surface surface) {
        List<Obstacle> obstacles = surface.obstacles().stream()
                .map(obstacle -> new Obstacle(
                        obstacle.name(),
                        obstacle.shape()
                                .match(
                                        disc -> new Obstacle.Disc(turned(disc.centre()), disc.diameterM()),
                                        block -> new Obstacle.Block(turned(block.outline()))),
                        obstacle.heightM(),
                        obstacle.clearanceM()))
                .toList();
        return new Surface(
                surface.name(),
                turned(surface.outline()),
                surface.azimuthDeg(),
                0,
                6,
                0,
                surface.edgeDistanceM(),
                obstacles);
    }

    static void check(String what, RoofLayout layout, double walkwayM, double splitsM) {
        SurfaceLayout on = layout.surfaces().get(0);
        Surface surface = on.surface();
        Polygon roof = polygon(surface.outline().corners());
        List<Polygon> banks = new ArrayList<>();
        for (Bank bank : on.banks()) {
            Polygon place = polygon(bank.place().corners());
            assertThat(place.difference(roof).getArea())
                    .as(what + " on the roof")
                    .isLessThan(ROUNDING_M * place.getLength());
            assertThat(roof.getExteriorRing().distance(place))
                    .as(what + " from the edge")
                    .isGreaterThanOrEqualTo(surface.edgeDistanceM() - ROUNDING_M);
            for (Obstacle obstacle : surface.obstacles()) {
                clear(what, bank, place, obstacle, splitsM);
            }
            banks.add(place);
        }
        IntStream.range(0, banks.size()).forEach(i -> IntStream.range(0, i).forEach(j -> assertThat(polygon(
                                shrunk(on.banks().get(i).place()).corners())
                        .distance(polygon(shrunk(on.banks().get(j).place()).corners())))
                .as(what + " from bank to bank")
                .isGreaterThanOrEqualTo(walkwayM)));
    }

    private static void clear(String what, Bank bank, Polygon place, Obstacle obstacle, double splitsM) {
        Geometry shape = obstacle.shape()
                .match(
                        disc -> FACTORY.createPoint(
                                new Coordinate(disc.centre().xM(), disc.centre().yM())),
                        block -> polygon(block.outline().corners()));
        double radius = obstacle.shape().match(disc -> disc.diameterM() / 2, block -> 0.0);
        double clearance = obstacle.clearanceM() + radius - ROUNDING_M;
        if (shape.distance(place) >= clearance) {
            return;
        }
        // it lies among the tubes, and away from the headers
        assertThat(splitsM).as(what + " from " + obstacle).isGreaterThan(0);
        assertThat(polygon(bank.place().corners()).buffer(ROUNDING_M).covers(shape.buffer(radius)))
                .as(what + " around " + obstacle)
                .isTrue();
        for (Patch header : bank.headerPatches()) {
            assertThat(polygon(header.corners()).distance(shape))
                    .as(what + " headers from " + obstacle)
                    .isGreaterThanOrEqualTo(clearance - ROUNDING_M);
        }
    }

    /** A hair smaller, so that rounding does not count as an overlap. */
    static Patch shrunk(Patch patch) {
        double hair = ROUNDING_M;
        return patch.part(hair, hair, patch.lengthM() - 2 * hair, patch.depthM() - 2 * hair);
    }

    static Polygon polygon(List<RoofPoint> corners) {
        Coordinate[] closed = new Coordinate[corners.size() + 1];
        for (int i = 0; i < closed.length; i++) {
            RoofPoint corner = corners.get(i % corners.size());
            closed[i] = new Coordinate(corner.xM(), corner.yM());
        }
        return FACTORY.createPolygon(closed);
    }
}
