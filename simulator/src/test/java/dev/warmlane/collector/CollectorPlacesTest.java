package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourSpan;
import dev.warmlane.site.Terrain;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** The first row stands as it did, the others in the new wind: to the last bit what is prepared anew. */
    @Test
    void innerWindMovesTheInnerRowsAlone() {
        Mounting.OpenRack tents = new Mounting.OpenRack(
                new RackRows(new Rack(15, 90, 2, 0.3), 4.5, 3, true), Mounting.Back.OPEN, Mounting.WindRun.CHORD, 1);
        for (Mounting.OpenRack racks : List.of(racks(3, 30).mounting().racks().orElseThrow(), tents)) {
            CollectorArray array = racks(3, 30).withMounting(racks);
            CollectorArray windy = array.withMounting(racks.withInnerWind(0.4));

            CollectorForcing moved = CollectorPlaces.of(around, array, Skylines.OPEN)
                    .withInnerWind(0.4)
                    .of(windy);

            sameBits(moved, CollectorForcing.of(around, windy), HourSpan.YEAR);
            assertThat(moved.curves().heatWm2(NOON, 22))
                    .isGreaterThan(CollectorForcing.of(around, array).curves().heatWm2(NOON, 22));
        }
    }

    /** To the last bit, whatever the balances of the first hour began with, and over New Year too. */
    @ParameterizedTest
    @ValueSource(strings = {"flat", "racks", "boarded", "low", "tents", "slope", "certificate"})
    void someHoursAreWhatTheyAreInTheYear(String kind) {
        CollectorArray array = array(kind);
        CollectorForcing year = CollectorForcing.of(around, array);
        for (HourSpan span : List.of(new HourSpan(24 * 124 + 5, 24 * 60), new HourSpan(24 * 330, 24 * 70))) {
            CollectorForcing some = CollectorForcing.of(
                    new CollectorSurroundings(
                            Demo.weather("cool-coast"), Demo.ROOF, Terrain.SUBURBAN, CollectorPhysics.USUAL, span),
                    array);

            sameBits(some, year, span);
            assertThat(some.curves().heatWm2(NOON + 24 * 60, 22)).isNaN();
            assertThat(some.covers(span)).isTrue();
            assertThat(some.covers(HourSpan.YEAR)).isFalse();
            assertThat(year.covers(span)).isTrue();
        }
    }

    private static void sameBits(CollectorForcing one, CollectorForcing other, HourSpan span) {
        for (int hour : span.rising()) {
            assertThat(one.irradianceWm2(hour)).isEqualTo(other.irradianceWm2(hour));
            assertThat(one.curves().stagnationC(hour)).isEqualTo(other.curves().stagnationC(hour));
            for (double waterC : new double[] {7, 22, 41}) {
                assertThat(one.curves().heatWm2(hour, waterC))
                        .isEqualTo(other.curves().heatWm2(hour, waterC));
            }
        }
    }

    private static CollectorArray array(String kind) {
        CollectorArray racks = racks(3, 30);
        return switch (kind) {
            case "flat" -> Demo.FLAT;
            case "racks" -> racks;
            case "boarded" ->
                racks.withMounting(racks.mounting().racks().orElseThrow().withBack(Mounting.Back.BOARDED));
            case "low" ->
                racks.withMounting(
                        new Mounting.OpenRack(2, 180, 2, 2.5, 4, 0, Mounting.Back.OPEN, Mounting.WindRun.ROOF));
            case "tents" ->
                racks.withMounting(new Mounting.OpenRack(
                        new RackRows(new Rack(15, 90, 2, 0.3), 4.5, 3, true),
                        Mounting.Back.OPEN,
                        Mounting.WindRun.CHORD,
                        0.6));
            case "slope" -> slope(100, true);
            default ->
                new CollectorArray(
                        "certificate",
                        100,
                        racks.mounting(),
                        new UnglazedForm2013(0.85, 0.02, 10, 4, 0.95)
                                .curve(new MatteBlack(), new CertificateCurve.TestStand(true, 2, 0, 20)));
        };
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
