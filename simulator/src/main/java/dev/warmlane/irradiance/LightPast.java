package dev.warmlane.irradiance;

import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.HourlyWeather;

/**
 * What of the sun's light comes past the things around an area, hour by hour. Immutable.
 *
 * <p>Over an hour the sun moves by 15 degrees about the axis of the earth, and a wall or the horizon may take it away
 * within the hour. So each hour is looked at in six moments, spread over the part of it in which the sun is
 * up, and beam and circumsolar light are lit for the mean of them: each moment counts alike, own choice.
 */
public final class LightPast {

    private static final int MOMENTS = 6;

    private static final double TURN_DEG_H = 15;

    private final Skylines skylines;
    private final double[] lit;

    private LightPast(Skylines skylines, double[] lit) {
        this.skylines = skylines;
        this.lit = lit;
    }

    /** The light that comes past skylines in the hours of some weather. */
    public static LightPast of(Skylines skylines, HourlyWeather weather) {
        if (skylines.isOpen()) {
            return new LightPast(skylines, new double[0]);
        }
        SunPath sun = weather.sun();
        double latitude = Math.toRadians(weather.site().latitudeDeg());
        double[] lit = new double[weather.hours()];
        for (int hour = 0; hour < lit.length; hour++) {
            lit[hour] = sun.isUp(hour) ? lit(skylines, sun, hour, latitude) : 1;
        }
        return new LightPast(skylines, lit);
    }

    private static double lit(Skylines skylines, SunPath sun, int hour, double latitude) {
        double zenith = Math.toRadians(sun.zenithDeg(hour));
        double azimuth = Math.toRadians(sun.azimuthDeg(hour));
        double east = Math.sin(zenith) * Math.sin(azimuth);
        double north = Math.sin(zenith) * Math.cos(azimuth);
        double up = Math.cos(zenith);
        // along the axis of the earth, away from it towards the meridian, and square to both
        double axis = north * Math.cos(latitude) + up * Math.sin(latitude);
        double meridian = up * Math.cos(latitude) - north * Math.sin(latitude);
        double sum = 0;
        for (int moment = 0; moment < MOMENTS; moment++) {
            double hours = ((moment + 0.5) / MOMENTS - 0.5) * sun.upFraction(hour);
            double turn = Math.toRadians(TURN_DEG_H * hours);
            double eastThen = east * Math.cos(turn) - meridian * Math.sin(turn);
            double meridianThen = meridian * Math.cos(turn) + east * Math.sin(turn);
            double northThen = axis * Math.cos(latitude) - meridianThen * Math.sin(latitude);
            double upThen = axis * Math.sin(latitude) + meridianThen * Math.cos(latitude);
            double direction = Math.toDegrees(Math.atan2(eastThen, northThen));
            sum += skylines.litShare(
                    direction < 0 ? direction + 360 : direction,
                    Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, upThen)))));
        }
        return sum / MOMENTS;
    }

    /** What it comes past. */
    public Skylines skylines() {
        return skylines;
    }

    /** Whether all light comes past, since nothing hides any sky. */
    public boolean isOpen() {
        return skylines.isOpen();
    }

    /** Share of beam and circumsolar light that comes past, mean over the area and the hour, 0 to 1; 1 while the sun is down. */
    public double lit(int hour) {
        return lit.length == 0 ? 1 : lit[hour];
    }
}
