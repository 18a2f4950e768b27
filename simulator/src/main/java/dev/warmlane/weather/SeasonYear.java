package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.List;
import java.util.Locale;

/**
 * Twelve months of real weather that begin at an hour of one year and end before that hour of the next, as a season that
 * runs over New Year needs them; or a calendar year, where they begin with it. The weather is put together when it is
 * asked for.
 *
 * @param begins the year they begin in
 * @param ends the year they end in; the same for a calendar year
 * @param firstHour the hour of the year they begin at, 0 for a calendar year
 */
public record SeasonYear(RealYear begins, RealYear ends, int firstHour) {

    /** What a person calls it: {@code 2005}, or {@code 2005/06}. */
    public String label() {
        int year = begins.calendarYear();
        return firstHour == 0
                ? Integer.toString(year)
                : String.format(Locale.ROOT, "%d/%02d", year, ends.calendarYear() % 100);
    }

    /** Its weather, made anew each time that two years have to be put together. */
    public WeatherYear weather() {
        if (firstHour == 0) {
            return begins.weather();
        }
        int[] yearOfHour = new int[HourOfYear.HOURS];
        for (int hour = 0; hour < firstHour; hour++) {
            yearOfHour[hour] = 1;
        }
        return new WeatherSplice(
                        List.of(begins.weather(), ends.weather()),
                        yearOfHour,
                        begins.weather().source() + ", and " + ends.weather().source() + " from 1 January",
                        begins.weather().findings())
                .year();
    }
}
