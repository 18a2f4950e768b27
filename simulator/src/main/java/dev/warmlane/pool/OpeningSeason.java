package dev.warmlane.pool;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;

/**
 * When the pool is open.
 *
 * @param first first day of the season
 * @param last last day of the season, itself included; before {@code first} the season runs over New Year
 * @param openHours hours of the day in which people may swim: 1 open, 0 closed
 */
public record OpeningSeason(MonthDay first, MonthDay last, Schedule openHours) {

    /** The whole year, starting on 1 January, always open. */
    public static OpeningSeason wholeYear() {
        return new OpeningSeason(MonthDay.of(1, 1), MonthDay.of(12, 31), Schedule.ALWAYS);
    }

    /** The first hour of the season, an hour of the year. */
    public int firstHour() {
        return HourOfYear.startOf(first);
    }

    /** How many hours the season has, 24 to 8760. */
    public int hours() {
        // 29 February starts where 1 March does: a season that ends on it ends there
        boolean leapDay = last.getMonthValue() == 2 && last.getDayOfMonth() == 29;
        int end = HourOfYear.startOf(last) + (leapDay ? 0 : 24);
        int length = Math.floorMod(end - firstHour(), HourOfYear.HOURS);
        return length == 0 ? HourOfYear.HOURS : length;
    }

    /** How many days the season has, 1 to 365. */
    public int days() {
        return hours() / 24;
    }
}
