package dev.warmlane.weather;

import dev.warmlane.physics.StandardAtmosphere;
import java.util.Arrays;

/** Completes pressure, of which 1 % moves the demo's solar heat by 0.2 %: the standard atmosphere where a file has none, the mean in gaps. */
final class Pressure {

    /** Own choice: a year's mean further off is that of another height, some 400 m away, or in another unit. */
    private static final double MEAN_OFF_AT_MOST = 0.05;

    private Pressure() {}

    static void resolve(HourTable table, Findings findings) {
        double[] pressure = table.column(WeatherColumn.PRESSURE);
        double standard = StandardAtmosphere.pressureKpa(table.site.elevationM());
        double mean =
                Arrays.stream(pressure).filter(p -> !Double.isNaN(p)).average().orElse(Double.NaN);
        if (Double.isNaN(mean)) {
            Arrays.fill(pressure, standard);
            findings.note(
                    0,
                    pressure.length,
                    table.sourceWord() + " has no pressure: that of the standard atmosphere at its height is used");
            return;
        }
        if (Math.abs(mean / standard - 1) > MEAN_OFF_AT_MOST) {
            findings.warning(
                    table.header.siteLine(),
                    0,
                    "mean pressure is " + Occurrences.number(mean) + " kPa, but the standard atmosphere has "
                            + Occurrences.number(standard) + " at the height of the header ("
                            + Occurrences.number(table.site.elevationM())
                            + " m): the height is wrong, or pressure was reduced to sea level");
        }
        Occurrences filled = new Occurrences(table);
        for (int hour = 0; hour < pressure.length; hour++) {
            if (Double.isNaN(pressure[hour])) {
                if (!table.isTold(WeatherColumn.PRESSURE, hour)) {
                    filled.add(hour, mean);
                }
                pressure[hour] = mean;
            }
        }
        findings.repair(
                filled,
                "missing pressure " + filled.places() + ": the " + table.hours().word() + "'s mean, "
                        + Occurrences.number(mean) + " kPa, is used");
    }
}
