package dev.warmlane.pool;

import dev.warmlane.physics.Constants;
import dev.warmlane.weather.HourlyWeather;
import java.util.Optional;

/**
 * Light and long-wave at a pool's water: what its surroundings leave of the weather, what walls above the water keep from it,
 * and how much more or less of the beam stays in it than of the sky's light.
 */
final class WaterLight {

    private final PoolSetting setting;
    private final PoolLight past;
    private final HourlyWeather weather;
    private final SurfaceReflection reflection;
    private final Optional<Freeboard> freeboard;
    private final double openShare;

    WaterLight(Pool pool, PoolLight past, HourlyWeather weather) {
        this.past = past;
        this.setting = pool.setting();
        this.weather = weather;
        this.reflection = pool.reflection();
        this.freeboard = pool.freeboard();
        this.openShare = freeboard.map(Freeboard::openShare).orElse(1.0);
    }

    /** Sun on the water, counted by how it stays there: times the absorptance of an even sky's light it is what stays, W/m². */
    double sunWm2(int hour) {
        double all = setting.sunWm2(past, hour);
        if (!(all > 0) || (freeboard.isEmpty() && reflection == SurfaceReflection.EVEN)) {
            return all;
        }
        double diffuse = Math.min(1, past.diffuseWm2(hour) / past.globalWm2(hour));
        double cosZenith = weather.sun().cosZenith(hour);
        double beamIn = reflection.beamOverSky(cosZenith);
        double skyIn = 1;
        if (freeboard.isPresent()) {
            Freeboard walls = freeboard.get();
            double lit = walls.litShare(cosZenith, weather.sun().azimuthDeg(hour));
            // what the walls reflect comes from every side, as the sky's light does
            beamIn = lit * beamIn + walls.withWalls(lit) - lit;
            skyIn = walls.withWalls(openShare);
        }
        return all * ((1 - diffuse) * beamIn + diffuse * skyIn);
    }

    /** Long-wave on the water, W/m²; walls above it radiate at the air's temperature. */
    double longWaveWm2(int hour) {
        double without = setting.longWaveWm2(past, weather, hour);
        return freeboard.isEmpty()
                ? without
                : openShare * without + (1 - openShare) * Constants.blackBody(setting.airC(weather, hour));
    }
}
