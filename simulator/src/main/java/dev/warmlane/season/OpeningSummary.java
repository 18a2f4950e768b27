package dev.warmlane.season;

import java.time.MonthDay;

/**
 * How the pool opens, with the collectors and without. Both pools start from the same water on the day on which the first of
 * them may be warmed.
 *
 * @param date the day it opens
 * @param days days before it in which collectors or heater may run, 0 where nothing runs before opening
 * @param startC water temperature of both pools at their start, °C
 * @param waterC water temperature at opening with the collectors, °C
 * @param waterWithoutC the same without, °C
 * @param deliveredKwh heat that the collectors delivered until opening, kWh
 * @param boughtKwh what was bought for the heater until opening with the collectors, kWh
 * @param boughtWithoutKwh the same without, kWh
 */
public record OpeningSummary(
        MonthDay date,
        int days,
        double startC,
        double waterC,
        double waterWithoutC,
        double deliveredKwh,
        double boughtKwh,
        double boughtWithoutKwh) {

    /** Sums up a forecast until its opening. */
    static OpeningSummary of(SeasonForecast forecast) {
        SeasonLedger with = forecast.with();
        SeasonLedger without = forecast.without();
        int opening = with.opening();
        double delivered = 0;
        double bought = 0;
        double boughtWithout = 0;
        for (int index = 0; index < opening; index++) {
            delivered += with.deliveredKwh(index);
            bought += with.boughtKwh(index);
            boughtWithout += without.boughtKwh(index);
        }
        return new OpeningSummary(
                forecast.installation().season().first(),
                opening / 24,
                with.waterStartC(0),
                with.waterStartC(opening),
                without.waterStartC(opening),
                delivered,
                bought,
                boughtWithout);
    }

    /** Whether anything may run before opening. */
    public boolean early() {
        return days > 0;
    }
}
