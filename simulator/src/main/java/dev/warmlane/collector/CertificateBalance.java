package dev.warmlane.collector;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.physics.Water;
import dev.warmlane.site.HourOfYear;
import java.util.Locale;

/**
 * The heat of a mounted collector by its test certificate. The certificate's wind is the one on the test stand; here it
 * is replaced by the speed that would give the tested collector, over all its exposed faces, the convection that the
 * mounting has over all of its own, because one film over two faces would charge a mat on a roof for a back it has not.
 *
 * <p>A certificate knows light and long-wave on the front alone. An open back takes light as the front does, and
 * long-wave with the front's coefficient; what a back radiates more than the air sends it is in the certificate only if
 * the tested back was open, so where test and mounting differ it is added or taken out, again with the front's
 * coefficient.
 */
final class CertificateBalance implements HourlyHeat {

    /** The tested collector's tilt, degrees: test stands face the sun; at wind it hardly matters. */
    private static final double TEST_TILT_DEG = 45;

    /**
     * Roughness of the tested collector. It is the same collector as the mounted one, so that any value serves that both
     * share.
     */
    static final double ROUGHNESS = 1.13;

    /** A collector that lost less than this per kelvin would not be an unglazed one; own choice. */
    private static final double LEAST_LOSS_WM2K = 2;

    /** Coldest and hottest dry plate above the air, K: wider than any sky and sun can take it; own choice. */
    private static final double LOWEST_DRY_K = -40;

    private static final double HIGHEST_DRY_K = 120;

    private static final int MOST_STEPS = 40;

    private final Exposure exposure;
    private final CertificateCurve curve;
    private final AirHours air;
    private final double capacityFlow;
    private final double[] testWindMs = new double[HourOfYear.HOURS];
    /** Open backs of the mounting less those of the test: 1, 0 or -1. */
    private final int backsMore;

    private int hoursOutside;

