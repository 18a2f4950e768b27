package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.Skylines;
import dev.warmlane.season.Demo;
import dev.warmlane.site.Terrain;
import java.util.List;
import org.junit.jupiter.api.Test;

class CollectorPlacesTest {

    private static final int NOON = 24 * 190 + 12;

    private final CollectorSurroundings around =
            new CollectorSurroundings(Demo.weather("cool-coast"), Demo.ROOF, Terrain.SUBURBAN);

    @Test
    void servesEveryNumberOfRowsAndEveryDivisionOfTheFlow() {
        CollectorArray prepared = racks(3, 30);
        CollectorArray other = racks(7, 30)
                .withSplit(new FlowSplit(List.of(new FlowSplit.Part(0.5, 0.6), new FlowSplit.Part(0.5, 1.4))));

        CollectorForcing shared =
                CollectorPlaces.of(around, prepared, Skylines.OPEN).of(other);
        CollectorForcing direct = CollectorForcing.of(around, other);

        assertThat(shared.irradianceWm2(NOON)).isCloseTo(direct.irradianceWm2(NOON), within(1e-9));
        assertThat(shared.curves().heatWm2(NOON, 22))
                .isCloseTo(direct.curves().heatWm2(NOON, 22), within(1e-9))
                .isNotCloseTo(CollectorForcing.of(around, prepared).curves().heatWm2(NOON, 22), within(0.1));
        assertThat(shared.curves().highestPlateC(NOON))
                .isCloseTo(direct.curves().highestPlateC(NOON), within(1e-9));
    }

    /** A row alone has no inner one, and other tilts, flows and models other places. */
    @Test
    void refusesWhatStandsOtherwise() {
        CollectorPlaces places = CollectorPlaces.of(around, racks(3, 30), Skylines.OPEN);

        for (CollectorArray other :
                List.of(racks(1, 30), racks(3, 31), racks(3, 30).withFlowKgSM2(0.02), Demo.FLAT)) {
            assertThatThrownBy(() -> places.of(other)).hasMessageContaining("prepare them anew");
        }
    }

    /** Half of the collectors on either slope, each as if it were alone. */
    @Test
    void gableIsTheMeanOfItsSlopes() {
        CollectorForcing both = CollectorForcing.of(around, slope(100, true));
        CollectorForcing east = CollectorForcing.of(around, slope(100, false));
        CollectorForcing west = CollectorForcing.of(around, slope(280, false));

        for (int hour : new int[] {NOON - 4, NOON, NOON + 5, NOON + 12}) {
            assertThat(both.curves().heatWm2(hour, 22))
                    .isCloseTo((east.curves().heatWm2(hour, 22) + west.curves().heatWm2(hour, 22)) / 2, within(1e-9));
            assertThat(both.irradianceWm2(hour))
                    .isCloseTo((east.irradianceWm2(hour) + west.irradianceWm2(hour)) / 2, within(1e-9));
        }
        assertThat(east.irradianceWm2(NOON - 4)).isGreaterThan(west.irradianceWm2(NOON - 4));
        assertThat(both.curves().highestPlateC(NOON - 4))
                .isEqualTo(east.curves().highestPlateC(NOON - 4));
    }

    private static CollectorArray slope(double azimuthDeg, boolean gable) {
        return new CollectorArray(
                "slope", 100, new Mounting.FlushOnPitchedRoof(25, azimuthDeg, 6, 0.005, gable), Absorber.USUAL_MAT);
    }

    private static CollectorArray racks(int rows, double tiltDeg) {
        return new CollectorArray(
                "racks", 100, new Mounting.OpenRack(tiltDeg, 180, 2, 3.5, rows, 0.3), Absorber.USUAL_MAT);
    }
}
