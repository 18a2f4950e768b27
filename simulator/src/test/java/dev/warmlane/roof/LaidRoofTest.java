package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Several collectors on one surface, by hand: the roof of {@link LayoutByHandTest}, 28 m by 12 m within a metre from its edges,
 * panels of 1.2 m by 3 m that take 3.2 m with their headers, ten to a bank, 0.6 m between banks.
 */
class LaidRoofTest {

    private static final Offset<Double> EXACT = within(1e-6);
    private static final PanelRules RULES = PanelRules.usual(1.2, 3.0);
    private static final Laying MATS = new Laying.Mats();
    private static final List<Surface> HALL = List.of(Surface.flat("hall", Outline.rectangle(30, 14), 180, 6));
    private static final List<Surface> SLOPE =
            List.of(new Surface("slope", Outline.rectangle(12, 6), 110, 25, 6, 0, 0.5, List.of()));

    private static LaidRoof roof(Wanted... wanted) {
        return LaidRoof.of(RULES, List.of(wanted));
    }

    private static RoofLayout layout(LaidRoof roof, int number) {
        return roof.laid().get(number).layout();
    }

    /**
     * 40 panels are two rows of two banks along the roof, 25.6 m long and 2 x 3.8 m deep. Of 12 m 4.4 m are left behind them,
     * for a row of 28 / 1.2 = 22 panels in three banks, and 2.2 m and a walkway beside each of the two, for 2 panels.
     */
    @Test
    void matsBesideMats() {
        LaidRoof roof = roof(new Wanted(HALL, MATS, 144));

        RoofLayout left = roof.most(HALL, MATS);

        assertThat(layout(roof, 0).panels()).isEqualTo(40);
        assertThat(left.panels()).isEqualTo(22 + 2 * 2);
        assertThat(left.areaM2()).isCloseTo(26 * 3.6, EXACT);
        assertThat(roof.with(new Wanted(HALL, MATS, 26 * 3.6)).fits()).isTrue();
        LaidRoof tooMuch = roof.with(new Wanted(HALL, MATS, 26 * 3.6 + 0.1));
        assertThat(tooMuch.fits()).isFalse();
        assertThat(tooMuch.laid()).extracting(LaidRoof.Laid::fits).containsExactly(true, false);
        assertThat(layout(tooMuch, 1).areaM2()).as("the most that does").isCloseTo(26 * 3.6, EXACT);
    }

    /** In the same room a row of racks, 1.905 m deep, has 22 panels behind the mats, and two more rows have 2 beside them. */
    @Test
    void racksBesideMats() {
        RoofLayout racks = roof(new Wanted(HALL, MATS, 144)).most(HALL, new Laying.Racks(30, 180, 2, 4));

        assertThat(racks.rows()).isEqualTo(3);
        assertThat(racks.panels()).isEqualTo(22 + 2 * 2);
    }

    /**
     * Racks 1.905 m deep in two banks of ten stand from the front, 25.6 m of 28 m long. Their next row would stand 6 m on: of
     * 12 m 6 m are left, in which seven rows across the roof have 6 / 1.2 = 5 panels. With no more than a walkway behind the
     * racks it would be 9.49 m, and 7 panels.
     */
    @Test
    void matsBehindRacksBeginWhereTheNextRowWould() {
        Laying racks = new Laying.Racks(30, 180, 2, 6);
        LaidRoof roof = roof(new Wanted(HALL, racks, 20 * 2.4));

        RoofLayout mats = roof.most(HALL, MATS);

        assertThat(layout(roof, 0).rows()).isEqualTo(1);
        assertThat(layout(roof, 0).banks()).isEqualTo(2);
        assertThat(mats.panels()).isEqualTo(35);
        assertThat(mats.surfaces().get(0).banks())
                .flatExtracting(bank -> bank.place().corners())
                .extracting(RoofPoint::yM)
                .allMatch(y -> y > 7 - 1e-5 && y < 13 + 1e-5);
    }

