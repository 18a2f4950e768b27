package dev.warmlane.irradiance;

import dev.warmlane.RealWeather;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.UncheckedYear;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYear.LongWaveOrigin;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;

/** Years of irradiance for tests; all else in them is constant. */
final class Years {

    static final Site NORTH = new Site("invented north", 40, 0, 100, 0);
    static final Site SOUTH = new Site("invented south", -40, 0, 100, 0);

    private Years() {}

    /** A sky without cloud, beam 850·exp(-0.1/cos z), diffuse 0.12 of it; it closes exactly. */
    static WeatherYear clear(Site site) {
        return of(site, 850, 0.12);
    }

    /** Diffuse light only, 250·cos z. */
    static WeatherYear overcast(Site site) {
        return of(site, 0, 0);
    }

    private static WeatherYear of(Site site, double direct, double diffuseShare) {
        SunPath sun = SunPath.ofHourlyMeans(site, years(2001), 0.5);
        double[] dni = new double[HourOfYear.HOURS];
        double[] dhi = new double[HourOfYear.HOURS];
        double[] ghi = new double[HourOfYear.HOURS];
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (sun.isUp(hour)) {
                double cos = sun.cosZenith(hour);
                dni[hour] = sun.upFraction(hour) * direct * Math.exp(-0.1 / Math.max(0.02, cos));
                dhi[hour] = direct > 0 ? diffuseShare * dni[hour] : 250 * cos;
                ghi[hour] = dni[hour] * cos + dhi[hour];
            }
        }
        return with(site, sun, ghi, dni, dhi);
    }

    static WeatherYear with(Site site, SunPath sun, double[] ghi, double[] dni, double[] dhi) {
        return UncheckedYear.of(WeatherYear.builder(site, "made for a test", sun)
                .irradianceWm2(ghi, dni, dhi)
                .skyLongWaveWm2(filled(320), LongWaveOrigin.FILE)
                .airC(filled(15), filled(8))
                .pressureKpa(filled(101.325))
                .windSpeedMs(filled(2)));
    }

    /** Irradiance of a real TMY3 file, hour ending at the label. */
    static WeatherYear real(String file) throws IOException {
        List<String> lines = Files.readAllLines(RealWeather.file(file));
        String[] head = lines.get(0).split(",", -1);
        Site site = new Site(
                head[1],
                Double.parseDouble(head[4]),
                Double.parseDouble(head[5]),
                Double.parseDouble(head[6]),
                Double.parseDouble(head[3]));
        int[] years = new int[HourOfYear.HOURS];
        double[][] columns = new double[3][HourOfYear.HOURS];
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            String[] fields = lines.get(hour + 2).split(",", -1);
            years[hour] = Integer.parseInt(fields[0].substring(6));
            for (int column = 0; column < 3; column++) {
                columns[column][hour] = Double.parseDouble(fields[4 + 3 * column]);
            }
        }
        return with(site, SunPath.ofHourlyMeans(site, years, 0.5), columns[0], columns[1], columns[2]);
    }

    static int[] years(int year) {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, year);
        return years;
    }

    static double[] filled(double value) {
        double[] values = new double[HourOfYear.HOURS];
        Arrays.fill(values, value);
        return values;
    }
}
