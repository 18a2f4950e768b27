package dev.warmlane.weather.generate;

import dev.warmlane.site.HourOfYear;

/** Curves through the year without steps at the ends of months or at midnight. */
final class SmoothYear {

    /** Rounds of smoothing; own choice. After 31 the ends of months still have twice the slope beside them. */
    private static final int ROUNDS = 400;

    private SmoothYear() {}

    /**
     * Daily values that change smoothly through the year and whose mean in each month is the month's value: Rymes and
     * Myers 2001, Solar Energy 71:225-231, from memory. Again and again each day takes the mean of itself and its
     * neighbours, then each month is shifted back to its mean.
     *
     * @param months twelve values, January first
     */
    static double[] days(double[] months) {
        double[] day = new double[HourOfYear.DAYS];
        for (int d = 0; d < day.length; d++) {
            day[d] = months[HourOfYear.monthOf(24 * d) - 1];
        }
        for (int round = 0; round < ROUNDS; round++) {
            double[] smooth = new double[day.length];
            for (int d = 0; d < day.length; d++) {
                smooth[d] = (day[(d + day.length - 1) % day.length] + day[d] + day[(d + 1) % day.length]) / 3;
            }
            shiftToMeans(smooth, months);
            day = smooth;
        }
        return day;
    }

    /** The value in the middle of an hour on straight lines between the noons of days, the year closed to a ring. */
    static double atHour(double[] days, int hour) {
        double sinceNoon = (hour + 0.5 - 12) / 24;
        int before = (int) Math.floor(sinceNoon);
        double share = sinceNoon - before;
        return (1 - share) * days[Math.floorMod(before, days.length)]
                + share * days[Math.floorMod(before + 1, days.length)];
    }

    private static void shiftToMeans(double[] days, double[] months) {
        for (int month = 1; month <= 12; month++) {
            int from = HourOfYear.firstHourOf(month) / 24;
            int to = HourOfYear.firstHourOf(month + 1) / 24;
            double sum = 0;
            for (int d = from; d < to; d++) {
                sum += days[d];
            }
            double shift = months[month - 1] - sum / (to - from);
            for (int d = from; d < to; d++) {
                days[d] += shift;
            }
        }
    }
}
