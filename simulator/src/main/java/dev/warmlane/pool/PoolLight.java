package dev.warmlane.pool;

import dev.warmlane.irradiance.LightPast;
import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.PlaneIrradiance;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.weather.HourlyWeather;

/**
 * The light over a pool, hour by hour, past what hides sky from it. Without anything that does it is the weather's own, to
 * the last bit. Immutable.
 */
public final class PoolLight {

    private final HourlyWeather weather;
    private final LightPast past;
    private final PlaneIrradiance onWater;
    private final double skyShare;

    private PoolLight(HourlyWeather weather, Skylines skylines) {
        this.weather = weather;
        this.past = LightPast.of(skylines, weather);
        this.onWater = PlaneIrradiance.of(weather, Plane.HORIZONTAL, SkyModel.PEREZ);
        this.skyShare = skylines.skyShare(Plane.HORIZONTAL);
    }

    /** The light over a pool of an area in a setting. */
    static PoolLight of(PoolSetting setting, double areaM2, HourlyWeather weather) {
        return new PoolLight(
                weather, setting.match(outdoor -> outdoor.skyline().skylines(areaM2), indoor -> Skylines.OPEN));
    }

    /** All light on the water, W/m². */
    double globalWm2(int hour) {
        return past.isOpen()
                ? weather.globalHorizontalWm2(hour)
                : past.lit(hour) * (onWater.beamWm2(hour) + onWater.circumsolarWm2(hour))
                        + skyShare * onWater.backgroundWm2(hour);
    }

    /** What of it comes from the sky and not straight from the sun, W/m². */
    double diffuseWm2(int hour) {
        return past.isOpen()
                ? weather.diffuseHorizontalWm2(hour)
                : past.lit(hour) * onWater.circumsolarWm2(hour) + skyShare * onWater.backgroundWm2(hour);
    }

    /** Share of beam that comes past, 0 to 1. */
    double lit(int hour) {
        return past.lit(hour);
    }

    /** Share of an even sky's light that is left, 0 to 1. */
    double skyShare() {
        return skyShare;
    }
}
