package dev.warmlane.season;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;

/**
 * How far wind and sun at a pool are known from a log of its water, and how far a model with them is from its readings.
 *
 * @param source in a few words what log it is, and of which days
 * @param windFactorSd standard deviation of the wind factor
 * @param sunShareSd standard deviation of the share of the sun that warms the water
 * @param correlation correlation of the two
 * @param errorK standard deviation of what model and log disagree in, K
 * @param fadeHours time in which the correlation of that falls to 1/e, h
 */
public record FittedDoubt(
        String source, double windFactorSd, double sunShareSd, double correlation, double errorK, double fadeHours) {

    /** Range of {@link #windFactorSd}. */
    public static final Range WIND_SD = Range.number("standard deviation of the fitted wind factor", 0, 1);

    /** Range of {@link #sunShareSd}. */
    public static final Range SUN_SD = Range.number("standard deviation of the fitted share of the sun", 0, 1);

    /** Range of {@link #correlation}. */
    public static final Range CORRELATION = Range.number("correlation of the two", -1, 1);

    /** Range of {@link #errorK}. */
    public static final Range ERROR = Range.of("error that the fit left", Dimension.TEMPERATURE_DIFFERENCE, 0, 10);

    /** Range of {@link #fadeHours}. */
    public static final Range FADE = Range.of("time in which that error fades", Dimension.DURATION, "h", 1, 2000);

    /** Standard deviations on either side that hold nine of ten of a normal distribution. */
    public static final double NINE_OF_TEN = 1.645;

    /** Checks every range. */
    public FittedDoubt {
        WIND_SD.check(windFactorSd);
        SUN_SD.check(sunShareSd);
        CORRELATION.check(correlation);
        ERROR.check(errorK);
        FADE.check(fadeHours);
    }

    /**
     * Within what the mean of the error over some hours stays nine times of ten, K: the mean of an Ornstein-Uhlenbeck process
     * of time τ over a time T has the variance 2σ²·(τ/T)·(1 - (τ/T)·(1 - exp(-T/τ))) (derived from its correlation).
     *
     * @param hours the time T, h, above 0
     */
    public double errorOfMeanK(double hours) {
        double x = fadeHours / hours;
        return NINE_OF_TEN * errorK * Math.sqrt(2 * x * (1 + x * Math.expm1(-1 / x)));
    }
}
