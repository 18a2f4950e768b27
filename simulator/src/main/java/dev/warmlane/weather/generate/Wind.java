package dev.warmlane.weather.generate;

import dev.warmlane.site.HourOfYear;

/**
 * Wind speed of a generated year: a Weibull distribution in each month, persistent, stronger in the afternoon, then
 * multiplied to the month's mean.
 *
 * <p>The shape is k = 0.94·√V (V the month's mean, m/s): Justus, Hargraves, Mikhail and Graber 1978, Journal of Applied
 * Meteorology 17:350-353, from memory; never below 1. Rhythm and persistence were measured by the project on four
 * typical years in open formats (36 N, 26 N, 44 N and 4 S), whose values stand beside each constant.
 */
final class Wind {

    /** Share of the variance that lasts for days, and the hourly correlations of the slow and the fast part. */
    // Measured correlation of normal scores after 1, 2, 3, 6 and 12 hours, mean of the four: 0.74, 0.64, 0.56, 0.39,
    // 0.21; this sum of two series gives 0.71, 0.59, 0.53, 0.42, 0.27.
    private static final double SLOW_SHARE = 0.65;

    private static final double SLOW_PERSISTENCE = 0.93;
    private static final double FAST_PERSISTENCE = 0.3;

    /** Amplitude of the daily wave over the mean; measured 0.25, 0.30, 0.23, 0.43. */
    private static final double DAILY_WAVE = 0.3;

    /** Hour of the strongest wind; measured 13.3, 14.6, 14.5, 12.9. */
    private static final double STRONGEST_HOUR = 13.8;

    private Wind() {}

    /** Hourly wind speed, m/s. */
    static double[] speeds(MonthlyNormals normals, double solarMinusStandardHours, long seed) {
        double[] slow = Noise.firstOrder(seed, Noise.Stream.SLOW_WIND, HourOfYear.HOURS, SLOW_PERSISTENCE);
        double[] fast = Noise.firstOrder(seed, Noise.Stream.FAST_WIND, HourOfYear.HOURS, FAST_PERSISTENCE);
        double[] speed = new double[HourOfYear.HOURS];
        for (int month = 1; month <= 12; month++) {
            double mean = normals.month(month).windSpeedMs();
            double shape = Math.max(1, 0.94 * Math.sqrt(mean));
            int end = HourOfYear.firstHourOf(month + 1);
            for (int hour = HourOfYear.firstHourOf(month); hour < end; hour++) {
                double deviate = Math.sqrt(SLOW_SHARE) * slow[hour] + Math.sqrt(1 - SLOW_SHARE) * fast[hour];
                double solarHour = HourOfYear.hourOfDay(hour) + 0.5 + solarMinusStandardHours;
                speed[hour] = StrictMath.pow(-StrictMath.log(1 - Noise.probability(deviate)), 1 / shape)
                        * (1 + DAILY_WAVE * StrictMath.cos(2 * Math.PI * (solarHour - STRONGEST_HOUR) / 24));
            }
            double factor = mean / Noise.monthMean(speed, month);
            for (int hour = HourOfYear.firstHourOf(month); hour < end; hour++) {
                speed[hour] *= factor;
            }
        }
        return speed;
    }
}
