package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;
import java.time.MonthDay;

/**
 * How warm the water was. Every value is of hours' mean temperatures, the mean of an hour's start and end.
 *
 * @param meanC mean of all hours, °C
 * @param lowestC lowest hour, °C
 * @param highestC highest hour, °C
 * @param coldestDay the day with the lowest mean over its hours, the first of equals
 * @param warmestDay the day with the highest mean over its hours, the first of equals
 */
public record TemperatureSummary(
        double meanC, double lowestC, double highestC, DayMean coldestDay, DayMean warmestDay) {

    /**
     * A day and its mean water temperature.
     *
     * @param date the day
     * @param meanC mean over the day's hours in the period, °C
     */
    public record DayMean(MonthDay date, double meanC) {}

    /** Sums up a period of a ledger. */
    public static TemperatureSummary of(SeasonLedger ledger, Period period) {
        double sum = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int index = period.from(); index < period.to(); index++) {
            double water = ledger.waterC(index);
            sum += water;
            lowest = Math.min(lowest, water);
            highest = Math.max(highest, water);
        }
        DayMean coldest = dayFrom(ledger, period, period.from());
        DayMean warmest = coldest;
        for (int from = nextDay(period.from()); from < period.to(); from = nextDay(from)) {
            DayMean day = dayFrom(ledger, period, from);
            coldest = day.meanC < coldest.meanC ? day : coldest;
            warmest = day.meanC > warmest.meanC ? day : warmest;
        }
        return new TemperatureSummary(sum / period.hours(), lowest, highest, coldest, warmest);
    }

    /** The index at which the day after that of an index begins: seasons open at midnight. */
    static int nextDay(int index) {
        return (index / 24 + 1) * 24;
    }

    private static DayMean dayFrom(SeasonLedger ledger, Period period, int from) {
        int to = Math.min(nextDay(from), period.to());
        double sum = 0;
        for (int index = from; index < to; index++) {
            sum += ledger.waterC(index);
        }
        return new DayMean(HourOfYear.dateOf(ledger.hourOfYear(from)), sum / (to - from));
    }
}
