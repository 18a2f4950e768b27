package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;

/**
 * Asks of light whose parts say nothing of the clock whether it comes about noon: on clear days the middle of the light is
 * that of the sun's. Afternoon clouds move it by minutes, an hour of a wrong clock by an hour.
 */
final class NoonCheck {

    /** Own choice: half of the hour that a wrong clock or label makes. */
    private static final double OFF_AT_MOST_H = 0.5;
    /** Of the light outside the atmosphere: days this bright have few clouds (own choice). */
    private static final double CLEAR_DAY = 0.6;

    private NoonCheck() {}

    static void check(HourTable table, SunPath sun, Findings findings) {
        double late = lateHours(table, sun);
        if (Math.abs(late) > OFF_AT_MOST_H) {
            findings.gravest(
                    0,
                    0,
                    "on clear days the middle of the light is " + ClockWords.later(late)
                            + " than that of the sun: is the clock that of daylight saving time, the UTC offset wrong, or is"
                            + " the label the other end of the hour? Correct it, or "
                            + Advice.irradianceTime(table));
        }
    }

    /** How much later than the sun's the light of clear days comes, hours; 0 where no day is clear. */
    static double lateHours(HourTable table, SunPath sun) {
        double[] global = table.column(WeatherColumn.GLOBAL);
        double sum = 0;
        int days = 0;
        int start = table.hours().ofDay(0);
        for (int day = start == 0 ? 0 : 1; 24 * day + 24 - start <= global.length; day++) {
            double light = 0;
            double lightTime = 0;
            double outside = 0;
            double outsideTime = 0;
            for (int of = 0; of < 24; of++) {
                int hour = 24 * day + of - start;
                double there = sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
                light += global[hour];
                lightTime += global[hour] * of;
                outside += there;
                outsideTime += there * of;
            }
            if (light > CLEAR_DAY * outside && light > 0) {
                sum += lightTime / light - outsideTime / outside;
                days++;
            }
        }
        return days == 0 ? 0 : sum / days;
    }
}
