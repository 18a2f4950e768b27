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

    private static CollectorArray racks(int rows, double tiltDeg) {
        return new CollectorArray(
                "racks", 100, new Mounting.OpenRack(tiltDeg, 180, 2, 3.5, rows, 0.3), Absorber.USUAL_MAT);
    }
}
