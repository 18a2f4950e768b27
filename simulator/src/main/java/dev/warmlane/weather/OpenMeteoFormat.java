package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.units.Units;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Open-Meteo hourly csv of any period: a line of names and a line of values on the place, a blank line, column names with
 * units, then a row for each hour. Irradiance is the mean of the hour that ends at the label, or an instant where its name
 * ends with {@code _instant}; everything else is of the label's instant (the publisher's documentation).
 */
final class OpenMeteoFormat implements WeatherFormat {

    private static final Pattern NAME = Pattern.compile("([a-z0-9_]+)(?: \\((.*)\\))?");
    private static final String INSTANT = "_instant";

    private static final Map<String, WeatherColumn> COLUMNS = Map.ofEntries(
            Map.entry("shortwave_radiation", WeatherColumn.GLOBAL),
            Map.entry("direct_normal_irradiance", WeatherColumn.DIRECT),
            Map.entry("direct_radiation", WeatherColumn.DIRECT_HORIZONTAL),
            Map.entry("diffuse_radiation", WeatherColumn.DIFFUSE),
            Map.entry("temperature_2m", WeatherColumn.AIR),
            Map.entry("dew_point_2m", WeatherColumn.DEW),
            Map.entry("dewpoint_2m", WeatherColumn.DEW),
            Map.entry("relative_humidity_2m", WeatherColumn.RELATIVE_HUMIDITY),
            Map.entry("relativehumidity_2m", WeatherColumn.RELATIVE_HUMIDITY),
            Map.entry("surface_pressure", WeatherColumn.PRESSURE),
            Map.entry("cloud_cover", WeatherColumn.CLOUD),
            Map.entry("cloudcover", WeatherColumn.CLOUD),
            Map.entry("wind_speed_10m", WeatherColumn.WIND),
            Map.entry("windspeed_10m", WeatherColumn.WIND));

    @Override
    public String title() {
        return "Open-Meteo csv";
    }

    @Override
    public boolean recognises(FileText text) {
        String first = text.line(text.first());
        return first.contains("latitude,longitude,elevation,utc_offset_seconds");
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        int first = text.first();
        if (!text.line(first).startsWith("latitude")) {
            throw text.error(
                    first, "", "several places in one file", "one place", "Fetch the hours of one place, as csv.");
        }
        String[] place = CsvRows.cells(text.line(first + 1));
        if (place.length < 5) {
            throw text.error(
                    first + 1,
                    "",
                    place.length + " values",
                    "latitude, longitude, elevation, UTC offset and time zone",
                    "Restore the second line of the file.");
        }
        int namesLine = first + 2;
        while (namesLine < text.lines() && text.isBlank(namesLine)) {
            namesLine++;
        }
        String[] names = CsvRows.cells(text.line(namesLine));
        if (names.length < 2 || !names[0].equals("time")) {
            throw text.error(
                    namesLine,
                    "",
                    "\""
                            + text.line(namesLine)
                                    .substring(
                                            0, Math.min(40, text.line(namesLine).length())) + "\"",
                    "column names, the first of them \"time\"",
                    "Fetch the hourly values as csv.");
        }
        boolean instants = isOfInstants(names);
        double offset = text.number(first + 1, "utc_offset_seconds", place[3]) / Units.HOUR;
        RawHeader header = new RawHeader(
                title(),
                site(text, first + 1, place, offset),
                first + 1,
                offset == 0 ? RawHeader.Clock.UTC : RawHeader.Clock.LOCAL_STANDARD,
                instants,
                instants ? 0 : -0.5,
                true,
                0,
                WeatherYear.LongWaveOrigin.FILE);
        RawWeather raw = new RawWeather(text, header);
        tellSummerTime(raw, place[4], offset);
        CsvRows.read(
                raw,
                namesLine + 1,
                text.lines() + 1,
                names.length,
                new int[] {0},
                OpenMeteoFormat::addTime,
                fields(text, namesLine, names, instants));
        return raw;
    }

