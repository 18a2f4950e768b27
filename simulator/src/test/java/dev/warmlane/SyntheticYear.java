package dev.warmlane;

import dev.warmlane.physics.SkyLongWave;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.UncheckedYear;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYear.LongWaveOrigin;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** Years made for a test: a cloudless or sunless sky over a given air; what is not set stays at its plain default. */
public final class SyntheticYear {

    private final Site site;
    private boolean sunny = true;
    private boolean overcast;
    private double pressureKpa = 101.325;
    private IntToDoubleFunction airC = hour -> 20;
    private IntToDoubleFunction dewPointC = hour -> 10;
    private IntToDoubleFunction windMs = hour -> 3;

    private SyntheticYear(Site site) {
        this.site = site;
    }

    /** A year at an invented site at sea level on the meridian of its time zone. */
    public static SyntheticYear at(double latitudeDeg) {
        return new SyntheticYear(new Site("invented", latitudeDeg, 0, 0, 0));
    }

    public SyntheticYear sunless() {
        sunny = false;
        return this;
    }

    /** No beam, and the light of an even sky instead: 400 cos z. */
    public SyntheticYear overcast() {
        overcast = true;
        return this;
    }

    public SyntheticYear pressureKpa(double value) {
        pressureKpa = value;
        return this;
    }

    public SyntheticYear airC(IntToDoubleFunction value) {
        airC = value;
        return this;
    }

    public SyntheticYear dewPointC(IntToDoubleFunction value) {
        dewPointC = value;
        return this;
    }

    public SyntheticYear windMs(IntToDoubleFunction value) {
        windMs = value;
        return this;
    }

    /** Beam 950 exp(-0.1/cos z) and an eighth of it diffuse; the clear sky's long-wave; irradiance closes exactly. */
    public WeatherYear build() {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, 2001);
        SunPath sun = SunPath.ofHourlyMeans(site, years, 0.5);
        double[] direct = filled(hour -> sunny && !overcast && sun.isUp(hour)
                ? sun.upFraction(hour) * 950 * Math.exp(-0.1 / Math.max(0.02, sun.cosZenith(hour)))
                : 0);
        double[] diffuse = filled(hour ->
                overcast && sun.isUp(hour) ? sun.upFraction(hour) * 400 * sun.cosZenith(hour) : direct[hour] / 8);
        double[] air = filled(airC);
        double[] dew = filled(dewPointC);
        return UncheckedYear.of(WeatherYear.builder(site, "made for a test", sun)
                .irradianceWm2(filled(hour -> direct[hour] * sun.cosZenith(hour) + diffuse[hour]), direct, diffuse)
                .skyLongWaveWm2(
                        filled(hour -> SkyLongWave.allSkyIrradianceWm2(
                                air[hour], SkyLongWave.clearSkyEmissivity(dew[hour]), 0)),
                        LongWaveOrigin.FILE)
                .airC(air, dew)
                .pressureKpa(filled(hour -> pressureKpa))
                .windSpeedMs(filled(windMs)));
    }

    private static double[] filled(IntToDoubleFunction value) {
        double[] values = new double[HourOfYear.HOURS];
        Arrays.setAll(values, value);
        return values;
    }
}
