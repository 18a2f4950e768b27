package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.util.Arrays;

/**
 * Cloud cover of a day from its global irradiance, after Kasten and Czeplak 1980 (Solar Energy 24:177-189; from
 * memory): G = G0 (1 - 0.75 n^3.4) with the cover n of 0 to 1 and G0 = 910 cos z - 30 W/m² under a clear sky, measured at
 * Hamburg. Solved for n with the day's sums; a day brighter than G0 is clear, one darker than a quarter of it is overcast.
 */
final class CloudEstimate {

    private static final double CLEAR_SLOPE_WM2 = 910;
    private static final double CLEAR_OFFSET_WM2 = 30;
    private static final double DEPTH = 0.75;
    private static final double EXPONENT = 3.4;
    /** Lower sun tells little about cloud. */
    private static final double COS_ZENITH_AT_LEAST = 0.1;

    private CloudEstimate() {}

    /**
     * Cover, 0 to 1, for each hour: the same through a day, and that of the day before where the sun stays down.
     *
     * @param startHour the hour of the day that the first hour is
     */
    static double[] cover(double[] globalWm2, SunPath sun, int startHour) {
        double[] cover = new double[globalWm2.length];
        double ofDay = 0.5;
        for (int midnight = -startHour; midnight < cover.length; midnight += 24) {
            int from = Math.max(0, midnight);
            int to = Math.min(cover.length, midnight + 24);
            double measured = 0;
            double clear = 0;
            for (int hour = from; hour < to; hour++) {
                if (sun.cosZenith(hour) > COS_ZENITH_AT_LEAST && sun.upFraction(hour) == 1) {
                    measured += globalWm2[hour];
                    clear += CLEAR_SLOPE_WM2 * sun.cosZenith(hour) - CLEAR_OFFSET_WM2;
                }
            }
            if (clear > 0) {
                double lost = Math.max(0, 1 - measured / clear);
                ofDay = Math.min(1, StrictMath.pow(lost / DEPTH, 1 / EXPONENT));
            }
            Arrays.fill(cover, from, to, ofDay);
        }
        return cover;
    }
}
