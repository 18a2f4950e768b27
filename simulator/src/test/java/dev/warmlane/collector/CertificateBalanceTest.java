package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.HourlyWeather;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the back of a test stand means for the back of a mounting, and the dry plate of a certificate. */
class CertificateBalanceTest {

    private static final double SIGMA = 5.670374e-8;

    /** The heat is found to 1e-9 W/m²; sigma has seven digits. */
    private static final double SAME_WM2 = 1e-3;

    /** Heat of the water at 25 °C by steam tables, J/kgK; it only moves the mean fluid temperature by some hundredths. */
    private static final double WATER_J_KGK = 4181;

    private static final double FLOW = 0.3;
    private static final double ETA0 = 0.8;
    private static final double A1 = 18;
    private static final double A2 = 0.05;
    private static final double A4 = 0.75;
    private static final double A8 = 1e-6;

    private static final List<Mounting> MOUNTINGS = List.of(
            Mounting.FlatOnRoof.USUAL,
            new Mounting.OpenRack(30, 180, 2, 3, 4, 0.3),
            new Mounting.OpenRack(30, 180, 2, 3, 4, 0.3, Mounting.Back.BOARDED, Mounting.WindRun.CHORD),
            new Mounting.FlushOnPitchedRoof(25, 180, 6, 0.005));

    /**
     * No wind terms, so that nothing but the backs tells the two stands apart. The curve holds what an open back radiates
     * only where the test had one: mounted without, it is given back, and a board lets through
     * what it lets through; mounted open after a closed test, it is taken.
     */
    @ParameterizedTest
    @CsvSource({"0, false, 0", "0, true, -1", "1, false, 1", "1, true, 0", "2, true, -1", "3, false, 0", "3, true, -1"})
    void aBackIsChargedWhereTheMountingHasOneMoreThanTheTest(int mounting, boolean testOpen, int backsMore) {
        CertificateCurve curve =
                new CertificateCurve(ETA0, A1, A2, 0, A4, 0, 0, A8, new MatteBlack(), new TestStand(testOpen, 2, 0, 5));
        CollectorSurroundings around = around("warm-inland");
        HourlyWeather weather = around.weather();
        for (CollectorForcing.Part part : parts(around, MOUNTINGS.get(mounting), curve)) {
            Exposure exposure = part.exposure();
            HourlyHeat heat = heat(around, MOUNTINGS.get(mounting), curve, exposure);
            for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
                double airC = weather.airTemperatureC(hour);
                double black = black(airC);
                // a back that differs radiates straight in temperature: 4σT³
                double perKelvin = 4 * black / (airC + 273.15);
                double light = exposure.modifiedFront[hour];
                double longWave = exposure.longWaveFront[hour] - black;
                if (exposure.back != null) {
                    light += exposure.modifiedBack[hour];
                    longWave += exposure.longWaveBack[hour] - black;
                }
                for (double inletC : new double[] {airC - 5, airC + 15}) {
                    double found = heat.heatWm2(hour, inletC);
                    double meanC = inletC + found / (2 * FLOW * WATER_J_KGK);
                    double delta = meanC - airC;
                    // below the temperature of the air a certificate goes on straight
                    double warm = Math.max(0, delta);
                    double expected = ETA0 * light
                            - A1 * delta
                            - A2 * warm * warm
                            - A8 * Math.pow(warm, 4)
                            + A4 * (longWave - backsMore * perKelvin * delta)
                            - (testOpen && exposure.closed.isBoard ? exposure.closed.lossWm2(hour, meanC) : 0);
                    // the mean is as sure as the heat of water, 2e-4 of up to 0.4 K
                    assertThat(found).as(HourOfYear.label(hour)).isCloseTo(expected, within(SAME_WM2 + 0.003));
                }
            }
        }
    }

    /**
     * By day and night, calm and windy: it is where the collector neither gives nor takes heat, and below it gives. The
     * certificate is at the upper end of what is usual, which an open back needs: what its faces radiate, some 6 W/m²K
     * each and more on a hot plate, is part of the loss it states.
     */
    @ParameterizedTest
    @CsvSource({
        "warm-inland, false",
        "warm-inland, true",
        "cool-coast, false",
        "cool-coast, true",
        "hot-dry, false",
        "hot-dry, true",
        "southern-temperate, false",
        "southern-temperate, true"
    })
    void theDryPlateIsWhereNoHeatIsLeft(String sample, boolean testOpen) {
        CertificateCurve curve =
                new UnglazedForm2013(0.85, 0.02, 12, 5, 0.95).curve(new MatteBlack(), new TestStand(testOpen, 2, 1, 5));
        CollectorSurroundings around = around(sample);
        for (Mounting mounting : MOUNTINGS) {
            for (CollectorForcing.Part part : parts(around, mounting, curve)) {
                CertificateBalance heat = (CertificateBalance) heat(around, mounting, curve, part.exposure());
                for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                    double dry = heat.dryWhileRunningC(hour);
                    double airC = around.weather().airTemperatureC(hour);
                    String what = mounting + " " + HourOfYear.label(hour);
                    assertThat(dry).as(what).isBetween(airC - 25, airC + 110);
                    if (!(mounting instanceof Mounting.OpenRack)) {
                        assertThat(heat.stagnationC(hour)).as(what).isCloseTo(dry, within(1e-5));
                    }
                    if (hour % 5 == 0) {
                        // a slope of 10 to 40 W/m²K, and the plate is sought to 1e-4 K or less
                        assertThat(heat.heatWm2(hour, dry)).as(what).isCloseTo(0, within(0.01));
                        assertThat(heat.heatWm2(hour, dry - 1)).as(what).isPositive();
                        assertThat(heat.heatWm2(hour, dry + 1)).as(what).isNegative();
                    }
                }
            }
        }
    }

    /** a2·20² = 20 and a2·50² = 125; a8·20⁴ = 0.16 and a8·50⁴ = 6.25 W/m². */
    @Test
    void bothCurvedLossesAreLosses() {
        CertificateCurve curve =
                new CertificateCurve(0.8, 10, 0.05, 0, 0, 0, 0, 1e-6, new MatteBlack(), new TestStand(false, 2, 0, 5));
        assertThat(curve.heatWm2(1000, 1000, 0, 3, 20)).isCloseTo(800 - 200 - 20 - 0.16, within(1e-9));
        assertThat(curve.heatWm2(1000, 1000, 0, 3, 50)).isCloseTo(800 - 500 - 125 - 6.25, within(1e-9));
    }

    private static CollectorSurroundings around(String sample) {
        return new CollectorSurroundings(Demo.weather(sample), Demo.ROOF, Terrain.SUBURBAN);
    }

    private static List<CollectorForcing.Part> parts(
            CollectorSurroundings around, Mounting mounting, CertificateCurve curve) {
        return CollectorForcing.parts(around, array(mounting, curve));
    }

    private static HourlyHeat heat(
            CollectorSurroundings around, Mounting mounting, CertificateCurve curve, Exposure exposure) {
        return CollectorPlaces.heat(around, array(mounting, curve), exposure);
    }

    private static CollectorArray array(Mounting mounting, CertificateCurve curve) {
        return new CollectorArray("array", 1, mounting, curve, FLOW, 0);
    }

    private static double black(double temperatureC) {
        return SIGMA * Math.pow(temperatureC + 273.15, 4);
    }
}
