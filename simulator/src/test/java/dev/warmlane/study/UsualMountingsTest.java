package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Site;
import dev.warmlane.study.MountingOption.Pitched;
import dev.warmlane.study.MountingOption.Racks;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class UsualMountingsTest {

    private static final Site NORTH = Demo.weather("cool-coast").site();
    private static final Site SOUTH = Demo.weather("southern-temperate").site();
    private static final Mounting.FlushOnPitchedRoof SLOPE = new Mounting.FlushOnPitchedRoof(20, 200, 8, 0.005);

    private static List<MountingOption> of(Mounting own, Site site) {
        return UsualMountings.of(built(own), site);
    }

    private static Installation built(Mounting own) {
        return Demo.pool(1.8).arrays(Demo.FLAT.withMounting(own)).build();
    }

    @Test
    void racksFaceTheEquatorAndTentsEastAndWest() {
        for (Site site : List.of(NORTH, SOUTH)) {
            List<MountingOption> usual = of(Mounting.FlatOnRoof.USUAL, site);

            assertThat(usual)
                    .extracting(MountingOption::name)
                    .containsExactly("flat", "15° racks", "30° racks", "45° racks", "15° tents");
            for (int i = 1; i < 5; i++) {
                Racks racks = (Racks) usual.get(i);
                assertThat(racks.tents()).isEqualTo(i == 4);
                assertThat(racks.azimuthDeg()).isEqualTo(i == 4 ? 90 : site.equals(SOUTH) ? 0 : 180);
            }
            assertThat(((Racks) usual.get(4)).rack().turned().azimuthDeg()).isEqualTo(270);
        }
    }

    @Test
    void racksAndTentsAreBuiltLikeTheFirstOnesOfTheInstallation() {
        Mounting.OpenRack own =
                new Mounting.OpenRack(10, 170, 1.4, 2, 3, 0.15, Mounting.Back.BOARDED, Mounting.WindRun.CHORD);

        assertThat(of(own, NORTH).subList(1, 5)).allSatisfy(option -> {
            Racks racks = (Racks) option;
            assertThat(racks.chordM()).isEqualTo(1.4);
            assertThat(racks.clearanceM()).isEqualTo(0.15);
            assertThat(racks.back()).isEqualTo(Mounting.Back.BOARDED);
        });
    }

    @Test
    void installationsOwnIsAmongThem() {
        Mounting.OpenRack own = new Mounting.OpenRack(10, 170, 1.4, 2, 3, 0.15);
        Racks described = new Racks(
                "as planned",
                new Rack(10, 170, 1.4, 0.15),
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                Mounting.OpenRack.USUAL_INNER_WIND,
                new RowSpacing.FixedPitch(2),
                MountingOption.RoofSide.LONG);
        Mounting.OpenRack tents = new Mounting.OpenRack(
                new RackRows(new Rack(10, 170, 1.4, 0.15), 3, 3, true), Mounting.Back.OPEN, Mounting.WindRun.CHORD, 1);

        assertThat(of(own, NORTH)).hasSize(6).last().isEqualTo(described);
        assertThat(of(tents, NORTH))
                .hasSize(6)
                .last()
                .isEqualTo(described.withTents(true).withSpacing(new RowSpacing.FixedPitch(3)));
    }

    @Test
    void aPitchedRoofIsComparedWithBothItsSlopes() {
        assertThat(of(SLOPE, NORTH).subList(5, 7))
                .containsExactly(pitched("as planned", SLOPE), pitched("both slopes", SLOPE.onBothSlopes()));
        assertThat(SLOPE.onBothSlopes().otherAzimuthDeg()).isEqualTo(20);
    }

    @Test
    void aGableIsComparedWithItsSlopeNearerToTheEquator() {
        Mounting.FlushOnPitchedRoof gable = SLOPE.onBothSlopes();

        assertThat(of(gable, NORTH).subList(5, 7))
                .containsExactly(pitched("as planned", gable), pitched("one slope", SLOPE));
        assertThat(of(gable, SOUTH).get(6))
                .isEqualTo(pitched("one slope", new Mounting.FlushOnPitchedRoof(20, 20, 8, 0.005)));
    }

    private static Pitched pitched(String name, Mounting.FlushOnPitchedRoof roof) {
        return new Pitched(name, roof, OptionalDouble.empty());
    }
}
