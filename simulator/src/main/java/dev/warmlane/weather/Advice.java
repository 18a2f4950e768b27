package dev.warmlane.weather;

/**
 * What the reader of a message can set, by the names that a scenario and the command {@code weather} have for it; a
 * program has {@link WeatherReadOptions}.
 */
final class Advice {

    static final String UTC_OFFSET =
            "give utc_offset in [site] of the scenario, or --utc-offset to the command weather";
    private static final String IRRADIANCE_TIME =
            "give irradiance_time in [site] of the scenario, or --irradiance-time to the command weather";

    private Advice() {}

    static String utcOffset(HourTable table) {
        return table.sun == null ? UTC_OFFSET : "give it with the site";
    }

    static String irradianceTime(HourTable table) {
        return table.sun == null ? IRRADIANCE_TIME : "give the time that it belongs to with the sun";
    }
}
