package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.StandingOnRoof;
import dev.warmlane.roof.Surface;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.ArraySky;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.site.Horizon;
import dev.warmlane.study.WaterCircuit.BankFlow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Arrays that share the roof of {@link DrawnRoofTest}: 70 panels of 3.6 m² lie on it where nothing else does. */
class SharedRoofTest {

    private static final Offset<Double> EXACT = within(1e-5);
    private static final double PANEL_M2 = 3.6;
    private static final Surface HALL = Surface.flat("hall", Outline.rectangle(30, 14), 200, 6);
    private static final Surface SLOPE = new Surface("slope", Outline.rectangle(12, 6), 110, 25, 6, 0, 0.5, List.of());

    private static CollectorArray mats(String name, double areaM2) {
        return new CollectorArray(name, areaM2, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT, 0.05, PANEL_M2);
    }

    private static CollectorArray racks(double areaM2) {
        return mats("racks", areaM2)
                .withMounting(new Mounting.OpenRack(
                        new RackRows(new Rack(30, 200, 2, 0.3), 4, 1),
                        Mounting.Back.OPEN,
                        Mounting.WindRun.CHORD,
                        Mounting.OpenRack.USUAL_INNER_WIND));
    }

    private static CollectorArray onSlope(double areaM2) {
        return mats("slope", areaM2).withMounting(new Mounting.FlushOnPitchedRoof(25, 110, 6, 0.01));
    }

    private static Installation built(Surface hall, CollectorArray... arrays) {
        return Demo.pool(1.8)
                .plan(new RoofPlan(List.of(hall, SLOPE), PanelRules.usual(1.2, 3.0)))
                .arrays(arrays)
                .build();
    }

    /** Those of 144 m² leave room for 26 panels, as counted in {@code LaidRoofTest}: 40 + 26 panels are the limit of 40 to 26. */
    @Test
    void theLimitIsWhatTheyHoldTogether() {
        Installation built = built(HALL, mats("first", 20 * PANEL_M2), mats("second", 13 * PANEL_M2));

        double limit = AreaStudy.roofLimitM2(built).orElseThrow();

        assertThat(limit).isCloseTo(66 * PANEL_M2, within(0.001 * 66 * PANEL_M2));
        assertThat(AreaStudy.roofLimitM2(built(HALL, mats("alone", 50))).orElseThrow())
                .isCloseTo(70 * PANEL_M2, EXACT);
    }

    @Test
    void theLimitIsThatAtWhichAllStillFit() {
        for (Installation built : List.of(
                built(HALL, mats("first", 100), mats("second", 30)),
                built(HALL, racks(40), mats("second", 60)),
                built(HALL, mats("first", 60), racks(40), mats("third", 20)),
                built(HALL, mats("first", 60), onSlope(12), mats("third", 20)))) {
            double limit = AreaStudy.roofLimitM2(built).orElseThrow();

            assertThat(ArrayLayout.of(scaled(built, limit))).allMatch(ArrayLayout::fits);
            assertThat(ArrayLayout.of(scaled(built, 1.002 * limit))).anyMatch(layout -> !layout.fits());
        }
    }

    private static Installation scaled(Installation built, double toM2) {
        double factor = toM2 / built.collectorAreaM2();
        return built.toBuilder()
                .arrays(built.arrays().stream()
                        .map(array -> array.withAreaM2(factor * array.areaM2()))
                        .toList())
                .build();
    }

    /** What is beyond the limit does not fit; what is within it comes in panels as the others leave them. */
    @Test
    void areasGrowTogether() {
        Installation built = built(HALL, mats("first", 20 * PANEL_M2), mats("second", 13 * PANEL_M2));

        AreaStudy study =
                AreaStudy.of(built, Demo.weather("cool-coast"), new AreaRange(33 * PANEL_M2, 99 * PANEL_M2, 3));

        assertThat(study.roofLimitM2().orElseThrow()).isCloseTo(66 * PANEL_M2, EXACT);
        assertThat(study.designs()).extracting(AreaDesign::fitsRoof).containsExactly(true, true, false);
        assertThat(study.designs().get(1).built().arrays().stream()
                        .mapToDouble(CollectorArray::areaM2)
                        .toArray())
                .containsExactly(new double[] {40 * PANEL_M2, 26 * PANEL_M2}, EXACT);
    }

    /** 29 panels of the second would be 104.4 m² on an empty roof; beside the first there is room for 26. */
    @Test
    void anAreaBeyondWhatIsLeftStaysAsItIsAskedFor() {
        DrawnLimits limits = DrawnLimits.of(built(HALL, mats("first", 144), mats("second", 50)))
                .orElseThrow();

        assertThat(limits.nearestM2(new double[] {144, 92})).containsExactly(new double[] {144, 93.6}, EXACT);
        assertThat(limits.nearestM2(new double[] {144, 104})).containsExactly(new double[] {144, 104}, EXACT);
        assertThat(limits.nextM2(new double[] {140.4, 50.4})).containsExactly(new double[] {144, 54}, EXACT);
        assertThat(limits.fits(built(HALL, mats("first", 144), mats("second", 93.6))))
                .isTrue();
        assertThat(limits.fits(built(HALL, mats("first", 144), mats("second", 94))))
                .isFalse();
        assertThat(limits.fits(built(HALL, mats("first", 260), mats("second", 1))))
                .isFalse();
    }

