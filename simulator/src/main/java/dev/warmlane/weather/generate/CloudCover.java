package dev.warmlane.weather.generate;

import dev.warmlane.sun.SunPath;

/**
 * Cloud cover from a day's irradiation: Kasten and Czeplak 1980, Solar Energy 24:177-189, from memory. Global irradiance
 * under a cover n (0 to 1) is 1 - 0.75·n^3.4 of that under a cloudless sky, which is 910·sin(h) - 30 W/m².
 */
final class CloudCover {

    private CloudCover() {}

    /** Cover of one day, 0 to 1. */
    static double ofDay(SunPath sun, double[] global, int day) {
        double clear = 0;
        double found = 0;
        for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
            if (sun.isUp(hour)) {
                clear += Math.max(0, 910 * sun.cosZenith(hour) - 30) * sun.upFraction(hour);
                found += global[hour];
            }
        }
        double lost = clear > 0 ? Math.max(0, 1 - found / clear) : 0;
        return Math.min(1, StrictMath.pow(lost / 0.75, 1 / 3.4));
    }
}
