package dev.warmlane.weather.generate;

import dev.warmlane.sun.SunPath;

/**
 * Cloud cover from a day's irradiation: Kasten and Czeplak 1980, Solar Energy 24:177-189, from memory. Global irradiance
 * under a cover n (0 to 1) is 1 - 0.75·n^3.4 of that under a cloudless sky, which is 910·sin(h) - 30 W/m². Sums of a day's
 * hours in which the sun is up throughout and higher than 6 degrees; lower sun tells little about cloud.
 */
final class CloudCover {

    private static final double LOWEST_SIN_HEIGHT = 0.1;

    private CloudCover() {}

    /** Cover of one day, 0 to 1. */
    static double ofDay(SunPath sun, double[] global, int day) {
        double clear = 0;
        double found = 0;
        for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
            if (sun.upFraction(hour) == 1 && sun.cosZenith(hour) > LOWEST_SIN_HEIGHT) {
                clear += 910 * sun.cosZenith(hour) - 30;
                found += global[hour];
            }
        }
        double lost = clear > 0 ? Math.max(0, 1 - found / clear) : 0;
        return Math.min(1, StrictMath.pow(lost / 0.75, 1 / 3.4));
    }
}
