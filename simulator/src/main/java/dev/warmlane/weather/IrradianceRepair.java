package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.util.BitSet;

/** The last steps on irradiance, when the sun is known: nights, and short gaps by day. */
final class IrradianceRepair {

    /** Three hours of daylight: clearness over longer gaps is a guess. */
    static final int DAY_GAP_AT_MOST = 3;
    /** Diffuse light before sunrise and after sunset is real but faint, W/m². */
    private static final double TWILIGHT_WM2 = 15;

    private IrradianceRepair() {}

    static void repair(HourTable table, SunPath sun, Findings findings) throws Refusal {
        nights(table, sun, findings);
        for (WeatherColumn column :
                new WeatherColumn[] {WeatherColumn.GLOBAL, WeatherColumn.DIRECT, WeatherColumn.DIFFUSE}) {
            gaps(table, column, sun, findings);
        }
    }

    private static void nights(HourTable table, SunPath sun, Findings findings) {
        double[] direct = table.column(WeatherColumn.DIRECT);
        double[] global = table.column(WeatherColumn.GLOBAL);
        Occurrences beam = new Occurrences(table);
        Occurrences light = new Occurrences(table);
        for (int hour = 0; hour < global.length; hour++) {
            if (sun.isUp(hour)) {
                continue;
            }
            if (direct[hour] > 0) {
                beam.add(hour, direct[hour]);
                direct[hour] = 0;
            }
            if (global[hour] > TWILIGHT_WM2) {
                light.add(hour, global[hour]);
            }
        }
        findings.repair(
                beam, "direct irradiance at night " + beam.places() + " (" + beam.first() + " W/m² first): set to 0");
        findings.warning(
                light,
                "global irradiance at night " + light.places() + " (" + light.first()
                        + " W/m² first): kept, but the labels or the place may be wrong");
    }

    /** At night a missing value is 0; by day the share of the extraterrestrial irradiance is drawn as a line. */
    private static void gaps(HourTable table, WeatherColumn column, SunPath sun, Findings findings) throws Refusal {
        double[] values = table.column(column);
        Occurrences untold = new Occurrences(table);
        BitSet without = GapFiller.without(values);
        int most = Math.max(DAY_GAP_AT_MOST, table.hours().options().gapHours());
        int longest = 0;
        for (int hour = 0; hour < values.length; hour++) {
            if (Double.isNaN(values[hour]) && !sun.isUp(hour)) {
                note(table, column, hour, untold);
                values[hour] = 0;
            }
        }
        for (int hour = 0; hour < values.length; hour++) {
            if (!Double.isNaN(values[hour])) {
                continue;
            }
            int end = hour;
            while (end < values.length && Double.isNaN(values[end])) {
                note(table, column, end, untold);
                end++;
            }
            if (end - hour > DAY_GAP_AT_MOST) {
                int all = gapAround(without, hour);
                if (most <= GapFiller.LINE_AT_MOST || all > most) {
                    throw GapFiller.tooLong(table, column, hour, Math.max(all, end - hour));
                }
                longest = Math.max(longest, all);
                for (int i = hour; i < end; i++) {
                    values[i] = outside(column, sun, i)
                            * GapFiller.fromDays(table, column, i, without, which -> share(values, column, sun, which));
                }
                continue;
            }
            double before = hour == 0 ? 0 : share(values, column, sun, hour - 1);
            double after = end == values.length ? 0 : share(values, column, sun, end);
            for (int i = hour; i < end; i++) {
                double share = before + (after - before) * (i - hour + 1) / (end - hour + 1);
                values[i] = share * outside(column, sun, i);
            }
        }
        if (untold.count() > 0) {
            findings.repair(
                    untold,
                    "missing " + column.label() + " " + untold.places()
                            + ": 0 at night; by day filled with the clearness of the hours before and after"
                            + GapFiller.longer(longest));
        }
    }

    /** Length of the gap that an hour without a value lies in, nights included. */
    private static int gapAround(BitSet without, int hour) {
        return without.nextClearBit(hour) - without.previousClearBit(hour) - 1;
    }

    private static void note(HourTable table, WeatherColumn column, int hour, Occurrences untold) {
        table.filled(column, hour);
        if (!table.isTold(column, hour)) {
            untold.add(hour, 0);
        }
    }

    private static double share(double[] values, WeatherColumn column, SunPath sun, int hour) {
        double outside = outside(column, sun, hour);
        return outside < TWILIGHT_WM2 ? 0 : Math.min(1, values[hour] / outside);
    }

    private static double outside(WeatherColumn column, SunPath sun, int hour) {
        double normal = sun.extraterrestrialNormalWm2(hour);
        return column == WeatherColumn.DIRECT ? normal : normal * sun.cosZenith(hour) * sun.upFraction(hour);
    }
}
