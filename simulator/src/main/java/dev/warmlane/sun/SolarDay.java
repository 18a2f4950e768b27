package dev.warmlane.sun;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Checks;
import java.time.MonthDay;

/**
 * The sun of one day by solar time, for layout: noon is when the sun stands highest. Without refraction, which would
 * lift it by a few hundredths of a degree. Hours of weather take their sun from {@link SunPath}.
 *
 * @param latitudeDeg latitude, degrees, north positive, -90 to 90
 * @param declinationDeg declination of the sun, degrees, -23.5 to 23.5
 */
public record SolarDay(double latitudeDeg, double declinationDeg) {

    /** Checks both ranges. */
    public SolarDay {
        Checks.within("latitude", latitudeDeg, -90, 90, "degrees");
        Checks.within("declination", declinationDeg, -23.5, 23.5, "degrees");
    }

    /**
     * A day of the year, with the declination of Spencer 1971 (Search 2:172, from memory; within 0.04 degrees):
     * δ = 0.006918 − 0.399912 cos B + 0.070257 sin B − 0.006758 cos 2B + 0.000907 sin 2B − 0.002697 cos 3B +
     * 0.00148 sin 3B, B = 2π(day of year − 1)/365.
     */
    public static SolarDay of(double latitudeDeg, MonthDay date) {
        double b = 2 * Math.PI * HourOfYear.dayOf(HourOfYear.startOf(date)) / HourOfYear.DAYS;
        double declination = 0.006918
                - 0.399912 * Math.cos(b)
                + 0.070257 * Math.sin(b)
                - 0.006758 * Math.cos(2 * b)
                + 0.000907 * Math.sin(2 * b)
                - 0.002697 * Math.cos(3 * b)
                + 0.00148 * Math.sin(3 * b);
        return new SolarDay(latitudeDeg, Math.toDegrees(declination));
    }

    /**
     * Angle between the sun and the vertical, degrees; above 90 the sun is down. cos θz = sin φ sin δ +
     * cos φ cos δ cos ω.
     *
     * @param solarHour solar time, h, 0 to 24, 12 at noon
     */
    public double zenithDeg(double solarHour) {
        double cosine = Math.sin(latitude()) * Math.sin(declination())
                + Math.cos(latitude()) * Math.cos(declination()) * Math.cos(hourAngle(solarHour));
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }

    /**
     * Direction of the sun, degrees clockwise from north, 0 to 360.
     *
     * @param solarHour solar time, h, 0 to 24, 12 at noon
     */
    public double azimuthDeg(double solarHour) {
        double east = -Math.cos(declination()) * Math.sin(hourAngle(solarHour));
        double north = Math.cos(latitude()) * Math.sin(declination())
                - Math.sin(latitude()) * Math.cos(declination()) * Math.cos(hourAngle(solarHour));
        double azimuth = Math.toDegrees(Math.atan2(east, north));
        return azimuth < 0 ? azimuth + 360 : azimuth;
    }

    private double latitude() {
        return Math.toRadians(latitudeDeg);
    }

    private double declination() {
        return Math.toRadians(declinationDeg);
    }

    private static double hourAngle(double solarHour) {
        return Math.PI * (solarHour - 12) / 12;
    }
}