    @Test
    void whoSharesIsKnown() {
        assertThat(ArrayLayout.share(built(HALL, mats("first", 20), racks(20)))).isTrue();
        assertThat(ArrayLayout.share(built(HALL, mats("first", 20), onSlope(20))))
                .isFalse();
        assertThat(ArrayLayout.share(built(HALL, mats("first", 20)))).isFalse();
        assertThat(ArrayLayout.share(built(HALL, mats("first", 20), mats("second", 20)).toBuilder()
                        .plan(null)
                        .build()))
                .isFalse();
    }

    /** A tower stands at one end of the hall: each array has the shade of the place that it has beside the others. */
    @Test
    void eachHasTheShadeOfItsOwnPlace() {
        Obstacle tower = new Obstacle("tower", Obstacle.Block.around(new RoofPoint(27, 7), 3, 6), 5, 0.5);
        Surface hall = HALL.withObstacles(List.of(tower));
        Installation built = built(hall, mats("first", 100), onSlope(20), mats("second", 60));

        List<Skylines> seen =
                ArraySky.of(built).stream().map(ArraySky::skylines).toList();

        List<ArrayLayout> laid = ArrayLayout.of(built);
        assertThat(darkness(seen.get(0)))
                .isEqualTo(darkness(skylines(laid.get(0).layout())));
        assertThat(seen.get(1).isOpen()).isTrue();
        assertThat(darkness(seen.get(2)))
                .isEqualTo(darkness(skylines(laid.get(2).layout())));
        assertThat(darkness(seen.get(2)))
                .as("as if the first were not there")
                .isNotEqualTo(darkness(
                        ArraySky.of(built(hall, mats("second", 60))).get(0).skylines()));
    }

    private static Skylines skylines(RoofLayout layout) {
        return StandingOnRoof.skylines(layout, 0, Horizon.LEVEL);
    }

    /** Height below which half of the area is dark, in twelve directions. */
    private static List<Double> darkness(Skylines skylines) {
        return List.of(0.0, 30.0, 60.0, 90.0, 120.0, 150.0, 180.0, 210.0, 240.0, 270.0, 300.0, 330.0).stream()
                .map(direction -> skylines.darkBelowDeg(direction, 0.5))
                .toList();
    }

    /** Two that are alike in all but their place are prepared each for its own. */
    @Test
    void sharedForcingTellsTheirPlacesApart() {
        Obstacle tower = new Obstacle("tower", Obstacle.Block.around(new RoofPoint(27, 7), 3, 6), 5, 0.5);
        Installation built = built(HALL.withObstacles(List.of(tower)), mats("same", 60), mats("same", 60));
        SharedForcing shared = new SharedForcing(Demo.weather("cool-coast"));

        SeasonForcing forcing = shared.of(built);

        assertThat(ArraySky.of(built).get(0)).isNotEqualTo(ArraySky.of(built).get(1));
        assertThat(shared.holds().collectors()).isEqualTo(2);
        assertThat(forcing.collectors().get(0)).isNotSameAs(forcing.collectors().get(1));
    }

    @Test
    void eachHasItsOwnWaterAndEveryBankItsOwnNumber() throws IOException {
        Installation drawn = ScenarioReader.read(Path.of("..", "examples", "scenarios", "drawn-roof.toml"))
                .installation();
        CollectorArray any = drawn.arrays().get(0).withAreaM2(60);
        Installation built = drawn.toBuilder().arrays(any, any).build();

        Installation applied = WaterCircuit.applied(built);

        List<BankFlow> banks = WaterCircuit.of(built).orElseThrow().banks();
        assertThat(banks).extracting(BankFlow::number).doesNotHaveDuplicates().startsWith(1);
        List<ArrayLayout> laid = ArrayLayout.of(built);
        assertThat(laid.get(0).layout()).isNotEqualTo(laid.get(1).layout());
        for (int i = 0; i < 2; i++) {
            assertThat(applied.arrays().get(i).split().parts())
                    .as("array %d", i)
                    .hasSize(laid.get(i).layout().panels());
        }
        assertThat(applied.arrays().get(0).split())
                .isNotEqualTo(applied.arrays().get(1).split());
    }

    @Test
    void aLaterArrayWithoutAnyRoomHasNoBanksAndStillASeason() throws IOException {
        Installation drawn = ScenarioReader.read(Path.of("..", "examples", "scenarios", "drawn-roof.toml"))
                .installation();
        CollectorArray all = drawn.arrays().get(0);
        Installation built = drawn.toBuilder()
                .arrays(all, all.withAreaM2(60).withMounting(racks(60).mounting()))
                .build();

        List<ArrayLayout> laid = ArrayLayout.of(built);

        assertThat(laid).extracting(ArrayLayout::fits).containsExactly(true, false);
        assertThat(AreaStudy.roofLimitM2(built).orElseThrow()).isLessThan(built.collectorAreaM2());
        assertThat(WaterCircuit.of(built).orElseThrow().headM()).isPositive().isFinite();
        assertThat(WaterCircuit.applied(built).arrays()).hasSize(2);
        assertThat(Optional.of(new SharedForcing(Demo.weather("cool-coast")).of(built)))
                .isPresent();
    }
}
