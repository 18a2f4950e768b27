package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.Set;

/**
 * Humidity for a format that never has any: the dew point of a day is the lowest air temperature of it, at which dew falls
 * in a humid climate (Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56, equation 48, read as a
 * text quotes it). Too humid in dry lands.
 */
final class DewPointGuess {

    /** Formats that have no humidity at all; a file of another one has lost it. */
    private static final Set<String> WITHOUT_HUMIDITY = Set.of(PvgisHourlyFormat.TITLE);

    private DewPointGuess() {}

    static void fill(HourTable table, Findings findings) {
        if (!WITHOUT_HUMIDITY.contains(table.header.format())) {
            return;
        }
        double[] air = table.column(WeatherColumn.AIR);
        double[] dew = table.column(WeatherColumn.DEW);
        table.declared.add(WeatherColumn.DEW);
        for (int day = 0; day < HourOfYear.DAYS; day++) {
            double lowest = Double.NaN;
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                double value = air[hour];
                lowest = Double.isNaN(lowest) || value < lowest ? value : lowest;
            }
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                dew[hour] = lowest;
            }
        }
        findings.gravest(
                0,
                0,
                "the file has no humidity: each day's dew point is taken as its lowest air temperature (FAO 56), which"
                        + " decides what evaporates from the water and is too humid in dry lands, by half in one of the years"
                        + " of docs/formats.md; where humidity is known"
                        + " for the place, as in a typical year of the same publisher, take that");
    }
}
