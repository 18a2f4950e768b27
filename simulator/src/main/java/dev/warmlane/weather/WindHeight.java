package dev.warmlane.weather;

import dev.warmlane.site.Terrain;
import java.util.Locale;

/**
 * Carries wind that was measured at another height to the 10 m over open ground that a year has: the power law of the
 * wind profile with the exponent of {@link Terrain#OPEN}, as it is used from there to roof and water.
 */
final class WindHeight {

    private WindHeight() {}

    static void carry(HourTable table, WeatherReadOptions options, Findings findings) {
        Double given = options.windHeightM();
        double height = given != null ? given : table.windHeightM;
        if (height == WeatherReadOptions.USUAL_WIND_HEIGHT_M) {
            return;
        }
        double factor = toTenMetres(height);
        double[] wind = table.column(WeatherColumn.WIND);
        for (int hour = 0; hour < wind.length; hour++) {
            wind[hour] *= factor;
        }
        findings.note(
                0,
                wind.length,
                String.format(
                        Locale.ROOT,
                        "wind was measured at %s m: times %.3f it is that at 10 m over open ground, from which roof and"
                                + " water get theirs (power law, exponent %s)",
                        Occurrences.number(height),
                        factor,
                        Occurrences.number(Terrain.OPEN.exponent())));
    }

    static double toTenMetres(double heightM) {
        return Math.pow(WeatherReadOptions.USUAL_WIND_HEIGHT_M / heightM, Terrain.OPEN.exponent());
    }
}
