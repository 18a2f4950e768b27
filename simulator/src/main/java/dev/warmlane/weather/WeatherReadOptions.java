package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import org.jspecify.annotations.Nullable;

/**
 * What the user knows better than a weather file.
 *
 * @param utcOffsetHours local standard time minus UTC, hours, in place of the file's, or of the one that goes with the
 *     longitude where the file is in UTC; null to take those
 * @param centreHours the time that irradiance belongs to, in hours after the start of its hour; null to
 *     take the format's convention and test it. A given value is used even where the file does not close with it, and
 *     the year then says so.
 */
public record WeatherReadOptions(
        @Nullable Double utcOffsetHours, @Nullable Double centreHours) {

    /** Range of {@link #centreHours}. */
    public static final Range CENTRE =
            Range.of("time of irradiance after the start of its hour", Dimension.DURATION, "h", -12, 12);

    private static final WeatherReadOptions DEFAULTS = new WeatherReadOptions(null, null);

    /** Checks the ranges. */
    public WeatherReadOptions {
        if (utcOffsetHours != null) {
            Site.UTC_OFFSET.check(utcOffsetHours);
        }
        if (centreHours != null) {
            CENTRE.check(centreHours);
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
