/**
 * A typical year of weather: reading it, checking it, generating it.
 *
 * <p>{@link dev.warmlane.weather.WeatherFiles} reads a file. A class for each format turns text into rows; from there
 * all formats go one way, a step a class: time, impossible values, closure and the sun, irradiance, gaps, humidity,
 * pressure, long-wave. The result is a {@link dev.warmlane.weather.WeatherYear} with its findings.
 */
@NullMarked
package dev.warmlane.weather;

import org.jspecify.annotations.NullMarked;
