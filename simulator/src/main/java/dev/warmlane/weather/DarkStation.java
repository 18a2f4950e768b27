package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;

/**
 * Light of a record that reads nothing for hours of daylight on end: a station that stood still writes 0 as well as
 * nothing. No cloud is so dark ({@link Darkness}), so that it is a gap, and filled or refused as one.
 */
final class DarkStation {

    private static final WeatherColumn[] LIGHT = {WeatherColumn.GLOBAL, WeatherColumn.DIRECT, WeatherColumn.DIFFUSE};

    private final HourTable table;
    private final SunPath sun;
    private final double[] global;

    private DarkStation(HourTable table, SunPath sun) {
        this.table = table;
        this.sun = sun;
        this.global = table.column(WeatherColumn.GLOBAL);
    }

    static void takeOut(HourTable table, SunPath sun, Findings findings) {
        new DarkStation(table, sun).takeOut(findings);
    }

    private void takeOut(Findings findings) {
        Occurrences lost = new Occurrences(table);
        int first = -1;
        int daylight = 0;
        for (int hour = 0; hour <= global.length; hour++) {
            if (hour < global.length && (!sun.isUp(hour) || isDark(hour))) {
                first = first < 0 && sun.isUp(hour) ? hour : first;
                daylight += sun.cosZenith(hour) >= Darkness.HIGH_SUN ? 1 : 0;
                continue;
            }
            if (daylight > Darkness.HOURS_AT_MOST) {
                takeOut(first, hour, lost);
            }
            first = -1;
            daylight = 0;
        }
        findings.repair(
                lost,
                "no light at all for more than " + Darkness.HOURS_AT_MOST + " hours of daylight on end, "
                        + lost.count() + " such hours in all, " + (lost.count() == 0 ? "" : lost.places())
                        + ": no cloud is so dark; taken as missing and filled");
    }

    private boolean isDark(int hour) {
        return global[hour] < Darkness.NO_LIGHT_WM2;
    }

    /** Nights between them too, so that the gap is as long as the station stood still. */
    private void takeOut(int from, int to, Occurrences lost) {
        for (int hour = from; hour < to; hour++) {
            lost.add(hour, 0);
            for (WeatherColumn column : LIGHT) {
                if (!Double.isNaN(table.column(column)[hour])) {
                    table.throwOut(column, hour);
                }
            }
        }
    }
}
