package dev.warmlane.weather.generate;

import dev.warmlane.physics.StandardAtmosphere;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.units.Checks;
import dev.warmlane.weather.WeatherYear;
import java.util.Arrays;

/**
 * Makes a typical year of 8760 hours from twelve monthly normals, for a site that has normals but no weather file.
 *
 * <p>The year is one draw: another seed gives other days with the same month means. It shows a plausible sequence of
 * clear and cloudy, warm and cold, calm and windy days; it does not show how real years differ, nor local winds, fog or
 * sea breeze. Means of a month come back exactly (to rounding): global irradiation, air temperature, dew point, wind
 * speed. See the package for the methods.
 */
public final class TypicalYearGenerator {

    /** The calendar year whose sun is taken, the one that a plain csv without years is read with. */
    public static final int SUN_YEAR = 2002;

    /** Polewards of here months have days without sun, which the methods were not fitted to. */
    private static final double HIGHEST_LATITUDE_DEG = 65;

    private TypicalYearGenerator() {}

    /**
     * The typical year of a site.
     *
     * @param site where; latitude -65 to 65 degrees
     * @param normals the twelve months
     * @param seed any number; the same seed gives the same year, bit for bit on one machine
     * @throws IllegalArgumentException if the site is too near a pole, or a month's irradiation is more than a cloudless
     *     sky or less than the darkest can give at this site
     */
    public static WeatherYear generate(Site site, MonthlyNormals normals, long seed) {
        Checks.within(
                "latitude for a generated year",
                site.latitudeDeg(),
                -HIGHEST_LATITUDE_DEG,
                HIGHEST_LATITUDE_DEG,
                "degrees");
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, SUN_YEAR);
        SunPath sun = SunPath.ofHourlyMeans(site, years, 0.5);
        double solarMinusStandard = site.longitudeDeg() / 15 - site.utcOffsetHours();

        Irradiance irradiance = new Irradiance(site, sun, normals, seed);
        AirTemperature air = new AirTemperature(normals, irradiance.dailyClearness(), solarMinusStandard, seed);
        double[] dewPoint = DewPoint.dewPointC(normals, air, irradiance.dailyDeviate(), seed);

        return WeatherYear.builder(site, "generated from monthly normals, seed " + seed, sun)
                .irradianceWm2(irradiance.global(), irradiance.direct(), irradiance.diffuse())
                .airC(air.temperatureC(), dewPoint)
                .windSpeedMs(Wind.speeds(normals, solarMinusStandard, seed))
                .pressureKpa(pressures(site, normals))
                .note("the year was generated from twelve monthly normals with the seed " + seed
                        + "; it is a plausible year, not a measured one")
                .build();
    }

    private static double[] pressures(Site site, MonthlyNormals normals) {
        double standard = StandardAtmosphere.pressureKpa(site.elevationM());
        double[] pressure = new double[HourOfYear.HOURS];
        for (int hour = 0; hour < pressure.length; hour++) {
            Double given = normals.month(HourOfYear.monthOf(hour)).pressureKpa();
            pressure[hour] = given == null ? standard : given;
        }
        return pressure;
    }
}
