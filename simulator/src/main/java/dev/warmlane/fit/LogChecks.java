package dev.warmlane.fit;

import dev.warmlane.pool.Flow;
import dev.warmlane.pool.PoolFlows;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.units.Units;
import dev.warmlane.weather.WeatherRecord;
import java.util.Locale;

/** What cannot be a log of this pool's water. */
final class LogChecks {

    /** A log that stays within so much says nothing, K; own choice, three tenths of which a sensor may be wrong by. */
    private static final double FLAT_K = 0.3;

    /** One temperature for so long is a sensor that stands still, h; own choice. */
    private static final double STILL_HOURS = 24 * 7;

    /** Above the fastest that is possible; own choice, well beyond what a sensor is wrong by. */
    private static final double BEYOND_K = 1.5;

    /** So many nights, and so large a share of them, are no accident; own choice. */
    private static final int NIGHTS = 3;

    private static final double NIGHTS_SHARE = 0.2;

    private LogChecks() {}

    static void check(Installation built, WeatherRecord weather, Observations seen) {
        refuseFlat(built, seen);
        refuseOutOfWater(built, weather, seen);
    }

    /** Share of the hours in which the heater gave heat. */
    static double heatedShare(RecordLedger run) {
        int heated = 0;
        for (int hour = 0; hour < run.hours(); hour++) {
            heated += run.heatJm2(Flow.HEATER, hour) > 0 ? 1 : 0;
        }
        return heated / (double) run.hours();
    }

    private static void refuseFlat(Installation built, Observations seen) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int since = 0;
        for (int i = 0; i < seen.waterC.length; i++) {
            low = Math.min(low, seen.waterC[i]);
            high = Math.max(high, seen.waterC[i]);
            since = seen.waterC[i] == seen.waterC[since] ? since : i;
            if (seen.hours[i] - seen.hours[since] > STILL_HOURS) {
                throw new FitRefusal(
                        FitRefusal.Reason.FLAT,
                        "the log stands at " + seen.waterC[i] + " degC from " + seen.stated[since] + " to "
                                + seen.stated[i] + ": the sensor stood still. Leave that time out");
            }
        }
        if (high - low < FLAT_K) {
            throw new FitRefusal(
                    FitRefusal.Reason.FLAT,
                    String.format(
                            Locale.ROOT,
                            "the log stays between %.2f and %.2f degC: it does not say what wind and sun do. %s",
                            low,
                            high,
                            built.heater().isPresent()
                                    ? "Log while the heater rests"
                                    : "Check that the sensor hangs in the pool and that the column is the right one"));
        }
    }

    /** Night by night, the fall that was logged against the fastest that this water can cool in all the wind there is. */
    private static void refuseOutOfWater(Installation built, WeatherRecord weather, Observations seen) {
        Installation windy = new WindAndSun(
                        Outdoor.WIND_FACTOR.highest(), WindAndSun.of(built).sunShare())
                .in(built);
        PoolForcing pool = PoolForcing.of(windy.pool(), windy.cover(), windy.bathers(), windy.makeUp(), weather);
        PoolFlows flows = new PoolFlows();
        int nights = 0;
        int beyond = 0;
        String first = "";
        double worst = 0;
        double worstPossible = 0;
        for (int i = 1; i < seen.hours.length; ) {
            int from = i;
            double possible = 0;
            while (i < seen.hours.length && seen.hours[i] - seen.hours[i - 1] < 2.5 && dark(weather, seen, i)) {
                double water = Math.max(0, seen.waterC[i - 1]);
                pool.evaluate(weather.hourAt(seen.stated[i]), water, 1, flows);
                possible += Math.max(0, -flows.net())
                        * (seen.hours[i] - seen.hours[i - 1])
                        * Units.HOUR
                        / pool.heatCapacityJm2K();
                i++;
            }
            if (i - from >= 4) {
                nights++;
                double fall = seen.waterC[from - 1] - seen.waterC[i - 1];
                if (fall > possible + BEYOND_K) {
                    beyond++;
                    first = first.isEmpty()
                            ? seen.stated[from - 1].toLocalDate().toString()
                            : first;
                    if (fall - possible > worst - worstPossible) {
                        worst = fall;
                        worstPossible = possible;
                    }
                }
            }
            i++;
        }
        if (beyond >= NIGHTS && beyond >= NIGHTS_SHARE * nights) {
            throw new FitRefusal(
                    FitRefusal.Reason.OUT_OF_WATER,
                    String.format(
                            Locale.ROOT,
                            "in %d of %d nights, the first that of %s, the log falls by more than water %.2f m deep can:"
                                    + " once by %.1f K, where %.1f K is possible. The sensor hung out of the water, or the"
                                    + " depth is wrong",
                            beyond,
                            nights,
                            first,
                            built.pool().depthM(),
                            worst,
                            worstPossible));
        }
    }

    private static boolean dark(WeatherRecord weather, Observations seen, int i) {
        return weather.globalHorizontalWm2(weather.hourAt(seen.stated[i])) == 0;
    }
}
