package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.Period;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.wind.WindProfile;
import java.util.ArrayList;
import java.util.List;

/**
 * Wind and water of a season while its first array gave heat, means weighted by that heat.
 *
 * @param undisturbedMs wind at the roof's height as it would be without the roof, m/s; 0 without any heat
 * @param waterC temperature of the water, °C
 * @param days the days that gave heat
 */
record SeasonDays(double undisturbedMs, double waterC, List<Measured> days) {

    /**
     * The same of a day.
     *
     * @param date month and day
     * @param heatKwh heat of the day, kWh, above 0
     * @param undisturbedMs wind, m/s
     * @param waterC water, °C
     */
    record Measured(String date, double heatKwh, double undisturbedMs, double waterC) {}

    /** The season of a flat array from opening on. */
    static SeasonDays of(MountingDuel duel) {
        SeasonLedger ledger = duel.flatSeason();
        Installation built = ledger.installation();
        double profile = WindProfile.ratio(built.terrain(), built.roof().heightM());
        List<Measured> days = new ArrayList<>();
        double heat = 0;
        double wind = 0;
        double water = 0;
        for (Period day : Periods.days(ledger)) {
            double heatOfDay = 0;
            double windOfDay = 0;
            double waterOfDay = 0;
            for (int index = Math.max(ledger.opening(), day.from()); index < day.to(); index++) {
                double kwh = Math.max(0, ledger.arrayHeatKwh(0, index));
                heatOfDay += kwh;
                windOfDay += kwh * profile * duel.weather().windSpeedMs(ledger.hourOfYear(index));
                waterOfDay += kwh * ledger.waterC(index);
            }
            if (heatOfDay > 0) {
                days.add(new Measured(day.label(), heatOfDay, windOfDay / heatOfDay, waterOfDay / heatOfDay));
                heat += heatOfDay;
                wind += windOfDay;
                water += waterOfDay;
            }
        }
        return new SeasonDays(heat > 0 ? wind / heat : 0, heat > 0 ? water / heat : 0, days);
    }
}
