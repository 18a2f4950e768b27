package dev.warmlane.weather;

/**
 * What the reader of a message can set, by the names that a scenario and the command {@code weather} have for it; a
 * program has {@link WeatherReadOptions}.
 */
final class Advice {

    static final String UTC_OFFSET =
            "give utc_offset in [site] of the scenario, or --utc-offset to the command weather";
    static final String IRRADIANCE_TIME =
            "give irradiance_time in [site] of the scenario, or --irradiance-time to the command weather";

    private Advice() {}
}
