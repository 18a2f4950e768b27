package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tents against what they must agree with. */
class TentsTest {

    /** Two ways to the same numbers: what is left is the iteration of the balance, settled to 1e-3 of U_L. */
    private static final double SAME_WM2 = 0.05;

    /**
     * A plate alone has the sky's light on the roof behind it too, of which the roof just before its lower edge sees nothing
     * in either case; its outer face, which is no part of a tent, warms that roof a little.
     */
    private static final double ALONE_PERCENT = 1;

    private static final double INLET_C = 26;

    private static final CollectorPhysics EVEN_SKY =
            new CollectorPhysics(SkyModel.HAY_DAVIES, FilmCorrelation.PHYSICAL);

    private static Mounting.OpenRack tents(
            double tiltDeg, double azimuthDeg, double pitchM, int number, Mounting.Back back, double clearanceM) {
        return new Mounting.OpenRack(
                new RackRows(new Rack(tiltDeg, azimuthDeg, 2, clearanceM), pitchM, number, true),
                back,
                Mounting.WindRun.CHORD,
                1);
    }

    private static CollectorSurroundings around(WeatherYear weather, Roof roof) {
        return new CollectorSurroundings(weather, roof, Terrain.SUBURBAN, EVEN_SKY);
    }

    private static HeatCurves curves(CollectorSurroundings around, Mounting mounting) {
        return CollectorForcing.of(around, new CollectorArray("any", 100, mounting, Absorber.USUAL_MAT))
                .curves();
    }

    private static double yearKwh(HeatCurves curves) {
        double sum = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            sum += Math.max(0, curves.heatWm2(hour, INLET_C)) / 1000;
        }
        return sum;
    }

    @Test
    void underAnEvenSkyBothSidesGiveTheSameWhateverTheyFace() {
        WeatherYear weather = SyntheticYear.at(40).airC(hour -> 26).overcast().build();
        CollectorSurroundings around = around(weather, Demo.ROOF);
        for (int number : new int[] {1, 6}) {
            HeatCurves tents = curves(around, tents(20, 90, 5, number, Mounting.Back.OPEN, 0.2));
            HeatCurves turned = curves(around, tents(20, 190, 5, number, Mounting.Back.OPEN, 0.2));
            for (int hour = 0; hour < HourOfYear.HOURS; hour += 5) {
                assertThat(turned.heatWm2(hour, INLET_C)).isCloseTo(tents.heatWm2(hour, INLET_C), within(SAME_WM2));
            }
        }
    }

    @Test
    void underAnEvenSkyASideGivesWhatASinglePlateGives() {
        WeatherYear weather = SyntheticYear.at(40).airC(hour -> 26).overcast().build();
        CollectorSurroundings around = around(weather, Demo.ROOF);
        Mounting.Back closed = Mounting.Back.boarded(0);
        double tent = yearKwh(curves(around, tents(20, 90, 5, 1, closed, 0.2)));
        double plate =
                yearKwh(curves(around, new Mounting.OpenRack(20, 180, 2, 5, 1, 0.2, closed, Mounting.WindRun.CHORD)));
        assertThat(tent).isPositive().isCloseTo(plate, withinPercentage(ALONE_PERCENT));
    }

    /** In the sun the two sides add up to the mean of two plates that face the two ways, each without loss behind. */
    @Test
    void inTheSunATentIsTheMeanOfItsTwoSides() {
        CollectorSurroundings around = around(Demo.weather("warm-inland"), Demo.ROOF);
        Mounting.Back closed = Mounting.Back.boarded(0);
        double mean = 0;
        for (double azimuth : List.of(100.0, 280.0)) {
            mean += yearKwh(curves(
                            around, new Mounting.OpenRack(15, azimuth, 2, 5, 1, 0.2, closed, Mounting.WindRun.CHORD)))
                    / 2;
        }
        // the year's sum of positive heat of the mean is a little less than the mean of sums
        assertThat(yearKwh(curves(around, tents(15, 100, 5, 1, closed, 0.2)))).isCloseTo(mean, withinPercentage(2));
    }

    @Test
    void laidOnTheRoofTentsAreTheFlatMatOverAPerfectRoof() {
        CollectorSurroundings around = around(
                Demo.weather("warm-inland"), Demo.ROOF.toBuilder().uValueWm2K(0).build());
        HeatCurves flat = curves(around, Mounting.FlatOnRoof.USUAL);
        HeatCurves laid = curves(
                around,
                new Mounting.OpenRack(
                        new RackRows(new Rack(0, 90, 2, 0), 4, 5, true),
                        Mounting.Back.boarded(0),
                        Mounting.WindRun.ROOF,
                        1));
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 5) {
            assertThat(laid.heatWm2(hour, INLET_C)).isCloseTo(flat.heatWm2(hour, INLET_C), within(SAME_WM2));
        }
    }

    @Test
    void tentsFarApartGiveWhatOneGives() {
        CollectorSurroundings around = around(Demo.weather("warm-inland"), Demo.ROOF);
        double one = yearKwh(curves(around, tents(20, 90, 80, 1, Mounting.Back.OPEN, 0.2)));
        double ten = yearKwh(curves(around, tents(20, 90, 80, 10, Mounting.Back.OPEN, 0.2)));
        // as the library promises for rows
        assertThat(ten / one).isCloseTo(1, within(0.01));
    }

    @Test
    void theRoofThatTentsTakeIsThatOfBothSides() {
        CollectorArray array =
                new CollectorArray("any", 120, tents(60, 90, 3, 5, Mounting.Back.OPEN, 0), Absorber.USUAL_MAT);
        // five tents of twice 2 m up the slope are 6 m long; four pitches and a tent of 2 m deep
        assertThat(array.flatRoofTakenM2()).isCloseTo(6 * (4 * 3 + 2), within(1e-9));
    }
}
