package dev.warmlane.site;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Locale;

/**
 * The hours of a typical year: 8760 of them in local standard time, no 29 February. Hour {@code h} is the interval
 * from {@code h} to {@code h + 1} hours after the start of 1 January.
 */
public final class HourOfYear {

    /** Hours in a typical year. */
    public static final int HOURS = 8760;

    /** Days in a typical year. */
    public static final int DAYS = 365;

    private static final int[] FIRST_DAY_OF_MONTH = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365};

    private static final int[] MONTH_OF_DAY = monthOfDay();

    private HourOfYear() {}

    /** The day of the year, 0 to 364, that an hour lies in. */
    public static int dayOf(int hour) {
        return hour / 24;
    }

    /** The hour of the day, 0 (midnight to one) to 23. */
    public static int hourOfDay(int hour) {
        return hour % 24;
    }

    /** The month, 1 to 12, that an hour lies in. */
    public static int monthOf(int hour) {
        return MONTH_OF_DAY[hour / 24];
    }

    /** The day of the month, 1 to 31, that an hour lies in. */
    public static int dayOfMonth(int hour) {
        return hour / 24 - FIRST_DAY_OF_MONTH[monthOf(hour) - 1] + 1;
    }

    /** The first hour of a month, 1 to 12; {@code firstHourOf(13)} is {@link #HOURS}. */
    public static int firstHourOf(int month) {
        return FIRST_DAY_OF_MONTH[month - 1] * 24;
    }

    /** How many days a month has in a typical year. */
    public static int daysIn(int month) {
        return FIRST_DAY_OF_MONTH[month] - FIRST_DAY_OF_MONTH[month - 1];
    }

    /**
     * The hour that starts at {@code hourOfDay} on a date.
     *
     * @throws DateTimeException if the date is not in a typical year (29 February included) or the hour not in 0-23
     */
    public static int of(int month, int dayOfMonth, int hourOfDay) {
        if (month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > daysIn(month)) {
            throw new DateTimeException(
                    "no such day in a typical year of 365 days: month " + month + ", day " + dayOfMonth);
        }
        if (hourOfDay < 0 || hourOfDay > 23) {
            throw new DateTimeException("hour of day must be 0 to 23, was " + hourOfDay);
        }
        return (FIRST_DAY_OF_MONTH[month - 1] + dayOfMonth - 1) * 24 + hourOfDay;
    }

    /** The first hour of a date; 29 February is taken as 1 March, which a typical year has in its place. */
    public static int startOf(MonthDay date) {
        return date.getMonthValue() == 2 && date.getDayOfMonth() == 29
                ? of(3, 1, 0)
                : of(date.getMonthValue(), date.getDayOfMonth(), 0);
    }

    /** The date that an hour lies in. */
    public static MonthDay dateOf(int hour) {
        return MonthDay.of(monthOf(hour), dayOfMonth(hour));
    }

    /** The hour as a person reads it: {@code 07-14 13:00} is the hour that starts at one in the afternoon. */
    public static String label(int hour) {
        return String.format(Locale.ROOT, "%02d-%02d %02d:00", monthOf(hour), dayOfMonth(hour), hourOfDay(hour));
    }

    private static int[] monthOfDay() {
        int[] month = new int[DAYS];
        for (int m = 1; m <= 12; m++) {
            for (int day = FIRST_DAY_OF_MONTH[m - 1]; day < FIRST_DAY_OF_MONTH[m]; day++) {
                month[day] = m;
            }
        }
        return month;
    }
}
