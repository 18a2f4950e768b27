package dev.warmlane.collector;

import dev.warmlane.irradiance.LightPast;
import dev.warmlane.irradiance.Plane;
import dev.warmlane.physics.Constants;
import dev.warmlane.weather.HourlyWeather;

/**
 * What reaches the level roof, or ground, that collectors are above: it stands behind the same horizon and among the same
 * obstacles as they do, so that as much of it is lit as of them. What hides sky gives no light and radiates as black as air
 * is warm.
 */
final class LightOnRoof {

    private final HourlyWeather weather;
    private final LightPast past;
    private final double open;

    LightOnRoof(HourlyWeather weather, LightPast past) {
        this.weather = weather;
        this.past = past;
        this.open = past.skylines().skyShare(Plane.HORIZONTAL);
    }

    /** Beam, W/m². */
    double beamWm2(int hour) {
        return past.lit(hour) * weather.beamHorizontalWm2(hour);
    }

    /** Light of the sky, all of it taken as even, W/m². */
    double diffuseWm2(int hour) {
        return open * (weather.globalHorizontalWm2(hour) - weather.beamHorizontalWm2(hour));
    }

    /** Long-wave, W/m². */
    double longWaveWm2(int hour) {
        return open * weather.skyLongWaveWm2(hour) + (1 - open) * Constants.blackBody(weather.airTemperatureC(hour));
    }

    /** Share of all light that reaches it, 0 to 1. */
    double share(int hour) {
        double global = weather.globalHorizontalWm2(hour);
        return past.isOpen() || global <= 0 ? 1 : (beamWm2(hour) + diffuseWm2(hour)) / global;
    }
}