    /**
     * Of a roof 12 m deep and 12 m long within its edges 36 m² of mats take the front 3.2 m: racks that look over them to the
     * south stand a walkway behind, and racks that look to the north, whose backs are to the mats, a row's way.
     */
    @Test
    void whatIsLaidLaterKeepsTheWayBehindItToo() {
        List<Surface> square = List.of(Surface.flat("square", Outline.rectangle(14, 14), 180, 6));
        LaidRoof mats = roof(new Wanted(square, MATS, 36));
        Patch front = layout(mats, 0).surfaces().get(0).banks().get(0).place();
        // the way is (8 - 1.905) m, and 12 - 3.2 - 6.095 - 1.905 = 0.8 m are left over
        Laying.Racks south = new Laying.Racks(30, 180, 2, 8);
        Laying.Racks north = new Laying.Racks(30, 0, 2, 8);

        assertThat(front.corner().yM()).isCloseTo(1, EXACT);
        assertThat(front.depthM()).isCloseTo(3.2, EXACT);
        assertThat(front.lengthM()).isCloseTo(12, EXACT);
        assertThat(nearest(mats.most(square, south))).isGreaterThanOrEqualTo(4.2 + 0.6 - 1e-5);
        assertThat(nearest(mats.most(square, north))).isGreaterThanOrEqualTo(4.2 + 8 - south.depthM(RULES) - 1e-5);
        assertThat(mats.most(square, north).panels()).isEqualTo(10);
        // 0.9 m farther from row to row there is no room any more
        assertThat(mats.most(square, north.withPitchM(8.9)).panels()).isZero();
        assertThat(mats.most(square, south.withPitchM(8.9)).panels()).isEqualTo(10);
    }

    private static double nearest(RoofLayout layout) {
        return layout.surfaces().get(0).banks().stream()
                .flatMap(bank -> bank.place().corners().stream())
                .mapToDouble(RoofPoint::yM)
                .min()
                .orElseThrow();
    }

    @Test
    void banksOfASurfaceAreCountedThrough() {
        LaidRoof roof = roof(
                new Wanted(HALL, MATS, 144),
                new Wanted(SLOPE, MATS, 20),
                new Wanted(HALL, MATS, 36),
                new Wanted(SLOPE, MATS, 5));

        assertThat(roof.laid())
                .extracting(laid -> laid.layout().surfaces().get(0).firstBank())
                .containsExactly(1, 1, 5, 1 + layout(roof, 1).banks());
        SurfaceLayout third = layout(roof, 2).surfaces().get(0);
        assertThat(third.number(third.banks().get(0))).isEqualTo(5);
    }

    @Test
    void collectorsAloneOnTheirSurfaceLieAsIfNothingElseWere() {
        Laying racks = new Laying.Racks(30, 180, 2, 4);
        LaidRoof roof = roof(new Wanted(SLOPE, MATS, 20), new Wanted(HALL, racks, 100), new Wanted(SLOPE, MATS, 500));

        assertThat(layout(roof, 0))
                .isEqualTo(RoofLayout.ofArea(SLOPE, RULES, MATS, 20).orElseThrow());
        assertThat(layout(roof, 1))
                .isEqualTo(RoofLayout.ofArea(HALL, RULES, racks, 100).orElseThrow());
    }

    @Test
    void onlyWhatSharesASurfaceHasASay() {
        Wanted hall = new Wanted(HALL, MATS, 36);
        Wanted slope = new Wanted(SLOPE, MATS, 20);
        Wanted both = new Wanted(List.of(HALL.get(0), SLOPE.get(0)), MATS, 30);
        Wanted nowhere = new Wanted(List.of(), MATS, 30);

        assertThat(LaidRoof.bearingOnLast(List.of(hall, slope, nowhere, hall))).containsExactly(hall, hall);
        assertThat(LaidRoof.bearingOnLast(List.of(hall, both, slope))).containsExactly(hall, both, slope);
        assertThat(LaidRoof.bearingOnLast(List.of(slope, hall))).containsExactly(hall);
        assertThat(roof(nowhere).fits()).isFalse();
    }
}
