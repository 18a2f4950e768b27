package dev.warmlane.collector;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.physics.PlateFace;
import dev.warmlane.physics.Water;

/**
 * The heat of a mounted collector by its test certificate. The certificate's wind is the one on the test stand; here it
 * is replaced by the speed that would give the tested collector, over all its exposed faces, the convection that the
 * mounting has over all of its own, because one film over two faces would charge a mat on a roof for a back it has not.
 *
 * <p>A certificate knows light and long-wave on the front alone. An open back takes light as the front does, and
 * long-wave with the front's coefficient; what a back radiates more than the air sends it is in the certificate only if
 * the tested back was open, so where test and mounting differ it is added or taken out, again with the front's
 * coefficient. What a board lets through is added where the tested back was open; a certificate of a closed back holds it.
 *
 * <p>Keeps the dry plate of the last hour, so use one for a thread.
 */
final class CertificateBalance implements HourlyHeat {

    /** The tested collector's tilt, degrees: test stands face the sun; at wind it hardly matters. */
    private static final double TEST_TILT_DEG = 45;

    /**
     * Roughness of the tested collector. It is the same collector as the mounted one, so that any value serves that both
     * share.
     */
    static final double ROUGHNESS = 1.13;

    /** Coldest and hottest dry plate above the air, K: wider than any sky and sun can take it; own choice. */
    private static final double LOWEST_DRY_K = -40;

    private static final double HIGHEST_DRY_K = 120;

    private static final int MOST_STEPS = 40;

    private final Exposure exposure;
    private final CertificateCurve curve;
    private final AirHours air;
    private final double capacityFlow;
    private final double[] testWindMs;
    /** Open backs of the mounting less those of the test: 1, 0 or -1. */
    private final int backsMore;
    /** What a board lets through that closes the back of a collector tested with it open. */
    private final ClosedBack board;

    private final boolean[] outsideTest;

    // the hour whose dry plate was looked for last, and how far it stands above the air, K
    private int dryHour = -1;
    private double dryK;

    CertificateBalance(Exposure exposure, CertificateCurve curve, AirHours air, double flowKgSM2) {
        this.exposure = exposure;
        this.curve = curve;
        this.air = air;
        this.capacityFlow = flowKgSM2 * Water.specificHeatJKgK(25);
        CertificateCurve.TestStand test = curve.test();
        this.board = test.backOpen() && exposure.closed.isBoard
                ? exposure.closed
                : ClosedBack.none(exposure.irradiance.length);
        this.backsMore = (exposure.back == null ? 0 : 1) - (test.backOpen() ? 1 : 0);
        int count = exposure.irradiance.length;
        this.testWindMs = new double[count];
        this.outsideTest = new boolean[count];
        NaturalFace upper = face(test, true);
        NaturalFace lower = face(test, false);
        for (int hour : air.solved) {
            double difference = AirHours.SURFACE_C - air.temperatureC[hour];
            double up = upper.coefficient(difference, air.buoyancy[hour], air.conductivityWmK[hour]);
            double down = lower.coefficient(difference, air.buoyancy[hour], air.conductivityWmK[hour]);
            double forced = forcedOnStand(mounted(hour, difference), up, down, test.backOpen());
            double wind = windFor(hour, forced, test.lengthM());
            outsideTest[hour] = wind < test.lowestWindMs() || wind > test.highestWindMs();
            testWindMs[hour] = Math.min(test.highestWindMs(), Math.max(test.lowestWindMs(), wind));
        }
    }

    private static NaturalFace face(CertificateCurve.TestStand test, boolean facesUp) {
        return new NaturalFace(
                new PlateFace(TEST_TILT_DEG, facesUp, test.lengthM(), test.lengthM() / 4), AirHours.PRANDTL);
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
        double atOneMs = Film.forcedTurbulent(1, lengthM, ROUGHNESS, air.film(hour));
        return Math.pow(forced / atOneMs, 1 / 0.8);
    }

    /** Daylight hours in which the wind lay outside the tested range and its nearer end was used. */
    @Override
    public int hoursOutside() {
        int hours = 0;
        for (int hour = 0; hour < testWindMs.length; hour++) {
            hours += outsideTest[hour] && exposure.irradiance[hour] > 0 ? 1 : 0;
        }
        return hours;
    }

    /** The wind used in the curve, m/s. */
    double testWindMs(int hour) {
        return testWindMs[hour];
    }

    /** Where the curve gives no heat while water holds roof and neighbours as warm as it does, held as the other is. */
    double dryWhileRunningC(int hour) {
        return air.temperatureC[hour] + Math.max(LOWEST_DRY_K, Math.min(HIGHEST_DRY_K, dryDifferenceK(hour)));
    }

