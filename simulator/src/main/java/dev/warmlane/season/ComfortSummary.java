package dev.warmlane.season;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import java.util.Optional;

/**
 * How often people found the pool warm enough. The rule: a day is at comfort if the mean water temperature over its open
 * hours is at or above the comfort temperature, and too warm if that mean is above the highest comfortable temperature.
 * An hour is open if it lies in the season, not in days before opening, and its schedule of open hours is above 0 in it; a day without open hours is not counted.
 *
 * @param openDays days with at least one open hour
 * @param daysAtComfort days at or above the comfort temperature, the too warm ones included
 * @param daysTooWarm days above the highest comfortable temperature
 * @param openHours open hours
 * @param openHoursAtComfort open hours whose mean temperature is at or above the comfort temperature
 * @param firstDay the first day at comfort
 * @param lastDay the last day at comfort
 */
public record ComfortSummary(
        int openDays,
        int daysAtComfort,
        int daysTooWarm,
        int openHours,
        int openHoursAtComfort,
        Optional<MonthDay> firstDay,
        Optional<MonthDay> lastDay) {

    /**
     * A heater that holds the pool at the comfort temperature holds it there to the last digits only; a millionth of a
     * kelvin keeps rounding from deciding.
     */
    private static final double ROUNDING_K = 1e-6;

    /** Sums up a period of a ledger. */
    public static ComfortSummary of(SeasonLedger ledger, Period period) {
        Installation installation = ledger.installation();
        Schedule open = installation.season().openHours();
        int openDays = 0;
        int daysAtComfort = 0;
        int daysTooWarm = 0;
        int openHours = 0;
        int openHoursAtComfort = 0;
        Optional<MonthDay> first = Optional.empty();
        Optional<MonthDay> last = Optional.empty();
        for (int from = period.from(); from < period.to(); from = TemperatureSummary.nextDay(from)) {
            int to = Math.min(TemperatureSummary.nextDay(from), period.to());
            int hours = 0;
            double sum = 0;
            for (int index = from; index < to; index++) {
                if (index >= ledger.opening() && open.at(ledger.hourOfYear(index)) > 0) {
                    hours++;
                    sum += ledger.waterC(index);
                    openHoursAtComfort += warmEnough(ledger.waterC(index), installation) ? 1 : 0;
                }
            }
            if (hours == 0) {
                continue;
            }
            openDays++;
            openHours += hours;
            double mean = sum / hours;
            daysTooWarm += mean > installation.comfortMaximumC() + ROUNDING_K ? 1 : 0;
            if (warmEnough(mean, installation)) {
                daysAtComfort++;
                last = Optional.of(HourOfYear.dateOf(ledger.hourOfYear(from)));
                first = first.isPresent() ? first : last;
            }
        }
        return new ComfortSummary(openDays, daysAtComfort, daysTooWarm, openHours, openHoursAtComfort, first, last);
    }

    /** Whether water of a temperature is at or above the comfort temperature of an installation. */
    static boolean warmEnough(double waterC, Installation installation) {
        return waterC >= installation.comfortC() - ROUNDING_K;
    }
}
