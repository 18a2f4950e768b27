package dev.warmlane.weather;

import dev.warmlane.units.Checks;
import org.jspecify.annotations.Nullable;

/**
 * What the user knows better than a weather file.
 *
 * @param utcOffsetHours local standard time minus UTC, hours, in place of the file's, or of the one that goes with the
 *     longitude where the file is in UTC; null to take those
 * @param centreHours the time that irradiance belongs to, in hours after the start of its hour, -12 to 12; null to
 *     take the format's convention and test it. A given value is used even where the file does not close with it, and
 *     the year then says so.
 */
public record WeatherReadOptions(
        @Nullable Double utcOffsetHours, @Nullable Double centreHours) {

    private static final WeatherReadOptions DEFAULTS = new WeatherReadOptions(null, null);

    /** Checks the ranges. */
    public WeatherReadOptions {
        if (utcOffsetHours != null) {
            Checks.within("UTC offset", utcOffsetHours, -12, 14, "hours");
        }
        if (centreHours != null) {
            Checks.within("time of irradiance", centreHours, -12, 12, "hours after the start of the hour");
        }
    }

    /** Nothing known beyond the file. */
    public static WeatherReadOptions defaults() {
        return DEFAULTS;
    }

    /** The same with local standard time minus UTC, hours. */
    public WeatherReadOptions withUtcOffsetHours(double hours) {
        return new WeatherReadOptions(hours, centreHours);
    }

    /** The same with the time that irradiance belongs to, in hours after the start of its hour. */
    public WeatherReadOptions withCentreHours(double hours) {
        return new WeatherReadOptions(utcOffsetHours, hours);
    }
}