    /** Where the curve gives no heat, held within {@link #LOWEST_DRY_K} and {@link #HIGHEST_DRY_K} of the air. */
    @Override
    public double stagnationC(int hour) {
        return air.temperatureC[hour] + Math.max(LOWEST_DRY_K, Math.min(HIGHEST_DRY_K, standingDifferenceK(hour)));
    }

    /**
     * The same with roof and neighbours as the dry plates make them. Of what the collector loses with each kelvin it takes
     * back half at most, so that the curve goes on falling whatever coefficients hold too little radiation for what comes
     * back; own choice.
     */
    private double standingDifferenceK(int hour) {
        double airC = air.temperatureC[hour];
        double sky = curve.skyShare(testWindMs[hour]);
        double back = exposure.back == null ? board.longWaveShare(hour) : sky;
        double perK = Math.min(exposure.dry.perK(hour, sky, back), lossWm2K(hour, 0) / 2);
        double more = exposure.dry.more(hour, sky, back) + perK * (airC - exposure.dry.plateC(hour));
        double difference = (atMean(hour, airC) + more) / (lossWm2K(hour, 0) - perK);
        for (int step = 0; step < MOST_STEPS; step++) {
            double heat = atMean(hour, airC + difference) + more + perK * difference;
            double change = heat / (lossWm2K(hour, difference) - perK);
            difference += change;
            if (Math.abs(change) < 1e-6) {
                break;
            }
        }
        return difference;
    }

    /** The curve falls and bends down, so Newton's method from the root of its straight part goes down to its own. */
    private double dryDifferenceK(int hour) {
        if (hour == dryHour) {
            return dryK;
        }
        double airC = air.temperatureC[hour];
        double difference = atMean(hour, airC) / lossWm2K(hour, 0);
        for (int step = 0; step < MOST_STEPS; step++) {
            double change = atMean(hour, airC + difference) / lossWm2K(hour, difference);
            difference += change;
            if (Math.abs(change) < 1e-6) {
                break;
            }
        }
        dryHour = hour;
        dryK = difference;
        return difference;
    }

    /** By how much the heat falls with each kelvin of mean temperature, with what the backs differ by, W/m²K. */
    private double lossWm2K(int hour, double differenceK) {
        return curve.lossWm2K(testWindMs[hour], differenceK)
                + backsMore * curve.skyShare(testWindMs[hour]) * CertificateLimits.radiationWm2K(air.temperatureC[hour])
                + board.wm2K[hour];
    }

    /**
     * The mean fluid temperature lies half the rise above the inlet. Less heat than the curve gives at some mean
     * temperature makes a cooler fluid, whose curve gives more: there is one heat at which both agree, and Newton's
     * method from the heat at the inlet goes to it, since the curve falls and bends down.
     *
     * <p>Where the flow is so small that the mean no longer stands for the way through (m'c below half the loss per
     * kelvin), the water leaves no warmer, and no colder, than the dry plate.
     */
    @Override
    public double heatWm2(int hour, double inletC) {
        double heat = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double meanC = inletC + heat / capacityFlow / 2;
            double slope = lossWm2K(hour, meanC - air.temperatureC[hour]) / capacityFlow / 2;
            double change = (atMean(hour, meanC) - heat) / (1 + slope);
            heat += change;
            if (Math.abs(change) < 1e-9) {
                break;
            }
        }
        double toDryPlate = capacityFlow * (air.temperatureC[hour] + dryDifferenceK(hour) - inletC);
        return Math.abs(heat) > Math.abs(toDryPlate) ? toDryPlate : heat;
    }

    private double atMean(int hour, double meanC) {
        double black = Constants.blackBody(air.temperatureC[hour]);
        double netLongWave = exposure.longWaveFront[hour] - black;
        if (exposure.back != null) {
            netLongWave += exposure.longWaveBack[hour] - black;
        }
        // straight in temperature, as the rest of a certificate nearly is: a fourth power would outrun its other losses
        double difference = meanC - air.temperatureC[hour];
        netLongWave -= backsMore * CertificateLimits.radiationWm2K(air.temperatureC[hour]) * difference;
        return curve.heatWm2(
                        exposure.modifiedFront[hour] + exposure.modifiedBack[hour],
                        exposure.irradiance[hour] + exposure.modifiedBack[hour],
                        netLongWave,
                        testWindMs[hour],
                        difference)
                - board.lossWm2(hour, meanC);
    }
}
