package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherFinding.Kind;

/**
 * No light at all while the sun is up. Satellites take the thickest cloud for night, so that a storm or a day of it is
 * told and kept; where days on end are dark no cloud did it and values were lost.
 */
final class Darkness {

    /** The sun 6 degrees up; 0.5 W/m² is then 0.4 % of the light outside the atmosphere. */
    static final double HIGH_SUN = 0.1;
    /**
     * What rounds to nothing, W/m². Thick cloud lets about 1/(1 + 0.11 τ) through (two streams, asymmetry 0.85): 0.4 %
     * asks for an optical thickness τ of 2,000, and thunderclouds have some hundreds.
     */
    static final double NO_LIGHT_WM2 = 0.5;
    /** The longest in a generated year is two hours. */
    static final int HOURS_AT_MOST = 3;
    /**
     * Whole days on end. The weather of middle latitudes comes in waves of three to seven days (from memory of any
     * textbook of meteorology), and half of a wave at most is rising, cloudy air: three and a half days. A published year
     * from satellites has two.
     */
    private static final int DAYS_ON_END_AT_MOST = 3;
    /** No year's sum of global irradiance is known better (own choice): what costs more of it is a warning. */
    private static final double SHARE_NOTED = 0.02;

    private final HourTable table;
    private final SunPath sun;
    private final Findings findings;
    private final double[] global;

    private Darkness(HourTable table, SunPath sun, Findings findings) {
        this.table = table;
        this.sun = sun;
        this.findings = findings;
        this.global = table.column(WeatherColumn.GLOBAL);
    }

    /** Where a user insists on the hour of the sun against the file, days without any light are looked for alone. */
    static void check(HourTable table, SunPath sun, boolean insisted, Findings findings) throws Refusal {
        Darkness darkness = new Darkness(table, sun, findings);
        darkness.days(insisted);
        if (!insisted) {
            darkness.hours();
        }
    }

    private void days(boolean insisted) throws Refusal {
        int first = -1;
        int run = 0;
        for (int start = 0; start <= HourOfYear.HOURS; start += 24) {
            boolean end = start == HourOfYear.HOURS;
            int up = end ? 0 : daylight(start, false);
            if (!end && up == 0) {
                continue; // a winter day of the far north tells nothing
            }
            if (!end && daylight(start, true) == up && !(insisted && hasLight(start))) {
                first = run++ == 0 ? start : first;
                continue;
            }
            if (run > DAYS_ON_END_AT_MOST) {
                throw table.refuse(
                        first,
                        WeatherColumn.GLOBAL.label(),
                        "no light at all on " + run + " days on end from "
                                + HourOfYear.label(first).substring(0, 5),
                        "some light under any cloud",
                        "The values were lost: " + table.remedy() + ".");
            }
            run = 0;
        }
    }

    /** Hours of a day with the sun well up: all, or those without light. */
    private int daylight(int start, boolean dark) {
        int count = 0;
        for (int hour = start; hour < start + 24; hour++) {
            if (sun.cosZenith(hour) >= HIGH_SUN && (!dark || global[hour] < NO_LIGHT_WM2)) {
                count++;
            }
        }
        return count;
    }

    private boolean hasLight(int start) {
        for (int hour = start; hour < start + 24; hour++) {
            if (!(global[hour] < NO_LIGHT_WM2)) {
                return true;
            }
        }
        return false;
    }

    private void hours() throws Refusal {
        LightOutside outside = new LightOutside(table, sun);
        Occurrences dark = new Occurrences(table);
        double lost = 0;
        double all = 0;
        int daylight = 0;
        int longest = 0;
        int longestFrom = 0;
        int[] run = new int[HourOfYear.HOURS];
        int length = 0;
        for (int hour = 0; hour <= HourOfYear.HOURS; hour++) {
            boolean end = hour == HourOfYear.HOURS;
            if (!end && sun.cosZenith(hour) < HIGH_SUN) {
                continue;
            }
            if (!end) {
                daylight++;
                all += outside.wh(hour);
            }
            if (!end && global[hour] < NO_LIGHT_WM2) {
                run[length++] = hour;
                continue;
            }
            for (int i = 0; length > HOURS_AT_MOST && i < length; i++) {
                dark.add(run[i], global[run[i]]);
                lost += outside.wh(run[i]);
            }
            if (length > longest) {
                longest = length;
                longestFrom = run[0];
            }
            length = 0;
        }
        if (dark.count() == 0) {
            return;
        }
        String found = "no light for " + longest + " hours of daylight on end from " + HourOfYear.label(longestFrom)
                + (dark.count() > longest ? ", and " + dark.count() + " such hours in all" : "");
        if (dark.count() * 20 > daylight) {
            throw table.refuse(
                    longestFrom,
                    WeatherColumn.GLOBAL.label(),
                    found,
                    "some light under any cloud",
                    "The values were lost: " + table.remedy() + ".");
        }
        findings.add(
                lost > SHARE_NOTED * all ? Kind.WARNING : Kind.NOTE,
                dark,
                found + " (" + table.at(longestFrom) + "): kept, but no cloud is so dark; values were lost, or a"
                        + " satellite took thick cloud for night");
    }
}
