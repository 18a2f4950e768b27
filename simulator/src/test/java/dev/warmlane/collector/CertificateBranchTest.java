package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.SyntheticYear;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.physics.Water;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Certificates drawn at random over all that is accepted: each is refused, or is a collector in every hour. */
class CertificateBranchTest {

    private static final int DRAWN = 400;

    /** Solved to 1e-9 W/m² of heat and 1e-6 K of a dry plate, the latter times at most 1255 W/m²K of flow. */
    private static final double SOLVED_WM2 = 2e-3;

    private static final List<Mounting> MOUNTINGS = List.of(
            Mounting.FlatOnRoof.USUAL,
            new Mounting.OpenRack(30, 180, 2, 3, 4, 0.3),
            new Mounting.OpenRack(45, 180, 2, 3, 1, 0.3, Mounting.Back.BOARDED, Mounting.WindRun.CHORD));

    /** Air from -30 to +60 °C within each day, calm and storm: wider than any file. */
    private static final WeatherYear WILD = SyntheticYear.at(35)
            .airC(hour -> 15 - 45 * Math.cos(Math.PI * hour / 12))
            .dewPointC(hour -> -35)
            .windMs(hour -> hour % 7 * 3)
            .build();

    @Test
    void eachIsRefusedOrACollectorInEveryHour() {
        Random random = new Random(20_240_611);
        List<Mounted> mounted = new ArrayList<>();
        for (WeatherYear weather : List.of(Demo.weather("hot-dry"), Demo.weather("cool-coast"), WILD)) {
            CollectorSurroundings around = new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN);
            for (Mounting mounting : MOUNTINGS) {
                mounted.add(new Mounted(around, mounting));
            }
        }
        int accepted = 0;
        for (int drawn = 0; drawn < DRAWN; drawn++) {
            Optional<CertificateCurve> curve = draw(random);
            double flow = 0.005 * Math.pow(60, random.nextDouble());
            if (curve.isPresent()) {
                accepted++;
                Mounted at = mounted.get(random.nextInt(mounted.size()));
                for (Exposure exposure : at.exposures) {
                    isACollector(curve.get(), at.around, exposure, flow);
                }
            }
        }
        assertThat(accepted).isBetween(DRAWN / 8, DRAWN * 7 / 8);
    }

    private static final class Mounted {
        final CollectorSurroundings around;
        final List<Exposure> exposures;

        Mounted(CollectorSurroundings around, Mounting mounting) {
            this.around = around;
            // what a mounting sees does not depend on the certificate but for its incidence, the same for all here
            this.exposures =
                    CollectorForcing.parts(around, new CollectorArray("a", 1, mounting, curve(18, 0, 4, 0))).stream()
                            .map(CollectorForcing.Part::exposure)
                            .toList();
        }
    }

    private static void isACollector(
            CertificateCurve curve, CollectorSurroundings around, Exposure exposure, double flow) {
        CertificateBalance balance = new CertificateBalance(exposure, curve, around.air(), flow);
        HeatCurves curves = new HeatCurves(HourOfYear.HOURS);
        double capacityFlow = flow * Water.specificHeatJKgK(25);
        String what = curve + " " + flow;
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 5) {
            curves.solve(hour, balance);
            double airC = around.air().temperatureC[hour];
            assertThat(balance.stagnationC(hour)).as(what).isBetween(airC - 40, airC + 120);
            double dry = balance.dryWhileRunningC(hour);
            double before = Double.POSITIVE_INFINITY;
            for (double inletC = 0; inletC <= 45; inletC += 3) {
                double heat = balance.heatWm2(hour, inletC);
                if (!(heat < before)) {
                    throw new AssertionError("heat rises at " + inletC + " " + HourOfYear.label(hour) + " " + what);
                }
                before = heat;
                // light, at most all of it; sky, where it is warmer than air; air, where it is warmer than water
                double black = around.air().temperatureC[hour] + 273.15;
                double sky = exposure.longWaveFront[hour] - 5.670374e-8 * Math.pow(black, 4);
                double warmth =
                        exposure.back == null ? 0 : exposure.longWaveBack[hour] - 5.670374e-8 * Math.pow(black, 4);
                double gains = exposure.irradiance[hour]
                        + exposure.modifiedBack[hour]
                        + CertificateLimits.MOST_SKY_SHARE * Math.max(0, sky + warmth)
                        + (curve.lossWm2K(balance.testWindMs(hour), 0) + 10) * Math.max(0, airC - inletC);
                assertThat(heat).as(what).isLessThan(gains + SOLVED_WM2);
                double outletC = inletC + heat / capacityFlow;
                if (dry < airC + 120 && dry > airC - 40) {
                    assertThat(outletC)
                            .as(what)
                            .isBetween(
                                    Math.min(inletC, dry) - SOLVED_WM2 / capacityFlow,
                                    Math.max(inletC, dry) + SOLVED_WM2 / capacityFlow);
                }
            }
            for (double inletC = -10; inletC <= 60; inletC++) {
                assertThat(curves.slopeWm2K(hour, inletC)).as(what).isNegative();
            }
        }
    }

    /** What created energy: a1 12, a3 2, a2 1 gave twice the season's heat and outlets of 65,000 °C. */
    @Test
    void aStronglyBentCurveGivesLessThanAStraightOne() {
        CollectorSurroundings around =
                new CollectorSurroundings(Demo.weather("warm-inland"), Demo.ROOF, Terrain.SUBURBAN);
        double straight = season(around, curve(12, 0, 2, 0));
        double bent = season(around, curve(12, 1, 2, 0));
        assertThat(bent).isBetween(0.2 * straight, straight);
    }

    /** -a2 ΔT² alone would be 0.5 W/m² less at 10 K below the air, and turn back at 120 K below. */
    @Test
    void goesOnStraightBelowTheTemperatureOfTheAir() {
        CertificateCurve curve = curve(12, 0.05, 0, 1e-6);
        double atAir = curve.heatWm2(500, 500, -50, 3, 0);
        assertThat(curve.heatWm2(500, 500, -50, 3, -10)).isEqualTo(atAir + 120);
        assertThat(curve.heatWm2(500, 500, -50, 3, -200)).isEqualTo(atAir + 2400);
        assertThat(curve.heatWm2(500, 500, -50, 3, 10)).isLessThan(atAir - 120);
    }

    @Test
    void aCertificateOfNoCollectorIsRefusedWhateverItWillBeMountedOn() {
        TestStand closed = new TestStand(false, 2, 0, 4);
        TestStand open = new TestStand(true, 2, 0, 4);
        assertThatThrownBy(() -> certificate(0.8, 7, 2, 0.8, 0.01, 0, closed))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a loss a1 + a3 (u - 3) of 1.00 W/m2K at the lowest tested wind, 0.0 m/s");
        assertThatThrownBy(() -> certificate(0.9, 20, 2, 0.8, 0.05, 0, closed))
                .hasMessageContaining("an efficiency eta0 - a6 (u - 3) of 1.050 at 0.0 m/s");
        assertThatThrownBy(() -> certificate(0.2, 20, 2, 0.8, 0.2, 0, new TestStand(false, 2, 1, 8)))
                .hasMessageContaining("an efficiency eta0 - a6 (u - 3) of -0.800 at 8.0 m/s");
        assertThatThrownBy(() -> certificate(0.9, 20, 2, 1, 0.01, 0.1, closed))
                .hasMessageContaining("a share of the sky a4 - a7 (u - 3) of 1.300 at 0.0 m/s");
        assertThatThrownBy(() -> certificate(0.8, 14, 2, 0.8, 0.01, 0, open))
                .hasMessageContaining("was the back closed");
        assertThat(certificate(0.8, 14, 2, 0.8, 0.01, 0, closed).mayHaveBeenOpen())
                .isFalse();
    }

    private static double season(CollectorSurroundings around, CertificateCurve curve) {
        HeatCurves curves = CollectorForcing.of(around, new CollectorArray("a", 1, Mounting.FlatOnRoof.USUAL, curve))
                .curves();
        double sum = 0;
        for (int hour = HourOfYear.firstHourOf(5); hour < HourOfYear.firstHourOf(10); hour++) {
            sum += Math.max(0, curves.heatWm2(hour, 24)) / 1000;
        }
        return sum;
    }

    private static CertificateCurve curve(double a1, double a2, double a3, double a8) {
        return new CertificateCurve(0.8, a1, a2, a3, 0.7, 0.01, 0, a8, new MatteBlack(), new TestStand(false, 2, 0, 5));
    }

    private static CertificateCurve certificate(
            double eta0, double a1, double a3, double a4, double a6, double a7, TestStand test) {
        return new CertificateCurve(eta0, a1, 0, a3, a4, a6, a7, 0, new MatteBlack(), test);
    }

    /** Coefficients over their whole ranges, small ones as often as large ones; nothing where they are refused. */
    private static Optional<CertificateCurve> draw(Random random) {
        double lowest = random.nextDouble() * 4;
        TestStand test = new TestStand(
                random.nextBoolean(), 0.5 + 5 * random.nextDouble(), lowest, lowest + 16 * random.nextDouble());
        try {
            return Optional.of(new CertificateCurve(
                    0.1 + 0.9 * random.nextDouble(),
                    60 * random.nextDouble(),
                    small(random, 1),
                    small(random, 20),
                    1.2 * random.nextDouble(),
                    small(random, 0.2),
                    small(random, 0.2),
                    small(random, 1e-5),
                    new MatteBlack(),
                    test));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static double small(Random random, double most) {
        return random.nextInt(4) == 0 ? most : most * Math.pow(random.nextDouble(), 3);
    }
}
