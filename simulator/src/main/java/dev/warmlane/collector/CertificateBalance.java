package dev.warmlane.collector;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.physics.Water;
import dev.warmlane.site.HourOfYear;

/**
 * The heat of a mounted collector by its test certificate. The certificate's wind is the one on the test stand; here it
 * is replaced by the speed that would give the tested collector, over all its exposed faces, the convection that the
 * mounting has over all of its own, because one film over two faces would charge a mat on a roof for a back it has not.
 */
final class CertificateBalance implements HourlyHeat {

    /** The tested collector's tilt, degrees: test stands face the sun; at wind it hardly matters. */
    private static final double TEST_TILT_DEG = 45;

    /**
     * Roughness of the tested collector. It is the same collector as the mounted one, so that any value serves that both
     * share.
     */
    static final double ROUGHNESS = 1.13;

    private static final int MOST_STEPS = 40;

    private final Exposure exposure;
    private final CertificateCurve curve;
    private final AirHours air;
    private final double capacityFlow;
    private final double[] testWindMs = new double[HourOfYear.HOURS];
    private int hoursOutside;
    private double dryPlateC = 20;

    CertificateBalance(Exposure exposure, CertificateCurve curve, AirHours air, double flowKgSM2) {
        this.exposure = exposure;
        this.curve = curve;
        this.air = air;
        this.capacityFlow = flowKgSM2 * Water.specificHeatJKgK(25);
        CertificateCurve.TestStand test = curve.test();
        NaturalFace natural =
                new NaturalFace(TEST_TILT_DEG, true, test.lengthM(), test.lengthM() / 4, AirHours.PRANDTL);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double difference = AirHours.SURFACE_C - air.temperatureC[hour];
            double still = natural.coefficient(difference, air.buoyancy[hour], air.conductivityWmK[hour]);
            double wind = windFor(hour, mounted(hour, difference) / (test.backOpen() ? 2 : 1), still, test.lengthM());
            if (exposure.irradiance[hour] > 0 && (wind < test.lowestWindMs() || wind > test.highestWindMs())) {
                hoursOutside++;
            }
            testWindMs[hour] = Math.min(test.highestWindMs(), Math.max(test.lowestWindMs(), wind));
        }
    }

    private double mounted(int hour, double differenceK) {
        double front = exposure.front.coefficient(hour, differenceK);
        return exposure.back == null ? front : front + exposure.back.coefficient(hour, differenceK);
    }

    /** The wind at which one face of the test stand has a film coefficient: the cube blend and Re^0.8 turned round. */
    private double windFor(int hour, double filmWm2K, double still, double lengthM) {
        double forced = Math.cbrt(Math.max(0, filmWm2K * filmWm2K * filmWm2K - still * still * still));
        double atOneMs = Film.forcedTurbulent(
                1, lengthM, ROUGHNESS, air.conductivityWmK[hour], air.viscosityM2S[hour], AirHours.PRANDTL);
        return Math.pow(forced / atOneMs, 1 / 0.8);
    }

    /** Daylight hours in which the wind lay outside the tested range and its nearer end was used. */
    int hoursOutside() {
        return hoursOutside;
    }

    /** The wind used in the curve, m/s. */
    double testWindMs(int hour) {
        return testWindMs[hour];
    }

    @Override
    public double stagnationC(int hour) {
        double before = dryPlateC;
        double heatBefore = atMean(hour, before);
        double plate = before + heatBefore / curve.a1();
        for (int step = 0; step < MOST_STEPS && Math.abs(plate - before) > 1e-6; step++) {
            double heat = atMean(hour, plate);
            double slope = (heat - heatBefore) / (plate - before);
            before = plate;
            heatBefore = heat;
            plate -= heat / slope;
        }
        dryPlateC = plate;
        return plate;
    }

    @Override
    public double heatWm2(int hour, double inletC) {
        // the mean fluid temperature lies half the rise above the inlet; the secant method settles in three or four
        // steps
        double before = 0;
        double errorBefore = atMean(hour, inletC) - before;
        double heat = errorBefore;
        for (int step = 0; step < MOST_STEPS && Math.abs(heat - before) > 1e-9; step++) {
            double error = atMean(hour, inletC + heat / capacityFlow / 2) - heat;
            double slope = (error - errorBefore) / (heat - before);
            before = heat;
            errorBefore = error;
            heat -= error / slope;
        }
        return heat;
    }

    private double atMean(int hour, double meanC) {
        double netLongWave = exposure.longWaveFront[hour] - Constants.blackBody(air.temperatureC[hour]);
        return curve.heatWm2(
                exposure.modifiedFront[hour],
                exposure.irradiance[hour],
                netLongWave,
                testWindMs[hour],
                meanC - air.temperatureC[hour]);
    }
}
