package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The lines of an {@link InventedYear} in the formats of satellite, reanalysis and weather services. */
final class InventedFiles {

    /** Lines before the rows, of each format. */
    static final int NSRDB_HEADER = 3;

    private InventedFiles() {}

    /** Rows at the given minutes of every hour, all of an hour alike, in a clock so many hours from UTC. */
    static List<String> nsrdb(InventedYear year, int clock, int... minutes) {
        List<String> lines = new ArrayList<>(
                List.of(
                        "Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,Local Time Zone,"
                                + "Dew Point Units,DHI Units,DNI Units,GHI Units,Temperature Units,Pressure Units,"
                                + "Relative Humidity Units,Wind Speed Units,Version,,",
                        "NSRDB,1,-,-,-,36.0,-80.0," + clock + ",250,-5,c,w/m2,w/m2,w/m2,c,mbar,%,m/s,v0.0.0,,",
                        "Year,Month,Day,Hour,Minute,DHI,GHI,DNI,Dew Point,Wind Speed,Relative Humidity,Temperature,Pressure,,"));
        for (int row = 0; row < HourOfYear.HOURS; row++) {
            int h = Math.floorMod(row - 5 - clock, HourOfYear.HOURS);
            h = clock == -5 ? row : h;
            for (int minute : minutes) {
                lines.add(String.format(
                        Locale.ROOT,
                        "%d,%d,%d,%d,%d,%.0f,%.0f,%.0f,%.1f,%.1f,%.2f,%.1f,%.0f,,",
                        InventedYear.CALENDAR_YEAR,
                        HourOfYear.monthOf(row),
                        HourOfYear.dayOfMonth(row),
                        HourOfYear.hourOfDay(row),
                        minute,
                        year.diffuse[h],
                        year.global[h],
                        year.direct[h],
                        year.dew[h],
                        year.wind[h],
                        year.humidity(h),
                        year.air[h],
                        year.pressure[h] * 10));
            }
        }
        return lines;
    }

