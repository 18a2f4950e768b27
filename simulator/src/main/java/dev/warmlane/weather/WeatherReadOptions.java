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
 * @param windHeightM height above open ground that the file's wind was measured at, m; null to take the file's, or 10 m
 */
public record WeatherReadOptions(
        @Nullable Double utcOffsetHours,
        @Nullable Double centreHours,
        @Nullable Double windHeightM) {

    /** Range of {@link #centreHours}. */
    public static final Range CENTRE =
            Range.of("time of irradiance after the start of its hour", Dimension.DURATION, "h", -12, 12);

    /** Range of {@link #windHeightM}. */
    public static final Range WIND_HEIGHT =
            Range.of("height of the wind above the ground", Dimension.LENGTH, "m", 1, 200);

    /** Height that wind is measured at where nothing else is said, m (WMO-No. 8, from memory). */
    static final double USUAL_WIND_HEIGHT_M = 10;

    private static final WeatherReadOptions DEFAULTS = new WeatherReadOptions(null, null, null);

    /** Checks the ranges. */
    public WeatherReadOptions {
        if (utcOffsetHours != null) {
            Site.UTC_OFFSET.check(utcOffsetHours);
        }
        if (centreHours != null) {
            CENTRE.check(centreHours);
        }
        if (windHeightM != null) {
            WIND_HEIGHT.check(windHeightM);
        }
    }

    /** Nothing known beyond the file. */
    public static WeatherReadOptions defaults() {
        return DEFAULTS;
    }

    /** The same with local standard time minus UTC, hours. */
    public WeatherReadOptions withUtcOffsetHours(double hours) {
        return new WeatherReadOptions(hours, centreHours, windHeightM);
    }

    /** The same with the time that irradiance belongs to, in hours after the start of its hour. */
    public WeatherReadOptions withCentreHours(double hours) {
        return new WeatherReadOptions(utcOffsetHours, hours, windHeightM);
    }

    /** The same with the height that the file's wind was measured at, m above open ground. */
    public WeatherReadOptions withWindHeightM(double heightM) {
        return new WeatherReadOptions(utcOffsetHours, centreHours, heightM);
    }
}
