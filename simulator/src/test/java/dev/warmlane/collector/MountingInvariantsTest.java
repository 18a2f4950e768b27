package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold between mountings whatever the numbers are. */
class MountingInvariantsTest {

    /** Two ways to the same numbers: what is left is the iteration of the balance, settled to 1e-3 of U_L. */
    private static final double SAME_WM2 = 0.05;

    /** Forty chords apart, rows still hide a little of the sky and each other's roof; this is what the library promises. */
    private static final double FAR_APART = 0.01;

    private static final Roof ROOF = Demo.ROOF;
    private static final Mounting.OpenRack RACK = new Mounting.OpenRack(30, 180, 2, 4, 1, 0.3);

    private final WeatherYear weather = Demo.weather("warm-inland");

    @Test
    void aBoardedRackLaidOnTheRoofIsTheFlatMatOverAPerfectRoof() {
        CollectorSurroundings around = around(ROOF.toBuilder().uValueWm2K(0).build());
        HourlyHeat flat = heat(around, Mounting.FlatOnRoof.USUAL);
        HourlyHeat laid = heat(
                around, new Mounting.OpenRack(0, 180, 2, 2, 1, 0, Mounting.Back.boarded(0), Mounting.WindRun.ROOF));
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 5) {
            for (double inlet = 15; inlet <= 35; inlet += 10) {
                assertThat(laid.heatWm2(hour, inlet)).isCloseTo(flat.heatWm2(hour, inlet), within(SAME_WM2));
            }
            assertThat(laid.stagnationC(hour)).isCloseTo(flat.stagnationC(hour), within(0.01));
        }
    }

    @Test
    void rowsFarApartGiveWhatOneRowGives() {
        CollectorSurroundings around = around(ROOF);
        CollectorArray one = array(RACK);
        CollectorArray ten = array(new Mounting.OpenRack(30, 180, 2, 80, 10, 0.3));
        assertThat(yearKwh(around, ten, 26) / yearKwh(around, one, 26)).isCloseTo(1, within(FAR_APART));
    }

    @Test
    void aPerfectRoofLeavesNoTraceOfRoomOrGapInTheFlatMat() {
        Roof perfect = ROOF.toBuilder().uValueWm2K(0).build();
        HourlyHeat one = heat(around(perfect), new Mounting.FlatOnRoof(0.001));
        HourlyHeat other =
                heat(around(perfect.toBuilder().roomTemperatureC(-20).build()), new Mounting.FlatOnRoof(0.1));
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
            assertThat(one.heatWm2(hour, 26)).isEqualTo(other.heatWm2(hour, 26));
        }
    }

    @Test
    void aRoofThatLeaksToACoolerRoomCostsHeat() {
        double before = Double.MAX_VALUE;
        for (double uValue : new double[] {0, 0.25, 0.5, 2}) {
            Roof roof = ROOF.toBuilder().uValueWm2K(uValue).roomTemperatureC(20).build();
            double heat = yearKwh(around(roof), array(Mounting.FlatOnRoof.USUAL), 28);
            assertThat(heat).isLessThan(before);
            before = heat;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"flat", "open rack", "boarded rack", "pitched"})
    void moreWindNeverHelpsAPlateWarmerThanTheAir(String kind) {
        double[] ratios = {0.1, 0.4, 0.7, 1, 1.5, 2};
        HourlyHeat[] heats = new HourlyHeat[ratios.length];
        for (int i = 0; i < ratios.length; i++) {
            heats[i] = heat(around(ROOF.toBuilder().windSpeedRatio(ratios[i]).build()), mounting(kind));
        }
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 3) {
            double inlet = Math.max(26, weather.airTemperatureC(hour) + 1);
            for (int i = 1; i < ratios.length; i++) {
                double windier = heats[i].heatWm2(hour, inlet);
                if (windier > 0) {
                    assertThat(windier)
                            .as(HourOfYear.label(hour))
                            .isLessThanOrEqualTo(heats[i - 1].heatWm2(hour, inlet) + SAME_WM2);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-15, -1, 0.1, 5, 30})
    void everyFilmRisesWithTheWind(double differenceK) {
        CollectorSurroundings calm = around(ROOF.toBuilder().windSpeedRatio(0.5).build());
        CollectorSurroundings windy = around(ROOF);
        for (boolean up : new boolean[] {true, false}) {
            assertRises(tilted(calm, up), tilted(windy, up), differenceK);
        }
        assertRises(calm.filmOfMat(1.13), windy.filmOfMat(1.13), differenceK);
    }

    private void assertRises(FaceFilm calm, FaceFilm windy, double differenceK) {
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 3) {
            // below a tenth of a metre per second the floor under the wind holds both
            if (weather.windSpeedMs(hour) > 0.2) {
                assertThat(windy.coefficient(hour, differenceK)).isGreaterThan(calm.coefficient(hour, differenceK));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"flat", "open rack", "boarded rack", "pitched"})
    void everythingAPlateTakesInIsLostOrDelivered(String kind) {
        CollectorSurroundings around = around(ROOF);
        Exposure exposure =
                CollectorForcing.parts(around, array(mounting(kind))).get(0).exposure();
        PlateBalance plate = new PlateBalance(exposure, Absorber.USUAL_MAT, around.air(), 0.05);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 11) {
            double heat = plate.heatWm2(hour, 27);
            PlateFlows flows = new PlateFlows();
            plate.addFlows(hour, 27, 1, flows);
            double left = plate.absorbedWm2(hour) - plate.lossWm2(hour, flows.plateC());
            // the balance is settled to 1e-3 of U_L, which the heat feels by a tenth
            double settled = 0.02 + 2e-3 * Math.abs(heat);
            assertThat(left).isCloseTo(heat, within(settled));
            double kept = 0;
            for (PlateFlow flow : PlateFlow.values()) {
                kept += flow.side() == PlateFlow.Side.TAKEN_IN ? flows.wm2(flow) : 0;
                kept -= flow.side() == PlateFlow.Side.LOST ? flows.wm2(flow) : 0;
            }
            assertThat(kept).as("sum of the kinds").isCloseTo(left, within(1e-9));
            assertThat(flows.wm2(PlateFlow.USEFUL)).isCloseTo(heat, within(settled));
            double dry = plate.stagnationC(hour);
            assertThat(plate.absorbedWm2(hour)).isCloseTo(plate.dryLossWm2(hour, dry), within(0.01));
        }
    }

    @Test
    void inAnInteriorRowTheFacesSeeAsMuchAsAHalfSpace() {
        CollectorSurroundings around = around(ROOF);
        Exposures exposures = new Exposures(around, Absorber.USUAL_MAT.incidence(), 1.13);
        Mounting.OpenRack rows = new Mounting.OpenRack(30, 180, 2, 3, 5, 0.3);
        Exposure interior = exposures.rack(rows, RowPlace.INTERIOR, HeldPlates.AT_30);
        Exposure first = exposures.rack(rows, RowPlace.FIRST, HeldPlates.AT_30);
        double lessLight = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            lessLight += first.modifiedFront[hour] - interior.modifiedFront[hour];
            // long-wave lies between that of the coldest sky and of the hottest roof
            assertThat(interior.longWaveFront[hour]).isBetween(150.0, 900.0);
            assertThat(interior.longWaveBack[hour]).isBetween(200.0, 900.0);
        }
        assertThat(lessLight).isPositive();
    }

    private static Mounting mounting(String name) {
        return switch (name) {
            case "flat" -> Mounting.FlatOnRoof.USUAL;
            case "open rack" -> RACK;
            case "boarded rack" ->
                new Mounting.OpenRack(30, 180, 2, 4, 1, 0.3, Mounting.Back.BOARDED, Mounting.WindRun.CHORD);
            case "pitched" -> new Mounting.FlushOnPitchedRoof(25, 180, 6, 0.005);
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static FaceFilm tilted(CollectorSurroundings around, boolean facesUp) {
        return around.filmOfTilted(30, facesUp, 2, 0.8, 1, 1.13);
    }

    private CollectorSurroundings around(Roof roof) {
        return new CollectorSurroundings(weather, roof, Terrain.SUBURBAN);
    }

    private static CollectorArray array(Mounting mounting) {
        return new CollectorArray("array", 100, mounting, Absorber.USUAL_MAT);
    }

    private static HourlyHeat heat(CollectorSurroundings around, Mounting mounting) {
        CollectorArray array = array(mounting);
        return CollectorPlaces.heat(
                around, array, CollectorForcing.parts(around, array).get(0).exposure());
    }

    private static double yearKwh(CollectorSurroundings around, CollectorArray array, double inletC) {
        HeatCurves curves = CollectorForcing.of(around, array).curves();
        double sum = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            sum += Math.max(0, curves.heatWm2(hour, inletC)) / 1000;
        }
        return sum;
    }
}
