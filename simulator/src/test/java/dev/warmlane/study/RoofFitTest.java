package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.study.MountingOption.Flat;
import dev.warmlane.study.MountingOption.Pitched;
import dev.warmlane.study.MountingOption.Racks;
import dev.warmlane.study.MountingOption.RoofSide;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Counted by hand: of a roof of 30 m by 14 m, 64 % usable, racks have 24 m by 11.2 m, mats 268.8 m². */
class RoofFitTest {

    private static final double ROUNDING = 1e-9;
    private static final Flat FLAT = new Flat("flat", Mounting.FlatOnRoof.USUAL);

    /** A row of 2 m at 30 degrees covers 1.732 m: rows at 0, 3, 6 and 9 m end at 10.73 m. */
    private static final Racks RACKS = racks(3, RoofSide.LONG);

    private static Racks racks(double pitch, RoofSide along) {
        return new Racks(
                "racks",
                new Rack(30, 180, 2, 0.3),
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                Mounting.OpenRack.USUAL_INNER_WIND,
                new RowSpacing.FixedPitch(pitch),
                along);
    }

    private static Installation built(double panelAreaM2) {
        return Demo.pool(1.8)
                .roof(Roof.builder(30, 14, 6).usableShare(0.64).build())
                .arrays(new CollectorArray(
                        "any", 100, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT, 0.05, panelAreaM2))
                .build();
    }

    private static RoofFit most(double panelAreaM2, MountingOption option) {
        return RoofFit.most(built(panelAreaM2), 48, option).orElseThrow();
    }

    @Test
    void matsFillTheUsableRoofInWholePanels() {
        assertThat(most(0, FLAT).areaM2()).isCloseTo(268.8, within(ROUNDING));
        assertThat(most(2.5, FLAT).areaM2()).isCloseTo(267.5, within(ROUNDING));
        assertThat(most(2.5, FLAT).panels()).isEqualTo(OptionalInt.of(107));
        assertThat(most(67.2, FLAT).panels()).as("just fits").isEqualTo(OptionalInt.of(4));
    }

    @Test
    void racksFillRowsInWholePanels() {
        // 2.5 m² by 2 m is 1.25 m wide, 19 in 24 m
        RoofFit fit = most(2.5, RACKS);

        assertThat(fit.racks().orElseThrow().rows()).isEqualTo(4);
        assertThat(fit.panels()).isEqualTo(OptionalInt.of(4 * 19));
        assertThat(fit.areaM2()).isCloseTo(190, within(ROUNDING));
        assertThat(fit.rowLengthM()).isCloseTo(24, within(ROUNDING));
        assertThat(most(0, RACKS).areaM2()).isCloseTo(4 * 24 * 2, within(ROUNDING));
    }

    @Test
    void rowsMayRunAlongTheShorterSide() {
        // 24 m hold rows at 0 to 21 m; 11.2 m hold 8 panels
        RoofFit fit = most(2.5, racks(3, RoofSide.SHORT));

        assertThat(fit.racks().orElseThrow().rows()).isEqualTo(8);
        assertThat(fit.panels()).isEqualTo(OptionalInt.of(8 * 8));
    }

    @Test
    void lastRowNeedsItsRunAndNoWayBehindIt() {
        double run = Math.sqrt(3);

        // five rows: four pitches and a run
        assertThat(most(0, racks((11.2 - run) / 4, RoofSide.LONG))
                        .racks()
                        .orElseThrow()
                        .rows())
                .isEqualTo(5);
        assertThat(most(0, racks((11.2 - run) / 4 + 0.001, RoofSide.LONG))
                        .racks()
                        .orElseThrow()
                        .rows())
                .isEqualTo(4);
    }

    @Test
    void givenAreaTakesAsFewRowsAsItCan() {
        RoofFit fits = RoofFit.ofArea(built(2.5), 48, RACKS, 190);
        RoofFit onePanelMore = RoofFit.ofArea(built(2.5), 48, RACKS, 192.5);

        assertThat(fits.racks().orElseThrow().rows()).isEqualTo(4);
        assertThat(fits.fits()).isTrue();
        assertThat(onePanelMore.racks().orElseThrow().rows()).isEqualTo(5);
        assertThat(onePanelMore.fits()).isFalse();
        assertThat(RoofFit.ofArea(built(0), 48, FLAT, 268.8).fits()).isTrue();
        assertThat(RoofFit.ofArea(built(0), 48, FLAT, 269).fits()).isFalse();
    }

    @Test
    void pitchedRoofHasItsOwnAreaOrTheFlatRoofs() {
        Mounting.FlushOnPitchedRoof pitched = new Mounting.FlushOnPitchedRoof(25, 180, 8, 0.005);

        assertThat(most(2.5, new Pitched("own", pitched, OptionalDouble.of(101)))
                        .areaM2())
                .isCloseTo(100, within(ROUNDING));
        assertThat(most(2.5, new Pitched("same", pitched, OptionalDouble.empty()))
                        .areaM2())
                .isCloseTo(267.5, within(ROUNDING));
    }

    @Test
    void panelWiderThanTheRowHasNoRoom() {
        assertThat(RoofFit.most(built(60), 48, RACKS)).isEmpty();
        assertThat(RoofFit.ofArea(built(60), 48, RACKS, 60).fits()).isFalse();
    }

    @Test
    void rowsThatWouldOverlapAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofFit.most(built(0), 48, racks(1.7, RoofSide.LONG)))
                .withMessageContaining("rows of \"racks\" would overlap")
                .withMessageContaining("widen the pitch");
    }
}
