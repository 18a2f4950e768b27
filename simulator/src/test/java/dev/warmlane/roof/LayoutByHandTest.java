package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Layouts that can be counted on paper; each count stands beside its check. */
class LayoutByHandTest {

    /** Coordinates are whole micrometres. */
    private static final Offset<Double> EXACT = within(1e-5);

    private static final Laying MATS = new Laying.Mats();

    /** Panels of 1.2 m by 3 m with 0.1 m of headers at both ends, ten to a bank, 0.6 m between banks. */
    private static final PanelRules RULES = PanelRules.usual(1.2, 3.0);

    /** 30 m by 14 m, its long edge to the south; 28 m by 12 m are left a metre from the edges. */
    private static final Surface HALL = Surface.flat("hall", Outline.rectangle(30, 14), 180, 6);

    private static Surface withObstacles(Obstacle... obstacles) {
        return HALL.withObstacles(List.of(obstacles));
    }

    @Test
    void rowsAcrossARectangle() {
        RoofLayout most = RoofLayout.most(List.of(HALL), RULES, MATS);

        // rows along the 28 m: (12 + 0.6) / (3.2 + 0.6) = 3 rows of (28 + 0.6) / 12.6 = 2 banks and 2 panels: 66
        // rows along the 12 m: (28 + 0.6) / 3.8 = 7 rows of one bank of 10 panels: 70
        assertThat(most.panels()).isEqualTo(70);
        assertThat(most.banks()).isEqualTo(7);
        assertThat(most.rows()).isEqualTo(7);
        assertThat(most.areaM2()).isCloseTo(70 * 3.6, EXACT);
        assertThat(most.headersM()).isCloseTo(7 * 2 * 12, EXACT);
        // two pipes over six distances from row to row
        assertThat(most.pipesM()).isCloseTo(2 * 6 * 3.8, EXACT);
        assertThat(most.roofAreaM2()).isCloseTo(420, EXACT);
        // 5 kg/m² of collector on 252 m² of 420 m²
        assertThat(most.weightKg(5)).isCloseTo(1260, EXACT);
        assertThat(most.weightPerRoofKgM2(5)).isCloseTo(3, EXACT);
        assertThat(most.waterL(3.4)).isCloseTo(856.8, EXACT);
        assertThat(most.pieces())
                .containsExactly(
                        new Piece(Piece.Kind.PANEL, 70, 3, 1.2),
                        new Piece(Piece.Kind.HEADER_JOINT, 2 * 7 * 9, 0, 0),
                        new Piece(Piece.Kind.HEADER_CAP, 14, 0, 0),
                        new Piece(Piece.Kind.CONNECTION, 14, 0, 0),
                        new Piece(Piece.Kind.PIPE, 1, most.pipesM(), 0));
    }

    @Test
    void longPanelsAndShortOnesTogether() {
        PanelRules both = PanelRules.usual(1.2, 3.0, 4.0);

        RoofLayout most = RoofLayout.most(List.of(HALL), both, MATS);

        // along the 12 m, 10 panels to a row: n rows of 3.2 m and m rows of 4.2 m, a walkway less than rows, in 28 m
        // 3.8 n + 4.8 m <= 28.6: m = 5, n = 1 takes 27.8 and has 23 m of panel; m = 4, n = 2 takes 26.8 and has 22 m
        assertThat(most.areaM2()).isCloseTo(23 * 12, EXACT);
        assertThat(most.pieces().subList(0, 2))
                .containsExactly(new Piece(Piece.Kind.PANEL, 50, 4, 1.2), new Piece(Piece.Kind.PANEL, 10, 3, 1.2));
    }

    @Test
    void panelsCutToLength() {
        PanelRules cut = RULES.withLengths(new PanelRules.Cut(2, 4));

        RoofLayout most = RoofLayout.most(List.of(HALL), cut, MATS);

        // along the 12 m: at least (28 + 0.6) / (4.2 + 0.6) = 6 rows, which leave 28 - 5 x 0.6 - 6 x 0.2 = 23.8 m of
        // panel, 3.966 m each, cut to 3.96 m; along the 28 m 22 panels by 12 - 2 x 0.6 - 3 x 0.2 = 10.2 m, which is
        // less
        assertThat(most.areaM2()).isCloseTo(12 * 6 * 3.96, EXACT);
        assertThat(most.banks()).isEqualTo(6);
    }