    CertificateBalance(Exposure exposure, CertificateCurve curve, AirHours air, double flowKgSM2) {
        this.exposure = exposure;
        this.curve = curve;
        this.air = air;
        this.capacityFlow = flowKgSM2 * Water.specificHeatJKgK(25);
        CertificateCurve.TestStand test = curve.test();
        this.backsMore = (exposure.back == null ? 0 : 1) - (test.backOpen() ? 1 : 0);
        NaturalFace upper = face(test, true);
        NaturalFace lower = face(test, false);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double difference = AirHours.SURFACE_C - air.temperatureC[hour];
            double up = upper.coefficient(difference, air.buoyancy[hour], air.conductivityWmK[hour]);
            double down = lower.coefficient(difference, air.buoyancy[hour], air.conductivityWmK[hour]);
            double forced = forcedOnStand(mounted(hour, difference), up, down, test.backOpen());
            double wind = windFor(hour, forced, test.lengthM());
            if (exposure.irradiance[hour] > 0 && (wind < test.lowestWindMs() || wind > test.highestWindMs())) {
                hoursOutside++;
            }
            testWindMs[hour] = Math.min(test.highestWindMs(), Math.max(test.lowestWindMs(), wind));
            if (linearLossWm2K(hour) < LEAST_LOSS_WM2K) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "the certificate leaves a loss of %.1f W/m2K at %.1f m/s for this mounting, which no unglazed"
                                + " collector has: check its coefficients, the lowest tested wind, and whether the back"
                                + " of the tested collector was open",
                        linearLossWm2K(hour),
                        testWindMs[hour]));
            }
        }
    }

    private static NaturalFace face(CertificateCurve.TestStand test, boolean facesUp) {
        return new NaturalFace(TEST_TILT_DEG, facesUp, test.lengthM(), test.lengthM() / 4, AirHours.PRANDTL);
    }

    private double mounted(int hour, double differenceK) {
        double front = exposure.front.coefficient(hour, differenceK);
        return exposure.back == null ? front : front + exposure.back.coefficient(hour, differenceK);
    }

    /**
     * The forced part, the same on every exposed face of the test stand, that gives all of them together a conductance.
     * The blend is convex in the forced part, so Newton's method from above goes straight down to it.
     *
     * @param conductance of all faces, W/m²K
     * @param upper natural part of the front, W/m²K
     * @param lower natural part of the back, W/m²K
     * @param open whether the back is exposed too
     */
    private static double forcedOnStand(double conductance, double upper, double lower, boolean open) {
        if (conductance <= upper + (open ? lower : 0)) {
            return 0;
        }
        double forced = open ? conductance / 2 : conductance;
        for (int step = 0; step < MOST_STEPS; step++) {
            double front = Film.rack(forced, upper);
            double back = open ? Film.rack(forced, lower) : 0;
            double slope = square(forced / front) + (open ? square(forced / back) : 0);
            double change = (front + back - conductance) / slope;
            forced -= change;
            if (change < 1e-9) {
                break;
            }
        }
        return Math.max(0, forced);
    }

    private static double square(double x) {
        return x * x;
    }

    /** The wind at which a face of the test stand has a forced part: Re^0.8 turned round. */
    private double windFor(int hour, double forced, double lengthM) {
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

    /**
     * Where the curve gives no heat: Newton's method on its falling branch, from where its linear part alone would. A
     * certificate whose curve never comes down to nothing there is held within {@link #LOWEST_DRY_K} and
     * {@link #HIGHEST_DRY_K} of the air.
     */
    @Override
    public double stagnationC(int hour) {
        double airC = air.temperatureC[hour];
        double difference = within(atMean(hour, airC) / linearLossWm2K(hour));
        for (int step = 0; step < MOST_STEPS; step++) {
            double heat = atMean(hour, airC + difference);
            double next = within(difference - heat / Math.min(-LEAST_LOSS_WM2K, slopeWm2K(hour, difference)));
            double change = next - difference;
            difference = next;
            if (Math.abs(change) < 1e-6) {
                break;
            }
        }
        return airC + difference;
    }

    private static double within(double differenceK) {
        return Math.max(LOWEST_DRY_K, Math.min(HIGHEST_DRY_K, differenceK));
    }

    /** How the curve's heat changes with the mean temperature, W/m²K. */
    private double slopeWm2K(int hour, double differenceK) {
        double square = differenceK * differenceK;
        return -linearLossWm2K(hour) - 2 * curve.a2() * differenceK - 4 * curve.a8() * square * differenceK;
    }

    /** Loss per kelvin at the temperature of the air, with what the backs differ by, W/m²K. */
    private double linearLossWm2K(int hour) {
        double u = testWindMs[hour] - CertificateCurve.REFERENCE_WIND_MS;
        return curve.a1() + curve.a3() * u + backsMore * (curve.a4() - curve.a7() * u) * radiationWm2K(hour);
    }

    /** Radiation of a black surface per kelvin above the air, W/m²K: 4σTa³. */
    private double radiationWm2K(int hour) {
        double kelvin = air.temperatureC[hour] + Constants.KELVIN;
        return 4 * Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
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
        double black = Constants.blackBody(air.temperatureC[hour]);
        double netLongWave = exposure.longWaveFront[hour] - black;
        if (exposure.back != null) {
            netLongWave += exposure.longWaveBack[hour] - black;
        }
        // straight in temperature, as the rest of a certificate nearly is: a fourth power would outrun its other losses
        netLongWave -= backsMore * radiationWm2K(hour) * (meanC - air.temperatureC[hour]);
        return curve.heatWm2(
                exposure.modifiedFront[hour] + exposure.modifiedBack[hour],
                exposure.irradiance[hour] + exposure.modifiedBack[hour],
                netLongWave,
                testWindMs[hour],
                meanC - air.temperatureC[hour]);
    }
}
