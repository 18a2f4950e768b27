package dev.warmlane.pool;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.HourSpan;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;

/**
 * When the pool is open.
 *
 * @param first first day of the season
 * @param last last day of the season, itself included; before {@code first} the season runs over New Year
 * @param openHours hours of the day in which people may swim: 1 open, 0 closed
 * @param before what runs before it opens
 */
public record OpeningSeason(MonthDay first, MonthDay last, Schedule openHours, BeforeOpening before) {

    /** Checks that what runs before it opens begins after it last closed. */
    public OpeningSeason {
        int closed = HourOfYear.DAYS - hours(first, last) / 24;
        if (before.days() > closed) {
            throw new IllegalArgumentException("collectors or heater may run from " + before.days()
                    + " days before opening, but the pool is closed for " + closed + " days of the year only");
        }
    }

    /** A season before which nothing runs. */
    public OpeningSeason(MonthDay first, MonthDay last, Schedule openHours) {
        this(first, last, openHours, BeforeOpening.NOTHING);
    }

    /** The same season, before which something runs. */
    public OpeningSeason after(BeforeOpening value) {
        return new OpeningSeason(first, last, openHours, value);
    }

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
        return hours(first, last);
    }

    /** Hours before opening in which collectors or heater may run. */
    public int leadHours() {
        return before.days() * 24;
    }

    /** The hour of the year from which on anything may run: the first of the season, or one before it. */
    public int beginHour() {
        return Math.floorMod(firstHour() - leadHours(), HourOfYear.HOURS);
    }

    /** The hours in which anything may run. */
    public HourSpan running() {
        return new HourSpan(firstHour(), hours()).from(leadHours());
    }

    private static int hours(MonthDay first, MonthDay last) {
        // 29 February starts where 1 March does: a season that ends on it ends there
        boolean leapDay = last.getMonthValue() == 2 && last.getDayOfMonth() == 29;
        int end = HourOfYear.startOf(last) + (leapDay ? 0 : 24);
        int length = Math.floorMod(end - HourOfYear.startOf(first), HourOfYear.HOURS);
        return length == 0 ? HourOfYear.HOURS : length;
    }

    /** How many days the season has, 1 to 365. */
    public int days() {
        return hours() / 24;
    }
}
