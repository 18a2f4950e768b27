package dev.warmlane.weather.generate;

import dev.warmlane.site.HourOfYear;

/**
 * Dew point of a generated year: a smooth course through the months and a persistent random part that follows the random
 * part of the air temperature and falls on clear days; never above the air temperature. The month means are met exactly:
 * each month is shifted until it has its mean with that limit in force.
 *
 * <p>No published set of these correlations was found. They were measured by the project on daily means, departures from
 * the month, of four typical years in open formats (36 N, 26 N, 44 N, 4 S); the values stand beside each constant.
 */
final class DewPoint {

    /** Spread of the dew point over that of the air temperature; measured 1.23, 1.59, 1.13, 0.79. */
    private static final double RELATIVE_SPREAD = 1.2;

    /** Correlation with air temperature; measured 0.79, 0.86, 0.92 and, near the equator, 0.13. */
    private static final double WITH_TEMPERATURE = 0.8;

    /** Correlation with the day's clearness; measured -0.38, -0.35, -0.52, -0.23. */
    private static final double WITH_CLEARNESS = -0.37;

    /** Hourly persistence of the part of its own; measured on the whole 0.986, 0.977, 0.982 and 0.753. */
    private static final double PERSISTENCE = 0.98;

    private static final double SHIFT_LIMIT_K = 100;
    private static final int HALVINGS = 60;

    private DewPoint() {}

    /** Hourly dew point, °C. */
    static double[] dewPointC(MonthlyNormals normals, AirTemperature air, double[] dailyDeviate, long seed) {
        double own = Math.sqrt(1 - WITH_TEMPERATURE * WITH_TEMPERATURE - WITH_CLEARNESS * WITH_CLEARNESS);
        double[] noise = Noise.firstOrder(seed, Noise.Stream.DEW_POINT, HourOfYear.HOURS, PERSISTENCE);
        double[] dew = new double[HourOfYear.HOURS];
        for (int hour = 0; hour < dew.length; hour++) {
            double deviate = WITH_TEMPERATURE * air.deviate()[hour]
                    + WITH_CLEARNESS * SmoothYear.atHour(dailyDeviate, hour)
                    + own * noise[hour];
            dew[hour] = RELATIVE_SPREAD * air.spreadK(HourOfYear.monthOf(hour)) * deviate;
        }
        double[] means = new double[12];
        for (int m = 0; m < 12; m++) {
            means[m] = normals.month(m + 1).dewPointC();
        }
        AirTemperature.addToMeans(dew, means);
        for (int month = 1; month <= 12; month++) {
            limit(dew, air.temperatureC(), month, means[month - 1]);
        }
        return dew;
    }

    private static void limit(double[] dew, double[] air, int month, double wanted) {
        int from = HourOfYear.firstHourOf(month);
        int to = HourOfYear.firstHourOf(month + 1);
        double low = 0;
        double high = SHIFT_LIMIT_K;
        for (int i = 0; i < HALVINGS; i++) {
            double shift = (low + high) / 2;
            double sum = 0;
            for (int hour = from; hour < to; hour++) {
                sum += Math.min(air[hour], dew[hour] + shift);
            }
            if (sum < wanted * (to - from)) {
                low = shift;
            } else {
                high = shift;
            }
        }
        for (int hour = from; hour < to; hour++) {
            dew[hour] = Math.min(air[hour], dew[hour] + high);
        }
    }
}
