package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.Surface;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Site;
import dev.warmlane.study.MountingOption.Flat;
import dev.warmlane.study.MountingOption.Pitched;
import dev.warmlane.study.MountingOption.Racks;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.assertj.core.util.DoubleComparator;
import org.junit.jupiter.api.Test;

/**
 * Studies on a roof that is drawn: 30 m by 14 m with its long edge to 200 degrees, a metre kept from the edges, panels of
 * 1.2 m by 3 m. What fits is counted in {@code LayoutByHandTest}: 70 mats in 7 banks, 66 panels in three rows of racks.
 */
class DrawnRoofTest {

    private static final Offset<Double> EXACT = within(1e-5);
    private static final Flat FLAT = new Flat("flat", Mounting.FlatOnRoof.USUAL);

    private static Racks racks(double pitchM, double azimuthDeg) {
        return new Racks(
                "racks",
                new Rack(30, azimuthDeg, 2, 0.3),
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                Mounting.OpenRack.USUAL_INNER_WIND,
                new RowSpacing.FixedPitch(pitchM),
                MountingOption.RoofSide.LONG);
    }

    private static Installation built(Mounting mounting, double areaM2) {
        return Demo.pool(1.8)
                .plan(new RoofPlan(
                        List.of(
                                Surface.flat("hall", Outline.rectangle(30, 14), 200, 6),
                                new Surface("slope", Outline.rectangle(12, 6), 110, 25, 6, 0, 0.5, List.of())),
                        PanelRules.usual(1.2, 3.0)))
                .arrays(new CollectorArray("any", areaM2, mounting, Absorber.USUAL_MAT, 0.05, 3.6))
                .build();
    }

    private static final Installation BUILT = built(Mounting.FlatOnRoof.USUAL, 100);

    @Test
    void theMostIsThatOfTheLayout() {
        RoofFit flat = RoofFit.most(BUILT, 48, FLAT).orElseThrow();
        assertThat(flat.areaM2()).isCloseTo(252, EXACT);
        assertThat(flat.panels()).isEqualTo(OptionalInt.of(70));
        assertThat(flat.layout().orElseThrow().banks()).isEqualTo(7);

        RoofFit rows = RoofFit.most(BUILT, 48, racks(4, 200)).orElseThrow();
        assertThat(rows.areaM2()).isCloseTo(66 * 2.4, EXACT);
        assertThat(rows.racks().orElseThrow().rows()).isEqualTo(3);
        assertThat(rows.racks().orElseThrow().pitchM()).isEqualTo(4);

        // rows that face along the roof run across it: 1 + (28 - 1.905) / 4 = 7 rows of 10 panels
        assertThat(RoofFit.most(BUILT, 48, racks(4, 110)).orElseThrow().areaM2())
                .isCloseTo(70 * 2.4, EXACT);
    }

    @Test
    void anAreaIsLaidInTheFewestBanksOrDoesNotFit() {
        RoofFit fits = RoofFit.ofArea(BUILT, 48, FLAT, 100);
        assertThat(fits.fits()).isTrue();
        assertThat(fits.areaM2()).as("what was asked for is compared").isEqualTo(100);
        // 100 / 3.6 = 28 panels
        assertThat(fits.panels()).isEqualTo(OptionalInt.of(28));
        assertThat(fits.layout().orElseThrow().banks()).isEqualTo(3);

        RoofFit tooLarge = RoofFit.ofArea(BUILT, 48, racks(4, 200), 200);
        assertThat(tooLarge.fits()).isFalse();
        assertThat(tooLarge.layout()).isEmpty();
        // the longest row has 22 panels and two ways in 27.6 m: 200 / (27.6 x 2) = 4 rows
        assertThat(tooLarge.racks().orElseThrow().rows()).isEqualTo(4);
    }