    @Test
    void headersAtOneEndAlone() {
        PanelRules one =
                new PanelRules(1.2, new PanelRules.Fixed(List.of(3.0)), PanelRules.HeaderEnds.ONE, 0.2, 10, 0.6, 0);

        RoofLayout most = RoofLayout.most(List.of(HALL), one, MATS);

        // 3.2 m a row as with 0.1 m at both ends; both headers of a bank are at one end
        assertThat(most.panels()).isEqualTo(70);
        assertThat(most.headersM()).isCloseTo(7 * 2 * 12, EXACT);
        Bank bank = most.surfaces().get(0).banks().get(0);
        assertThat(bank.headerPatches()).hasSize(1);
        assertThat(bank.headerPatches().get(0).depthM()).isCloseTo(0.2, EXACT);
        assertThat(bank.panelPatches()).hasSize(10);
        assertThat(bank.panelPatches().get(9).areaM2()).isCloseTo(3.6, EXACT);
    }

    @Test
    void banksOfAGapAreAsEvenAsCanBe() {
        // a strip of 15.6 m: a bank of 10 panels, a walkway, and 2 panels, made 6 and 6
        Surface strip = Surface.flat("strip", Outline.rectangle(17.2, 5.2), 180, 6);

        RoofLayout most = RoofLayout.most(List.of(strip), RULES, MATS);

        assertThat(most.surfaces().get(0).banks()).extracting(Bank::panels).containsExactly(6, 6);
    }

    @Test
    void anObstacleTakesItsClearanceToo() {
        // 1 m by 1 m in the middle of the roof with 0.5 m around it: 2 m by 2 m from 14 to 16 and 6 to 8
        Obstacle light = new Obstacle("light", Obstacle.Block.around(new RoofPoint(15, 7), 1, 1), 0.3, 0.5);

        RoofLayout most = RoofLayout.most(List.of(withObstacles(light)), RULES, MATS);

        // rows along the 12 m: 13 m on either side of it take (13 + 0.6) / 3.8 = 3 rows each of 10 panels, and one row
        // beside it, in the 28 - 6 x 3.8 = 5.2 m that are left, has 5 / 1.2 = 4 panels above and 4 below
        assertThat(most.panels()).isEqualTo(68);
        assertThat(most.banks()).isEqualTo(8);
    }

    @Test
    void aMatIsSplitAroundAVentWhereItsHeadersAreClear() {
        Obstacle vent = new Obstacle("vent", new Obstacle.Disc(new RoofPoint(15, 7), 0.2), 0.4, 0.1);
        PanelRules splitting = new PanelRules(1.2, RULES.lengths(), RULES.headerEnds(), 0.1, 10, 0.6, 0.2);

        // 68 as around a larger obstacle, but 5.8 m above and below have room for 4 panels only
        assertThat(RoofLayout.most(List.of(withObstacles(vent)), RULES, MATS).panels())
                .isEqualTo(68);
        assertThat(RoofLayout.most(List.of(withObstacles(vent)), splitting, MATS)
                        .panels())
                .isEqualTo(70);
    }

    @Test
    void racksInRowsAtTheirPitch() {
        Laying.Racks racks = new Laying.Racks(30, 180, 2, 4);

        RoofLayout most = RoofLayout.most(List.of(HALL), RULES, racks);

        // a row is (2 + 0.2) cos 30 = 1.905 m deep: 1 + (12 - 1.905) / 4 = 3 rows of 22 panels of 1.2 m by 2 m
        assertThat(racks.depthM(RULES)).isCloseTo(1.90526, within(1e-5));
        assertThat(most.rows()).isEqualTo(3);
        assertThat(most.panels()).isEqualTo(66);
        assertThat(most.areaM2()).isCloseTo(66 * 2.4, EXACT);
        // 22 panels, made 8, 7 and 7, and two walkways between them
        assertThat(most.surfaces().get(0).longestRowM()).isCloseTo(22 * 1.2 + 2 * 0.6, EXACT);
        // two pipes over two distances from row to row and along three rows to their last bank, behind 15 panels
        assertThat(most.pipesM()).isCloseTo(2 * (2 * 4 + 3 * (15 * 1.2 + 2 * 0.6)), EXACT);
    }

