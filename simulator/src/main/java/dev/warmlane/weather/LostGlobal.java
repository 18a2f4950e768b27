package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.util.stream.IntStream;

/** Next to no global irradiance beside strong direct or diffuse: none of the three is believed. */
final class LostGlobal {

    /**
     * Direct and diffuse make so much more than a global irradiance of next to nothing, W/m² (own choice: ten times the
     * residual of a sound file).
     */
    private static final double CONTRADICTION_WM2 = 40;

    private LostGlobal() {}

    /** Where a user insists on the hour of the sun, diffuse light alone is held against global: no sun lessens it. */
    static void check(HourTable table, SunPath sun, boolean insisted, Findings findings) throws Refusal {
        double[] global = table.column(WeatherColumn.GLOBAL);
        double[] direct = table.column(WeatherColumn.DIRECT);
        double[] diffuse = table.column(WeatherColumn.DIFFUSE);
        int[] hours = IntStream.range(0, global.length)
                .filter(hour -> {
                    double parts = diffuse[hour] + (insisted ? 0 : direct[hour] * sun.cosZenith(hour));
                    return global[hour] <= ClosureScan.GLOBAL_ABOVE_WM2 && parts - global[hour] > CONTRADICTION_WM2;
                })
                .toArray();
        if (hours.length == 0) {
            return;
        }
        Occurrences lost = new Occurrences(table);
        int run = 0;
        int longest = 0;
        for (int i = 0; i < hours.length; i++) {
            lost.add(hours[i], global[hours[i]]);
            run = i > 0 && hours[i] == hours[i - 1] + 1 ? run + 1 : 1;
            longest = Math.max(longest, run);
        }
        String beside = lost.first() + " W/m² beside direct " + Occurrences.number(direct[hours[0]]) + " and diffuse "
                + Occurrences.number(diffuse[hours[0]]);
        if (longest > IrradianceRepair.DAY_GAP_AT_MOST
                || hours.length > table.hours().missingAtMost()) {
            throw table.refuse(
                    hours[0],
                    WeatherColumn.GLOBAL.label(),
                    beside + ", and the like in " + hours.length + " hours",
                    "diffuse plus direct times the cosine of the sun's zenith angle",
                    "A column lost its values: " + table.remedy() + ".");
        }
        for (int hour : hours) {
            table.throwOut(WeatherColumn.GLOBAL, hour);
            table.throwOut(WeatherColumn.DIRECT, hour);
            table.throwOut(WeatherColumn.DIFFUSE, hour);
        }
        findings.repair(
                lost,
                "global irradiance contradicts direct and diffuse " + lost.places() + " (" + beside
                        + " first): all three taken as missing and filled");
    }
}
