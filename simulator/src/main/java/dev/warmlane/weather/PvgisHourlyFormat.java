package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * PVGIS hourly series csv of one year or many, on the horizontal: lines on the place and the plane, column names, rows in
 * UTC whose minute is that of the irradiance, and a footer. It has neither humidity nor pressure.
 */
final class PvgisHourlyFormat implements WeatherFormat {

    static final String TITLE = "PVGIS hourly series csv";

    private static final int HEADER_LINES_AT_MOST = 60;
    private static final Pattern SLOPE = Pattern.compile("Slope:\\s*(-?[\\d.]+).*");
    private static final Pattern STAMP = Pattern.compile("(\\d{4})(\\d{2})(\\d{2}):(\\d{2})(\\d{2})");

    @Override
    public String title() {
        return TITLE;
    }

    @Override
    public boolean recognises(FileText text) {
        return namesLine(text) > 0;
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        int names = namesLine(text);
        refuseTilted(text, names);
        double latitude = value(text, names, "Latitude (decimal degrees)");
        double longitude = value(text, names, "Longitude (decimal degrees)");
        double elevation = value(text, names, "Elevation (m)");
        Site site = Headers.site(text, text.first(), "", latitude, longitude, elevation, 0);
        Matcher first = stamp(text, names + 1, text.line(names + 1).split(",", -1)[0]);
        int minute = Integer.parseInt(first.group(5));
        RawHeader header = new RawHeader(
                TITLE,
                site,
                text.first(),
                RawHeader.Clock.UTC,
                true,
                minute / 60.0,
                true,
                0,
                WeatherYear.LongWaveOrigin.FILE);
        RawWeather raw = new RawWeather(text, header);
        int end = names + 1;
        while (!text.isBlank(end) && Character.isDigit(text.line(end).charAt(0))) {
            end++;
        }
        List<String> columns = List.of(CsvRows.cells(text.line(names)));
        CsvRows.read(
                raw,
                names + 1,
                end,
                columns.size(),
                new int[] {0},
                (to, line, cells) -> addTime(to, line, cells, minute),
                fields(columns));
        return raw;
    }

    private static void refuseTilted(FileText text, int names) throws WeatherFileException {
        int line = lineOf(text, names, "Slope");
        Matcher slope = SLOPE.matcher(line == 0 ? "" : text.line(line).strip());
        if (!slope.matches() || text.number(line, "Slope", slope.group(1)) != 0) {
            throw text.error(
                    line,
                    "Slope",
                    line == 0
                            ? "a PVGIS hourly series that does not say what plane it is of"
                            : "a PVGIS hourly series on a tilted plane, \""
                                    + text.line(line).strip() + "\"",
                    "the horizontal, slope 0",
                    "Light on a tilted plane cannot be turned back: fetch the hourly series again with slope 0 and its"
                            + " components, or the typical year, which has humidity too.");
        }
    }

    private static List<CsvField> fields(List<String> names) {
        List<CsvField> fields = new ArrayList<>();
        add(fields, names, WeatherColumn.GLOBAL, "G(i)");
        add(fields, names, WeatherColumn.DIRECT_HORIZONTAL, "Gb(i)");
        add(fields, names, WeatherColumn.DIFFUSE, "Gd(i)");
        add(fields, names, WeatherColumn.AIR, "T2m");
        add(fields, names, WeatherColumn.WIND, "WS10m");
        return fields;
    }

    private static void add(List<CsvField> fields, List<String> names, WeatherColumn column, String name) {
        int place = names.indexOf(name);
        if (place >= 0) {
            fields.add(new CsvField(column, place, name, 1, Double::isNaN));
        }
    }

    private static int namesLine(FileText text) {
        for (int line = 1; line <= HEADER_LINES_AT_MOST; line++) {
            String names = text.line(line);
            if (names.startsWith("time,") && names.contains("(i)")) {
                return line;
            }
        }
        return 0;
    }

    private static int lineOf(FileText text, int end, String key) {
        for (int line = 1; line < end; line++) {
            if (text.line(line).startsWith(key + ":")) {
                return line;
            }
        }
        return 0;
    }

    private static double value(FileText text, int end, String key) throws WeatherFileException {
        int line = lineOf(text, end, key);
        if (line == 0) {
            throw text.error(
                    0, "", "no line \"" + key + "\"", "it among the first lines", "Restore the header of the file.");
        }
        String content = text.line(line).replaceFirst("[,\\s]+$", "");
        return text.number(line, key, content.substring(content.indexOf(':') + 1));
    }

    private static void addTime(RawWeather raw, int line, @Nullable String[] cells, int minute)
            throws WeatherFileException {
        Matcher stamp = stamp(raw.text(), line, cells[0]);
        if (Integer.parseInt(stamp.group(5)) != minute) {
            throw raw.text()
                    .error(
                            line,
                            "time",
                            "minute " + stamp.group(5),
                            minute + " as in the rows before",
                            "Only hourly files can be read: one row an hour, all of the same minute.");
        }
        raw.add(
                line,
                Integer.parseInt(stamp.group(1)),
                Integer.parseInt(stamp.group(2)),
                Integer.parseInt(stamp.group(3)),
                Integer.parseInt(stamp.group(4)));
    }

    private static Matcher stamp(FileText text, int line, @Nullable String cell) throws WeatherFileException {
        Matcher stamp = STAMP.matcher(cell == null ? "" : cell);
        if (!stamp.matches()) {
            throw text.error(line, "time", "\"" + cell + "\"", "a time as YYYYMMDD:HHMM", "Correct the stamp.");
        }
        return stamp;
    }
}