    private static boolean isOfInstants(String[] names) {
        boolean means = false;
        boolean instants = false;
        for (String name : names) {
            means |= name.startsWith("shortwave_radiation (");
            instants |= name.startsWith("shortwave_radiation" + INSTANT);
        }
        return instants && !means;
    }

    private static Site site(FileText text, int line, String[] place, double offset) throws WeatherFileException {
        double latitude = text.number(line, "latitude", place[0]);
        double longitude = text.number(line, "longitude", place[1]);
        return Headers.site(text, line, "", latitude, longitude, text.number(line, "elevation", place[2]), offset);
    }

    /** One offset is used for all hours of a file, be it that of summer. */
    private static void tellSummerTime(RawWeather raw, String zone, double offset) {
        try {
            double standard = ZoneId.of(zone)
                            .getRules()
                            .getStandardOffset(Instant.EPOCH.plusSeconds(1_600_000_000L))
                            .getTotalSeconds()
                    / Units.HOUR;
            if (offset != 0 && standard != offset) {
                raw.note("the file's hours are all of " + ClockWords.utc(offset) + ", though standard time there is "
                        + ClockWords.utc(standard) + ": clock times here are those of the file");
            }
        } catch (DateTimeException e) {
            raw.note("the file's time zone is not known; its offset, " + ClockWords.utc(offset) + ", is used");
        }
    }

    private static List<CsvField> fields(FileText text, int line, String[] names, boolean instants)
            throws WeatherFileException {
        List<CsvField> fields = new ArrayList<>();
        for (int i = 1; i < names.length; i++) {
            Matcher name = NAME.matcher(names[i]);
            if (!name.matches()) {
                continue;
            }
            String of = name.group(1);
            boolean instant = of.endsWith(INSTANT);
            WeatherColumn column = COLUMNS.get(instant ? of.substring(0, of.length() - INSTANT.length()) : of);
            if (column == null || (column.isIrradiance() && instant != instants) || has(fields, column)) {
                continue;
            }
            String unit = name.group(2) == null ? "" : name.group(2);
            fields.add(new CsvField(column, i, of, scale(text, line, column, of, unit), Double::isNaN));
        }
        // what is normal to the sun needs no second reading from the horizontal
        if (has(fields, WeatherColumn.DIRECT)) {
            fields.removeIf(field -> field.column() == WeatherColumn.DIRECT_HORIZONTAL);
        }
        return fields;
    }

    private static boolean has(List<CsvField> fields, WeatherColumn column) {
        return fields.stream().anyMatch(field -> field.column() == column);
    }

    private static double scale(FileText text, int line, WeatherColumn column, String name, String unit)
            throws WeatherFileException {
        double scale =
                switch (column) {
                    case WIND ->
                        switch (unit) {
                            case "m/s" -> 1;
                            case "km/h" -> 1000 / Units.HOUR;
                            case "mp/h", "mph" -> Units.MILE / Units.HOUR;
                            case "kn" -> 1852 / Units.HOUR; // international nautical mile, m
                            default -> Double.NaN;
                        };
                    case AIR, DEW -> unit.equals("°C") ? 1 : Double.NaN;
                    case PRESSURE -> unit.equals("hPa") ? 0.1 : Double.NaN;
                    case CLOUD -> unit.equals("%") ? 0.1 : Double.NaN;
                    case RELATIVE_HUMIDITY -> unit.equals("%") ? 1 : Double.NaN;
                    default -> unit.equals("W/m²") ? 1 : Double.NaN;
                };
        if (Double.isNaN(scale)) {
            throw text.error(
                    line,
                    name,
                    "the unit \"" + unit + "\"",
                    column == WeatherColumn.WIND ? "m/s, km/h, mp/h or kn" : "°C, %, hPa and W/m²",
                    "Fetch the file again in these units.");
        }
        return scale;
    }

    private static void addTime(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException {
        LocalDateTime time = Stamps.fullHour(raw.text(), line, "time", cells[0]);
        raw.add(line, time.getYear(), time.getMonthValue(), time.getDayOfMonth(), time.getHour());
    }
}