    @Test
    void tentsOfTwoRacksBackToBack() {
        Laying.Racks tents = new Laying.Racks(15, 90, 2, 5, true);

        RoofLayout most = RoofLayout.most(List.of(HALL), RULES, tents);

        // a tent is 2 (2 + 0.2) cos 15 = 4.25 m deep: 1 + (28 - 4.25) / 5 = 5 tents, twice 12 / 1.2 = 10 panels each
        assertThat(tents.depthM(RULES)).isCloseTo(4.25007, within(1e-5));
        assertThat(most.rowsDeep()).isEqualTo(5);
        assertThat(most.rows()).isEqualTo(10);
        assertThat(most.panels()).isEqualTo(100);
        assertThat(most.banks()).isEqualTo(10);
        // 7 panels ask for four to a side in one bank each
        RoofLayout some =
                RoofLayout.ofArea(List.of(HALL), RULES, tents, 7 * 2.4).orElseThrow();
        assertThat(some.panels()).isEqualTo(8);
        assertThat(some.banks()).isEqualTo(2);
    }

    @Test
    void racksFaceTheCompassWhateverTheRoofDoes() {
        // the long edge of the roof faces west: rows that face south run along the short side, 12 m of 14 m
        Surface west = Surface.flat("hall", Outline.rectangle(30, 14), 270, 6);
        Laying.Racks racks = new Laying.Racks(30, 180, 2, 4);

        RoofLayout most = RoofLayout.most(List.of(west), RULES, racks);

        // 1 + (28 - 1.905) / 4 = 7 rows of 10 panels
        assertThat(most.rows()).isEqualTo(7);
        assertThat(most.panels()).isEqualTo(70);
        assertThat(west.squareFacingDeg(180)).isCloseTo(180, within(1e-9));
        assertThat(Surface.flat("hall", Outline.rectangle(30, 14), 200, 6).squareFacingDeg(180))
                .isCloseTo(200, within(1e-9));
        assertThat(Surface.flat("hall", Outline.rectangle(14, 30), 100, 6).squareFacingDeg(180))
                .isCloseTo(190, within(1e-9));
    }

    @Test
    void theFewestBanksForAnArea() {
        // 40 panels of 3.6 m²: four full banks
        RoofLayout four = RoofLayout.ofArea(List.of(HALL), RULES, MATS, 144).orElseThrow();
        assertThat(four.banks()).isEqualTo(4);
        assertThat(four.panels()).isEqualTo(40);

        // a little more takes a fifth bank, of one panel
        RoofLayout five = RoofLayout.ofArea(List.of(HALL), RULES, MATS, 145).orElseThrow();
        assertThat(five.banks()).isEqualTo(5);
        assertThat(five.panels()).isEqualTo(41);

        // with panels of 4 m too 144 m² are three banks of 48 m²
        RoofLayout three = RoofLayout.ofArea(List.of(HALL), PanelRules.usual(1.2, 3.0, 4.0), MATS, 144)
                .orElseThrow();
        assertThat(three.banks()).isEqualTo(3);

        assertThat(RoofLayout.ofArea(List.of(HALL), RULES, MATS, 252)).isPresent();
        assertThat(RoofLayout.ofArea(List.of(HALL), RULES, MATS, 252.1)).isEmpty();
    }

    @Test
    void aWingIsUsedToo() {
        // an L: 30 m by 14 m and a wing of 10 m by 10 m on top of its left end
        Outline angle = new Outline(List.of(
                new RoofPoint(0, 0),
                new RoofPoint(30, 0),
                new RoofPoint(30, 14),
                new RoofPoint(10, 14),
                new RoofPoint(10, 24),
                new RoofPoint(0, 24)));
        Surface roof = Surface.flat("angle", angle, 180, 6);

        RoofLayout most = RoofLayout.most(List.of(roof), RULES, MATS);

        assertThat(angle.areaM2()).isCloseTo(520, EXACT);
        // rows along the short side: of (28 + 0.6) / 3.8 = 7 rows the first two lie within the 8 m of the wing, where
        // they are 22 m long and have two banks of 10, less a walkway: 17 panels; the others have 10
        assertThat(most.panels()).isGreaterThanOrEqualTo(2 * 17 + 5 * 10);
    }

    @Test
    void nothingFitsOnARoofThatIsAllEdge() {
        Surface narrow = Surface.flat("narrow", Outline.rectangle(30, 2), 180, 6);

        RoofLayout most = RoofLayout.most(List.of(narrow), RULES, MATS);

        assertThat(most.panels()).isZero();
        assertThat(most.pieces()).isEmpty();
        assertThat(most.pipesM()).isZero();
        assertThat(RoofLayout.ofArea(List.of(narrow), RULES, MATS, 1)).isEmpty();
    }
}