    /** In local time; a row has the irradiance of the hour that ends at it, and all else of that hour too. */
    static List<String> openMeteo(InventedYear year, String names) {
        List<String> lines = new ArrayList<>(List.of(
                "latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation",
                "36.0,-80.0,250.0,-18000,America/New_York,GMT-5",
                "",
                names));
        for (int row = 0; row < HourOfYear.HOURS; row++) {
            int h = Math.floorMod(row - 1, HourOfYear.HOURS);
            StringBuilder line = new StringBuilder(String.format(
                    Locale.ROOT,
                    "%d-%02d-%02dT%02d:00",
                    InventedYear.CALENDAR_YEAR,
                    HourOfYear.monthOf(row),
                    HourOfYear.dayOfMonth(row),
                    HourOfYear.hourOfDay(row)));
            for (String name : names.split(",", -1)) {
                double value =
                        switch (name.split(" ", -1)[0]) {
                            case "temperature_2m" -> year.air[h];
                            case "dew_point_2m" -> year.dew[h];
                            case "surface_pressure" -> year.pressure[h] * 10;
                            case "wind_speed_10m" -> year.wind[h] * 3.6;
                            case "shortwave_radiation" -> year.global[h];
                            case "direct_normal_irradiance" -> year.direct[h];
                            case "diffuse_radiation" -> year.diffuse[h];
                            case "cloud_cover" -> 50;
                            default -> Double.NaN;
                        };
                line.append(name.equals("time") ? "" : "," + value);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    static final String OPEN_METEO_NAMES = "time,temperature_2m (°C),dew_point_2m (°C),surface_pressure (hPa),"
            + "cloud_cover (%),wind_speed_10m (km/h),shortwave_radiation (W/m²),direct_normal_irradiance (W/m²),"
            + "diffuse_radiation (W/m²),weather_code (wmo code)";

    /** In UTC at half past; beam is what diffuse leaves of global. */
    static List<String> pvgisSeries(InventedYear year, int slopeDeg) {
        List<String> lines = new ArrayList<>(List.of(
                "Latitude (decimal degrees):\t36.000",
                "Longitude (decimal degrees):\t-80.000",
                "Elevation (m):\t250",
                "Radiation database:\tinvented",
                "",
                "Slope: " + slopeDeg + " deg.",
                "Azimuth: 0 deg.",
                "time,Gb(i),Gd(i),Gr(i),H_sun,T2m,WS10m,Int"));
        for (int u = 0; u < HourOfYear.HOURS; u++) {
            int h = Math.floorMod(u - 5, HourOfYear.HOURS);
            lines.add(String.format(
                    Locale.ROOT,
                    "%d%02d%02d:%02d30,%.1f,%.1f,0.0,0.0,%.2f,%.2f,0.0",
                    InventedYear.CALENDAR_YEAR,
                    HourOfYear.monthOf(u),
                    HourOfYear.dayOfMonth(u),
                    HourOfYear.hourOfDay(u),
                    year.global[h] - year.diffuse[h],
                    year.diffuse[h],
                    year.air[h],
                    year.wind[h]));
        }
        lines.addAll(List.of("", "Gb(i): Beam (direct) irradiance on the inclined plane (W/m2)"));
        return lines;
    }

    /** The csv of a typical year as JSON, on one line as it comes. */
    static String pvgisJson(InventedYear year) {
        List<String> csv = year.pvgis();
        String[] names = csv.get(4).split(",", -1);
        StringBuilder json = new StringBuilder("{\"inputs\": {\"location\": {\"latitude\": 36.0, \"longitude\": -80.0,"
                + " \"elevation\": 250.0, \"irradiance_time_offset\": 0.5}, \"meteo_data\": {\"year_min\": 2005}},"
                + " \"outputs\": {\"months_selected\": [{\"month\": 1, \"year\": 1999}], \"tmy_hourly\": [");
        for (int u = 0; u < HourOfYear.HOURS; u++) {
            String[] cells = csv.get(5 + u).split(",", -1);
            json.append(u == 0 ? "{" : ", {")
                    .append("\"")
                    .append(names[0])
                    .append("\": \"")
                    .append(cells[0])
                    .append('"');
            for (int i = 1; i < names.length; i++) {
                json.append(", \"").append(names[i]).append("\": ").append(cells[i]);
            }
            json.append('}');
        }
        return json.append("]}, \"meta\": {\"outputs\": {\"tmy_hourly\": {\"variables\": {}}}}}")
                .toString();
    }

    /** At a place near the Rhine, whatever the year says. */
    static List<String> testReference(InventedYear year, boolean of2010) {
        List<String> lines = new ArrayList<>(
                of2010
                        ? List.of(
                                "TRY00   Erfundene Ebene",
                                "Station: Erfunden                        WMO-Nummer: 00000",
                                "Lage: 49°30'N <- B.   8°15'O <- L.    96 Meter ueber NN",
                                "RG    IS  MM  DD  HH  N   WR      WG       t       p        x   RF   W     B     D IK    A"
                                        + "      E IL",
                                "***")
                        : List.of(
                                "Koordinatensystem : Lambert konform konisch",
                                "Rechtswert        : 3892500 Meter",
                                "Hochwert          : 2531500 Meter",
                                "Hoehenlage        : 103 Meter ueber NN",
                                "     RW      HW MM DD HH     t    p  WR   WG N    x  RF    B    D   A    E IL",
                                "*** "));
        if (of2010) {
            lines.add(row2010(year, HourOfYear.HOURS - 1));
        }
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            lines.add(of2010 ? row2010(year, h) : row2015(year, h));
        }
        return lines;
    }

    private static String row2010(InventedYear year, int h) {
        return String.format(
                Locale.ROOT,
                "12     1  %2d  %2d  %2d  4  190  %6.1f  %6.1f  %7.1f  %6.1f  %3.0f  21  %4.0f  %4.0f 1  %4.0f  %5d  9",
                HourOfYear.monthOf(h),
                HourOfYear.dayOfMonth(h),
                HourOfYear.hourOfDay(h) + 1,
                year.wind[h],
                year.air[h],
                year.pressure[h] * 10,
                5.0,
                year.humidity(h),
                year.global[h] - year.diffuse[h],
                year.diffuse[h],
                year.longWave[h],
                -365);
    }

    private static String row2015(InventedYear year, int h) {
        return String.format(
                Locale.ROOT,
                "3892500 2531500 %2d %2d %2d %5.1f %4.0f 210 %4.1f 4 %4.1f %3.0f %4.0f %4.0f %3.0f %4d  1",
                HourOfYear.monthOf(h),
                HourOfYear.dayOfMonth(h),
                HourOfYear.hourOfDay(h) + 1,
                year.air[h],
                year.pressure[h] * 10,
                year.wind[h],
                5.0,
                year.humidity(h),
                year.global[h] - year.diffuse[h],
                year.diffuse[h],
                year.longWave[h],
                -314);
    }

    /** A plain csv with the header lines and columns given: a column is found by its name. */
    static List<String> plain(InventedYear year, List<String> keys, String names) {
        List<String> lines = new ArrayList<>(List.of(
                "# Warmlane plain weather csv",
                "# latitude, degrees north: 36",
                "# longitude, degrees east: -80",
                "# elevation, m: 250",
                "# utc offset, h: -5"));
        lines.addAll(keys);
        lines.add(names);
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            List<String> cells = new ArrayList<>();
            for (String name : names.split(",", -1)) {
                cells.add(
                        switch (name) {
                            case "month" -> "" + HourOfYear.monthOf(h);
                            case "day" -> "" + HourOfYear.dayOfMonth(h);
                            case "hour" -> "" + HourOfYear.hourOfDay(h);
                            case "global W/m2" -> "" + year.global[h];
                            case "direct W/m2" -> "" + year.direct[h];
                            case "diffuse W/m2" -> "" + year.diffuse[h];
                            case "air degC" -> "" + year.air[h];
                            case "dew point degC" -> "" + year.dew[h];
                            case "wind m/s" -> "" + year.wind[h];
                            case "sunshine h" -> year.direct[h] > 120 ? "1" : "0";
                            default -> throw new IllegalArgumentException(name);
                        });
            }
            lines.add(String.join(",", cells));
        }
        return lines;
    }
}
