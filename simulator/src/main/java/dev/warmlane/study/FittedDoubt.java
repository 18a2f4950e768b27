package dev.warmlane.study;

import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.time.LocalDate;

/**
 * How far wind and sun at a pool are known from a log of its water, and how far a model with them is from its readings.
 *
 * @param source in a few words what log it is
 * @param from the first day of the log
 * @param to the last day of the log
 * @param windFactorSd standard deviation of the wind factor
 * @param sunShareSd standard deviation of the share of the sun that warms the water
 * @param correlation correlation of the two
 * @param errorK standard deviation of what model and log disagree in, K
 * @param fadeHours time in which the correlation of that falls to 1/e, h
 */
public record FittedDoubt(
        String source,
        LocalDate from,
        LocalDate to,
        double windFactorSd,
        double sunShareSd,
        double correlation,
        double errorK,
        double fadeHours) {

    /** Range of {@link #windFactorSd}. */
    public static final Range WIND_SD = Range.number("standard deviation of the fitted wind factor", 0, 1);

    /** Range of {@link #sunShareSd}. */
    public static final Range SUN_SD = Range.number("standard deviation of the fitted share of the sun", 0, 1);

    /** Range of {@link #correlation}. */
    public static final Range CORRELATION = Range.number("correlation of the two", -1, 1);

    /** Range of {@link #errorK}. */
    public static final Range ERROR =
            Range.of("error that the fit left", Dimension.TEMPERATURE_DIFFERENCE, 0, 10);

    /** Range of {@link #fadeHours}. */
    public static final Range FADE = Range.of("time in which that error fades", Dimension.DURATION, "h", 1, 2000);

    /** Checks every range and the order of the days. */
    public FittedDoubt {
        WIND_SD.check(windFactorSd);
        SUN_SD.check(sunShareSd);
        CORRELATION.check(correlation);
        ERROR.check(errorK);
        FADE.check(fadeHours);
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a log ends after it begins, was from " + from + " to " + to);
        }
    }
}
