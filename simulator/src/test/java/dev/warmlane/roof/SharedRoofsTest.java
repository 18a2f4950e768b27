package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Two and three collectors of all kinds on one invented roof, by the rules of {@link RandomRoofsTest} and those between them. */
class SharedRoofsTest {

    private static final int ROOFS = 200;

    private static final double ROUNDING_M = 1e-5;

    /** A bank and whose it is. */
    private record Lying(int collectors, Laying laying, Bank bank) {}

    private record Case(Surface surface, PanelRules rules, List<Wanted> wanted) {}

    /** Of each as much as is likely to leave something: the last asks for more than that. */
    private static Case invented(int seed) {
        RandomRoofs random = new RandomRoofs(seed);
        Surface surface = random.surface();
        PanelRules rules = random.rules();
        Random other = new Random(seed);
        List<Wanted> wanted = new ArrayList<>();
        int count = 2 + seed % 2;
        for (int i = 0; i < count; i++) {
            Laying laying =
                    switch (other.nextInt(3)) {
                        case 0 -> random.racks(rules);
                        case 1 -> random.tents(rules);
                        default -> new Laying.Mats();
                    };
            double roof = surface.outline().areaM2();
            double share = i == count - 1 ? 0.5 : 0.1 + 0.15 * other.nextDouble();
            wanted.add(new Wanted(List.of(surface), laying, share * roof));
        }
        return new Case(surface, rules, wanted);
    }

    @Test
    void nothingOverlapsAndAllDistancesHold() {
        int shared = 0;
        int besideRacks = 0;
        for (int seed = 0; seed < ROOFS; seed++) {
            Case one = invented(seed);
            LaidRoof roof = LaidRoof.of(one.rules, one.wanted);
            List<Lying> all = new ArrayList<>();
            for (int i = 0; i < roof.laid().size(); i++) {
                RoofLayout layout = roof.laid().get(i).layout();
                keepsItsOwnRules("collectors " + i + " of " + seed, layout);
                for (Bank bank : layout.surfaces().get(0).banks()) {
                    all.add(new Lying(i, layout.laying(), bank));
                }
            }
            for (Lying first : all) {
                for (Lying second : all) {
                    if (first.collectors != second.collectors) {
                        keepApart("roof " + seed, first, second, one.rules);
                    }
                }
            }
            shared += all.stream().map(Lying::collectors).distinct().count() > 1 ? 1 : 0;
            besideRacks += all.stream()
                                    .filter(lying -> lying.laying.match(mats -> false, racks -> true))
                                    .map(Lying::collectors)
                                    .distinct()
                                    .count()
                            > 1
                    ? 1
                    : 0;
        }
        // or nothing was held
        assertThat(shared).isGreaterThan(ROOFS / 2);
        assertThat(besideRacks).isGreaterThan(ROOFS / 10);
    }

    private static void keepsItsOwnRules(String what, RoofLayout layout) {
        PanelRules rules = layout.rules();
        layout.laying()
                .match(
                        mats -> {
                            RandomRoofsTest.check(what, layout, rules.walkwayM(), rules.splitsAroundM());
                            return what;
                        },
                        racks -> {
                            double way = Math.min(rules.walkwayM(), racks.pitchM() - racks.depthM(rules));
                            if (racks.tents()) {
                                RandomRoofsTest.checkTents(what, layout, way);
                            } else {
                                RandomRoofsTest.check(what, layout, way, 0);
                            }
                            return what;
                        });
    }

    /** A walkway from each to the other; behind racks, before and behind tents, as much as to their next row. */
    private static void keepApart(String what, Lying lying, Lying other, PanelRules rules) {
        Polygon beside = RandomRoofsTest.polygon(
                RandomRoofsTest.shrunk(other.bank.place()).corners());
        Patch own = RandomRoofsTest.shrunk(lying.bank.place());
        assertThat(RandomRoofsTest.polygon(own.corners()).distance(beside))
                .as(what + " from collectors to collectors")
                .isGreaterThanOrEqualTo(rules.walkwayM());
        double behind = lying.laying.match(mats -> 0.0, racks -> racks.pitchM() - racks.depthM(rules));
        boolean before = lying.laying.match(mats -> false, Laying.Racks::tents);
        assertThat(RandomRoofsTest.polygon(own.part(
                                        0,
                                        before ? -behind : 0,
                                        own.lengthM(),
                                        own.depthM() + (before ? 2 : 1) * behind)
                                .corners())
                        .intersects(beside))
                .as(what + " in the way behind racks")
                .isFalse();
    }

    @Test
    void theFirstLieAsIfTheyWereAlone() {
        for (int seed = 0; seed < ROOFS / 5; seed++) {
            Case one = invented(seed);
            Wanted first = one.wanted.get(0);

            LaidRoof.Laid laid = LaidRoof.of(one.rules, one.wanted).laid().get(0);

            assertThat(laid.layout())
                    .as("roof %d", seed)
                    .isEqualTo(RoofLayout.ofArea(first.surfaces(), one.rules, first.laying(), first.areaM2())
                            .orElseGet(() -> RoofLayout.most(first.surfaces(), one.rules, first.laying())));
        }
    }

    @Test
    void turnedWithTheirRoofTheyLieTheSame() {
        for (int seed = 0; seed < ROOFS / 3; seed++) {
            Case one = invented(seed);
            List<Wanted> turned = one.wanted.stream()
                    .map(wanted -> new Wanted(
                            List.of(RandomRoofsTest.turned(one.surface)),
                            RandomRoofsTest.turned(wanted.laying()),
                            wanted.areaM2()))
                    .toList();

            LaidRoof before = LaidRoof.of(one.rules, one.wanted);
            LaidRoof after = LaidRoof.of(one.rules, turned);

            for (int i = 0; i < turned.size(); i++) {
                RoofLayout first = before.laid().get(i).layout();
                RoofLayout second = after.laid().get(i).layout();
                assertThat(second.areaM2())
                        .as("turned %d, collectors %d", seed, i)
                        .isCloseTo(first.areaM2(), within(ROUNDING_M));
                List<Bank> banks = first.surfaces().get(0).banks();
                assertThat(second.banks()).isEqualTo(banks.size());
                for (int b = 0; b < banks.size(); b++) {
                    RoofPoint corner =
                            RandomRoofsTest.turned(banks.get(b).place().corner());
                    assertThat(second.surfaces()
                                    .get(0)
                                    .banks()
                                    .get(b)
                                    .place()
                                    .corner()
                                    .distanceM(corner))
                            .as("turned %d, collectors %d, bank %d", seed, i, b)
                            .isLessThan(ROUNDING_M);
                }
            }
        }
    }
}