    @Test
    void rowsLeaveTheWayOfTheLayout() {
        // a row with its headers is 1.905 m deep, and 0.6 m are left
        assertThat(RoofFit.most(BUILT, 48, racks(2.4, 200))).isEmpty();
        assertThat(RoofFit.ofArea(BUILT, 48, racks(2.4, 200), 10).fits()).isFalse();
        assertThat(RoofFit.most(BUILT, 48, racks(2.51, 200))).isPresent();
        Racks spaced = racks(4, 200).withSpacing(new RowSpacing.Unshaded(12, 12, Optional.empty()));
        assertThat(RoofFit.most(BUILT, 48, spaced)
                        .orElseThrow()
                        .racks()
                        .orElseThrow()
                        .pitchM())
                .as("the sun at noon would allow less")
                .isGreaterThanOrEqualTo(2.505);
    }

    @Test
    void pitchedCollectorsLieOnTheSurfaceOfTheirSlope() {
        Pitched drawn =
                new Pitched("pitched", new Mounting.FlushOnPitchedRoof(25, 110, 6, 0.01), OptionalDouble.empty());
        Pitched elsewhere =
                new Pitched("pitched", new Mounting.FlushOnPitchedRoof(25, 290, 6, 0.01), OptionalDouble.empty());

        // 11 m by 5 m: one row of 9 panels of 3 m, or (11 + 0.6) / 3.8 = 3 rows of 4
        assertThat(RoofFit.most(BUILT, 48, drawn).orElseThrow().areaM2()).isCloseTo(12 * 3.6, EXACT);
        assertThat(RoofFit.most(BUILT, 48, elsewhere).orElseThrow().areaM2())
                .as("not drawn: as much as the flat surface")
                .isCloseTo(252, EXACT);
    }

    @Test
    void usualRacksStandSquareToTheEdges() {
        WeatherYear weather = Demo.weather("cool-coast");
        Site site = weather.site();

        assertThat(UsualMountings.of(BUILT, site))
                .filteredOn(option -> option instanceof Racks)
                .extracting(option -> ((Racks) option).azimuthDeg())
                .usingComparatorForType(new DoubleComparator(1e-9), Double.class)
                .as("three racks and tents")
                .containsExactly(200.0, 200.0, 200.0, 110.0);
    }

    /** There each slope is a surface of its own, and a gable is refused. */
    @Test
    void usualMountingsOfADrawnPitchedRoofHaveNoGable() {
        List<MountingOption> usual = UsualMountings.of(
                built(new Mounting.FlushOnPitchedRoof(25, 110, 6, 0.01), 50),
                Demo.weather("cool-coast").site());

        assertThat(usual).hasSize(6);
        assertThat(usual.get(5).name()).isEqualTo("as planned");
    }

    @Test
    void areasGrowInWholePanelsUpToWhatFits() {
        AreaStudy study = AreaStudy.of(BUILT, Demo.weather("cool-coast"), new AreaRange(50, 300, 6));

        assertThat(study.roofLimitM2().orElseThrow()).isCloseTo(252, EXACT);
        // 50, 150, 200 and 250 m² in panels of 3.6 m²; 100 m² are as described, and the last, beyond the roof, as it
        // was asked for
        assertThat(study.designs().stream().mapToDouble(AreaDesign::areaM2).toArray())
                .usingComparatorWithPrecision(1e-5)
                .containsExactly(14 * 3.6, 100, 42 * 3.6, 56 * 3.6, 69 * 3.6, 300);
        assertThat(study.designs())
                .extracting(AreaDesign::fitsRoof)
                .containsExactly(true, true, true, true, true, false);
    }

    @Test
    void arraysAreLaidAsTheyAreDescribed() {
        List<ArrayLayout> laid = ArrayLayout.of(BUILT);
        assertThat(laid).hasSize(1);
        assertThat(laid.get(0).fits()).isTrue();
        assertThat(laid.get(0).layout().panels()).isEqualTo(28);

        ArrayLayout tooLarge =
                ArrayLayout.of(built(Mounting.FlatOnRoof.USUAL, 500)).get(0);
        assertThat(tooLarge.fits()).isFalse();
        assertThat(tooLarge.layout().areaM2()).isCloseTo(252, EXACT);

        assertThat(ArrayLayout.of(BUILT.toBuilder().plan(null).build())).isEmpty();
    }
}
