package dev.warmlane.weather;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A year of smooth invented weather that closes exactly, and the lines of a file of it in each open format: what tests
 * break on purpose.
 */
public final class InventedYear {

    static final Site SITE = new Site("Invented Place", 36.0, -80.0, 250, -5);
    static final int CALENDAR_YEAR = 1999;

    final double[] global = new double[HourOfYear.HOURS];
    final double[] direct = new double[HourOfYear.HOURS];
    final double[] diffuse = new double[HourOfYear.HOURS];
    final double[] air = new double[HourOfYear.HOURS];
    final double[] dew = new double[HourOfYear.HOURS];
    final double[] longWave = new double[HourOfYear.HOURS];
    final double[] wind = new double[HourOfYear.HOURS];
    final double[] pressure = new double[HourOfYear.HOURS];
    final Site site;
    final SunPath sun;

    private InventedYear(Site site, SunPath sun) {
        this.site = site;
        this.sun = sun;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            int day = HourOfYear.dayOf(hour);
            double clearness = 0.3 + 0.4 * ((day * 7) % 11) / 10.0;
            double diffuseShare = 1.1 - 1.2 * clearness;
            double outside = sun.extraterrestrialNormalWm2(hour) * sun.cosZenith(hour) * sun.upFraction(hour);
            double beam = outside * clearness * (1 - diffuseShare);
            direct[hour] = sun.cosZenith(hour) > 0.02 ? Math.rint(beam / sun.cosZenith(hour)) : 0;
            diffuse[hour] = Math.rint(outside * clearness * diffuseShare);
            global[hour] = Math.rint(diffuse[hour] + direct[hour] * sun.cosZenith(hour));
            double season = -Math.cos(2 * Math.PI * (day - 20) / 365.0);
            double rhythm = -Math.cos(2 * Math.PI * (HourOfYear.hourOfDay(hour) - 3) / 24.0);
            air[hour] = tenths(14 + 11 * season + 5 * rhythm);
            dew[hour] = tenths(Math.min(8 + 9 * season + 0.5 * rhythm, air[hour] - 1));
            longWave[hour] = Math.rint(0.85 * Constants.blackBody(air[hour]));
            wind[hour] = tenths(3 + 1.5 * rhythm + 1.5 * ((day * 5) % 7) / 6.0);
            pressure[hour] = 98.4 + 0.1 * ((day * 3) % 5);
        }
    }

    static InventedYear withCentre(double centreHours) {
        return new InventedYear(SITE, SunPath.ofHourlyMeans(SITE, years(), centreHours));
    }

    /** Irradiance at the half hours. */
    static InventedYear ofInstants() {
        return new InventedYear(SITE, SunPath.ofInstants(SITE, years(), 0.5));
    }

    /** The same weather under the sun of another latitude. */
    static InventedYear at(double latitudeDeg) {
        Site site = new Site("Invented Place", latitudeDeg, -80, 250, -5);
        return at(site);
    }

    /** At another place; only {@link #epw} has it in its header. */
    static InventedYear at(Site site) {
        return new InventedYear(site, SunPath.ofHourlyMeans(site, years(), 0.5));
    }

    /** Under the sun of another calendar year. */
    static InventedYear in(int calendarYear) {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, calendarYear);
        return new InventedYear(SITE, SunPath.ofHourlyMeans(SITE, years, 0.5));
    }

    /** The year as it should be. */
    public static InventedYear sound() {
        return withCentre(0.5);
    }

    static int[] years() {
        int[] years = new int[HourOfYear.HOURS];
        Arrays.fill(years, CALENDAR_YEAR);
        return years;
    }

    WeatherYear weather() {
        return WeatherYear.builder(site, "invented", sun)
                .irradianceWm2(global, direct, diffuse)
                .airC(air, dew)
                .pressureKpa(pressure)
                .windSpeedMs(wind)
                .skyLongWaveWm2(longWave, WeatherYear.LongWaveOrigin.FILE)
                .build();
    }

    /** Relative humidity, whole percent. */
    double humidity(int hour) {
        return Math.rint(100 * MoistAir.saturationPressureKpa(dew[hour]) / MoistAir.saturationPressureKpa(air[hour]));
    }

    /** Eight header lines, then hour {@code h} on line {@code h + 9}. */
    public List<String> epw() {
        List<String> lines = new ArrayList<>(List.of(
                String.format(
                        Locale.ROOT,
                        "LOCATION,Invented Place,-,-,invented,000000,%.1f,%.1f,%.1f,%.1f",
                        site.latitudeDeg(),
                        site.longitudeDeg(),
                        site.utcOffsetHours(),
                        site.elevationM()),
                "DESIGN CONDITIONS,0",
                "TYPICAL/EXTREME PERIODS,0",
                "GROUND TEMPERATURES,0",
                "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
                "COMMENTS 1,invented",
                "COMMENTS 2,invented",
                "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31"));
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%d,%d,%d,%d,60,?9,%.1f,%.1f,%.0f,%.0f,9999,9999,%.0f,%.0f,%.0f,%.0f,9999,9999,9999,9999,0,%.1f,5,5,"
                            + "9999,99999,9,999999999,0,0,0,88,0,0,0",
                    CALENDAR_YEAR,
                    HourOfYear.monthOf(h),
                    HourOfYear.dayOfMonth(h),
                    HourOfYear.hourOfDay(h) + 1,
                    air[h],
                    dew[h],
                    humidity(h),
                    pressure[h] * 1000,
                    longWave[h],
                    global[h],
                    direct[h],
                    diffuse[h],
                    wind[h]));
        }
        return lines;
    }

    /** Two header lines, then hour {@code h} on line {@code h + 3}. */
    public List<String> tmy3() {
        List<String> lines = new ArrayList<>(List.of(
                "000000,\"INVENTED, PLACE\",XX,-5.0,36.0,-80.0,250",
                "Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),TotCld (tenths),Dry-bulb (C),"
                        + "Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s)"));
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%02d/%02d/%d,%02d:00,%.0f,%.0f,%.0f,5,%.1f,%.1f,%.0f,%.0f,%.1f",
                    HourOfYear.monthOf(h),
                    HourOfYear.dayOfMonth(h),
                    CALENDAR_YEAR,
                    HourOfYear.hourOfDay(h) + 1,
                    global[h],
                    direct[h],
                    diffuse[h],
                    air[h],
                    dew[h],
                    humidity(h),
                    pressure[h] * 10,
                    wind[h]));
        }
        return lines;
    }

    /** One header line, then hour {@code h} on line {@code h + 2}. */
    public List<String> tmy2() {
        List<String> lines = new ArrayList<>(List.of(" 00000 INVENTED PLACE         XX  -5 N 36  0 W  80  0   250"));
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            StringBuilder record = new StringBuilder("0".repeat(142));
            put(record, 1, " ");
            put(
                    record,
                    2,
                    "%02d%02d%02d%02d",
                    CALENDAR_YEAR % 100,
                    HourOfYear.monthOf(h),
                    HourOfYear.dayOfMonth(h),
                    HourOfYear.hourOfDay(h) + 1);
            put(record, 18, "%04d", (int) global[h]);
            put(record, 24, "%04d", (int) direct[h]);
            put(record, 30, "%04d", (int) diffuse[h]);
            put(record, 60, "05");
            put(record, 68, "%04d", Math.round(air[h] * 10));
            put(record, 74, "%04d", Math.round(dew[h] * 10));
            put(record, 80, "%03d", (int) humidity(h));
            put(record, 85, "%04d", Math.round(pressure[h] * 10));
            put(record, 96, "%03d", Math.round(wind[h] * 10));
            lines.add(record.toString());
        }
        return lines;
    }

    /** In UTC; the stamp is five hours after local time. Stamp {@code u} hours into the year is on line {@code u + 6}. */
    public List<String> pvgis() {
        List<String> lines = new ArrayList<>(List.of(
                "Latitude (decimal degrees): 36.000",
                "Longitude (decimal degrees): -80.000",
                "Elevation (m): 250.0",
                "Irradiance Time Offset (h): 0.5",
                "time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP"));
        for (int u = 0; u < HourOfYear.HOURS; u++) {
            int h = Math.floorMod(u - 5, HourOfYear.HOURS);
            lines.add(String.format(
                    Locale.ROOT,
                    "%d%02d%02d:%02d00,%.1f,%.0f,%.0f,%.0f,%.0f,%.0f,%.1f,0,%.0f",
                    CALENDAR_YEAR,
                    HourOfYear.monthOf(u),
                    HourOfYear.dayOfMonth(u),
                    HourOfYear.hourOfDay(u),
                    air[h],
                    humidity(h),
                    global[h],
                    direct[h],
                    diffuse[h],
                    longWave[h],
                    wind[h],
                    pressure[h] * 1000));
        }
        lines.addAll(List.of("", "T2m: 2-m air temperature (degree Celsius)", "RH: relative humidity (%)"));
        return lines;
    }

    private static void put(StringBuilder record, int place, String format, Object... values) {
        String text = String.format(Locale.ROOT, format, values);
        record.replace(place - 1, place - 1 + text.length(), text);
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
