package dev.warmlane.irradiance;

import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.HourlyWeather;

/**
 * Short-wave irradiance on a plane that nothing shades, in each hour, in the parts that shading and incidence
 * treat differently. Immutable; made once for a plane and shared.
 *
 * <p>Beam is the direct normal irradiance of the file times the cosine of incidence. Sky light is split by a
 * {@link SkyModel} into a circumsolar part, which comes from the sun's direction and is shaded as beam is, and a
 * background (even sky and horizon band), which is reduced by the share of sky that neighbours hide.
 *
 * <p>The horizontal plane takes the file's global irradiance as it is: beam is global less diffuse, and beam and sky
 * make the global again, whatever the file's direct normal irradiance says. Turning a plane by the least angle from the
 * horizontal therefore steps by as much as the file does not close.
 *
 * <p>While the sun is down there is no beam and the sky is taken as even. At low sun the circumsolar part is limited by
 * the floor of cos 85° that the models have.
 */
public final class PlaneIrradiance {

    /** Below this the sun's height does not scale circumsolar light any more: cos 85°, as Perez et al. 1990. */
    private static final double LOWEST_COS_ZENITH = Math.cos(Math.toRadians(85));

    private final Plane plane;
    private final HourlyWeather weather;
    private final double[] cosIncidence;
    private final double[] beam;
    private final double[] beamOnBack;
    private final double[] circumsolar;
    private final double[] background;

    private PlaneIrradiance(HourlyWeather weather, Plane plane, SkyModel model) {
        this.weather = weather;
        this.plane = plane;
        int hours = weather.hours();
        this.cosIncidence = new double[hours];
        this.beam = new double[hours];
        this.beamOnBack = new double[hours];
        this.circumsolar = new double[hours];
        this.background = new double[hours];
        SunPath sun = weather.sun();
        double cosTilt = Math.cos(Math.toRadians(plane.tiltDeg()));
        double sinTilt = plane.horizontal() ? 0 : Math.sin(Math.toRadians(plane.tiltDeg()));
        for (int hour = 0; hour < hours; hour++) {
            if (!sun.isUp(hour)) {
                double twilight =
                        plane.horizontal() ? weather.globalHorizontalWm2(hour) : weather.diffuseHorizontalWm2(hour);
                background[hour] = twilight * plane.skyView();
                continue;
            }
            double cosZenith = sun.cosZenith(hour);
            double sinZenith = Math.sqrt(1 - cosZenith * cosZenith);
            double aside = Math.toRadians(sun.azimuthDeg(hour) - plane.azimuthDeg());
            double cos = cosZenith * cosTilt + sinZenith * sinTilt * Math.cos(aside);
            cosIncidence[hour] = cos;
            if (plane.horizontal()) {
                beam[hour] = weather.beamHorizontalWm2(hour);
                splitSky(hour, model, weather.globalHorizontalWm2(hour) - beam[hour], sinTilt);
            } else {
                beam[hour] = weather.directNormalWm2(hour) * Math.max(0, cos);
                beamOnBack[hour] = weather.directNormalWm2(hour) * Math.max(0, -cos);
                splitSky(hour, model, weather.diffuseHorizontalWm2(hour), sinTilt);
            }
        }
    }

    /** The irradiance on a plane in each hour of the weather. */
    public static PlaneIrradiance of(HourlyWeather weather, Plane plane, SkyModel model) {
        return new PlaneIrradiance(weather, plane, model);
    }

    private void splitSky(int hour, SkyModel model, double sky, double sinTilt) {
        if (sky <= 0) {
            return;
        }
        SunPath sun = weather.sun();
        double zenith = Math.toRadians(sun.zenithDeg(hour));
        double direct = weather.directNormalWm2(hour);
        double extraterrestrial = sun.extraterrestrialNormalWm2(hour);
        double f1 = 0;
        double f2 = 0;
        switch (model) {
            case PEREZ -> {
                int clearness = PerezSky.classOf(PerezSky.clearness(sky, direct, zenith));
                double brightness = PerezSky.brightness(sky, sun.zenithDeg(hour), extraterrestrial);
                f1 = PerezSky.circumsolarShare(clearness, brightness, zenith);
                f2 = PerezSky.horizonShare(clearness, brightness, zenith);
            }
            case HAY_DAVIES -> f1 = Math.min(1, direct / extraterrestrial);
            case ISOTROPIC -> {}
        }
        double towardsSun = f1 * Math.max(0, cosIncidence[hour]) / Math.max(LOWEST_COS_ZENITH, sun.cosZenith(hour));
        circumsolar[hour] = sky * towardsSun;
        background[hour] = plane.horizontal()
                ? sky - circumsolar[hour]
                : Math.max(0, sky * ((1 - f1) * plane.skyView() + f2 * sinTilt));
    }

    /** Angle between the sun and the plane's normal, degrees, 0 to 180; 90 while the sun is down. */
    public double incidenceDeg(int hour) {
        double cos = cosIncidence[hour];
        return cos == 0 ? 90 : Math.toDegrees(Math.acos(Math.min(1, Math.max(-1, cos))));
    }

    /** Beam on the front, W/m². */
    public double beamWm2(int hour) {
        return beam[hour];
    }

    /** Beam on the back, which an open rack lets in while the sun stands behind the plane, W/m². */
    public double beamOnBackWm2(int hour) {
        return beamOnBack[hour];
    }

    /** The part of the sky's light that comes from the direction of the sun and behaves as beam does, W/m². */
    public double circumsolarWm2(int hour) {
        return circumsolar[hour];
    }

    /**
     * The rest of the sky's light, from an unobstructed sky, W/m². Where neighbours hide some sky, take it times the view
     * of the sky over {@link Plane#skyView()}. This treats the horizon band, some hundredths of the diffuse light, as if
     * it were spread over the sky, though neighbours hide more of it than of the rest.
     */
    public double backgroundWm2(int hour) {
        return background[hour];
    }

    /** All light of the sky except beam, W/m². */
    public double skyWm2(int hour) {
        return circumsolar[hour] + background[hour];
    }

    /**
     * What a uniform, unshaded, horizontal ground of the given albedo reflects onto the front:
     * {@code albedo·GHI·(1 - cosβ)/2}, W/m² (Liu and Jordan 1963, Solar Energy 7:53-74; from memory).
     */
    public double groundReflectedWm2(int hour, double albedo) {
        return albedo * weather.globalHorizontalWm2(hour) * (1 - plane.skyView());
    }
}
