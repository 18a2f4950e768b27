package dev.warmlane.season;

import dev.warmlane.pool.Flow;
import dev.warmlane.site.Schedule;

/**
 * What collectors do for the days of a season where days at comfort cannot say it, because the heater holds comfort with
 * and without them. Days are those with open hours.
 *
 * @param openDays days with open hours
 * @param twoWarmer of these, days whose mean over the open hours is 2 K or more above that without collectors
 * @param withoutHeater days in which the heater gave nothing, with the collectors; all of them where there is none
 * @param withoutHeaterBefore the same without collectors
 */
public record WarmDays(int openDays, int twoWarmer, int withoutHeater, int withoutHeaterBefore) {

    /** What people feel when they go into the water, K; own choice. */
    private static final double WARMER_K = 2;

    /** Counts the days of a forecast. */
    public static WarmDays of(SeasonForecast forecast) {
        SeasonLedger with = forecast.with();
        Schedule open = forecast.installation().season().openHours();
        int openDays = 0;
        int warmer = 0;
        int free = 0;
        int freeBefore = 0;
        for (Period day : Periods.days(with)) {
            if (day.from() < with.opening()) {
                continue;
            }
            int hours = 0;
            double gainedKh = 0;
            for (int index = day.from(); index < day.to(); index++) {
                if (open.at(with.hourOfYear(index)) > 0) {
                    hours++;
                    gainedKh += with.waterC(index) - forecast.without().waterC(index);
                }
            }
            if (hours > 0) {
                openDays++;
                warmer += gainedKh >= WARMER_K * hours ? 1 : 0;
                free += with.heatKwh(Flow.HEATER, day) == 0 ? 1 : 0;
                freeBefore += forecast.without().heatKwh(Flow.HEATER, day) == 0 ? 1 : 0;
            }
        }
        return new WarmDays(openDays, warmer, free, freeBefore);
    }
}
