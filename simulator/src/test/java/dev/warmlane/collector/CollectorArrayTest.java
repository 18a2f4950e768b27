package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CollectorArray.Filling;
import dev.warmlane.collector.Mounting.FlatOnRoof;
import dev.warmlane.collector.Mounting.FlushOnPitchedRoof;
import dev.warmlane.collector.Mounting.OpenRack;
import org.junit.jupiter.api.Test;

/** What an array takes and weighs, by hand. */
class CollectorArrayTest {

    /** 3 rows of 2 m chord at 30 degrees, 4 m apart: 120 m² are 20 m long and 2·4 + 2·cos 30° deep. */
    private static final OpenRack ROWS =
            OpenRack.builder(30, 195, 2).rows(3, 4).clearanceM(0.3).build();

    @Test
    void takesItsAreaOfTheRoofAndRacksTheirWaysToo() {
        assertThat(array(FlatOnRoof.USUAL).flatRoofTakenM2()).isEqualTo(120);
        assertThat(array(ROWS).flatRoofTakenM2()).isCloseTo(20 * (8 + 2 * Math.sqrt(0.75)), within(1e-9));
        assertThat(array(new FlushOnPitchedRoof(25, 200, 6, 0.005)).flatRoofTakenM2())
                .isZero();
    }

    @Test
    void weighsItsWaterAndItself() {
        assertThat(new Filling(3.4, 5).wetKgM2()).isEqualTo(8.4);
        assertThat(Filling.USUAL.wetKgM2()).isEqualTo(3.4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Filling(3.4, 0.01))
                .withMessageContaining("dry weight");
    }

    @Test
    void rowsKnowHowTheyStand() {
        assertThat(ROWS.racks()).containsSame(ROWS);
        assertThat(FlatOnRoof.USUAL.racks()).isEmpty();
        assertThat(ROWS.azimuthDeg()).isEqualTo(195);
        assertThat(ROWS.clearanceM()).isEqualTo(0.3);
    }

    /** Rows stand at most 40 chords apart; one rack alone may have any distance to where no other is. */
    @Test
    void rowsTooFarApartAreArraysOfTheirOwn() {
        assertThat(OpenRack.builder(30, 195, 2).rows(3, 80).build().pitchM()).isEqualTo(80);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenRack.builder(30, 195, 2).rows(3, 80.1).build())
                .withMessageContaining("pitch");
        assertThat(OpenRack.builder(30, 195, 2).rows(1, 500).build().pitchM()).isEqualTo(500);
    }

    private static CollectorArray array(Mounting mounting) {
        return new CollectorArray("a", 120, mounting, Absorber.USUAL_MAT);
    }
}
