package dev.warmlane.weather;

import dev.warmlane.site.Site;
import dev.warmlane.units.Units;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * PVGIS typical year csv: lines on the place, a table of months and years, column names, rows in UTC with irradiance at
 * an instant, and a footer that explains the columns. Newer files tell that instant as an offset from the stamp;
 * without it the stamp itself is taken.
 */
final class PvgisFormat implements WeatherFormat {

    private static final String NAMES = "time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP";
    private static final String OFFSET = "Irradiance Time Offset (h)";
    private static final int HEADER_LINES_AT_MOST = 60;

    private static final List<CsvField> FIELDS = List.of(
            field(WeatherColumn.AIR, 1, "T2m", 1),
            field(WeatherColumn.RELATIVE_HUMIDITY, 2, "RH", 1),
            field(WeatherColumn.GLOBAL, 3, "G(h)", 1),
            field(WeatherColumn.DIRECT, 4, "Gb(n)", 1),
            field(WeatherColumn.DIFFUSE, 5, "Gd(h)", 1),
            field(WeatherColumn.LONG_WAVE, 6, "IR(h)", 1),
            field(WeatherColumn.WIND, 7, "WS10m", 1),
            field(WeatherColumn.PRESSURE, 9, "SP", Units.PASCAL));

    @Override
    public String title() {
        return "PVGIS TMY csv";
    }

    @Override
    public boolean recognises(FileText text) {
        return text.line(text.first()).startsWith("Latitude (decimal degrees)") || namesLine(text) > 0;
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        int names = namesLine(text);
        if (names == 0 || !withoutPadding(text.line(names)).equals(NAMES)) {
            throw text.error(
                    names,
                    "",
                    names == 0 ? "no line with the column names" : "\"" + text.line(names) + "\"",
                    "\"" + NAMES + "\"",
                    "Fetch the typical year again, as csv.");
        }
        double latitude = value(text, names, "Latitude (decimal degrees)", Double.NaN);
        double longitude = value(text, names, "Longitude (decimal degrees)", Double.NaN);
        double elevation = value(text, names, "Elevation (m)", Double.NaN);
        double offset = Headers.centre(text, lineOf(text, names, OFFSET), OFFSET, value(text, names, OFFSET, 0));
        Site site = Headers.site(text, text.first(), "", latitude, longitude, elevation, 0);
        boolean told = lineOf(text, names, OFFSET) > 0;
        RawHeader header = new RawHeader(
                title(),
                site,
                text.first(),
                RawHeader.Clock.UTC,
                true,
                offset,
                told,
                0,
                WeatherYear.LongWaveOrigin.FILE);
        RawWeather raw = new RawWeather(text, header);
        int end = names + 1;
        while (!text.isBlank(end) && Character.isDigit(text.line(end).charAt(0))) {
            end++;
        }
        CsvRows.read(raw, names + 1, end, NAMES.split(",").length, new int[] {0}, PvgisFormat::addTime, FIELDS);
        return raw;
    }

    private static CsvField field(WeatherColumn column, int index, String name, double scale) {
        return new CsvField(column, index, name, scale, Double::isNaN);
    }

    private static int namesLine(FileText text) {
        for (int line = 1; line <= HEADER_LINES_AT_MOST; line++) {
            if (text.line(line).startsWith("time(UTC)")) {
                return line;
            }
        }
        return 0;
    }

    private static double value(FileText text, int end, String key, double otherwise) throws WeatherFileException {
        int line = lineOf(text, end, key);
        if (line > 0) {
            String content = withoutPadding(text.line(line));
            return text.number(line, key, content.substring(content.indexOf(':') + 1));
        }
        if (Double.isNaN(otherwise)) {
            throw text.error(
                    0, "", "no line \"" + key + "\"", "it among the first lines", "Restore the header of the file.");
        }
        return otherwise;
    }

    /** A line without the commas that a spreadsheet fills it up with. */
    private static String withoutPadding(String line) {
        return line.replaceFirst("[,\\s]+$", "");
    }

    /** The header line with a key; 0 where there is none. */
    private static int lineOf(FileText text, int end, String key) {
        for (int line = 1; line < end; line++) {
            if (text.line(line).startsWith(key + ":")) {
                return line;
            }
        }
        return 0;
    }

    private static void addTime(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException {
        String stamp = cells[0] == null ? "" : cells[0];
        if (stamp.length() == 13 && stamp.charAt(8) == ':' && stamp.endsWith("00")) {
            try {
                raw.add(
                        line,
                        Integer.parseInt(stamp.substring(0, 4)),
                        Integer.parseInt(stamp.substring(4, 6)),
                        Integer.parseInt(stamp.substring(6, 8)),
                        Integer.parseInt(stamp.substring(9, 11)));
                return;
            } catch (NumberFormatException e) {
                // told below
            }
        }
        throw raw.text()
                .error(line, "time(UTC)", "\"" + stamp + "\"", "a full hour as YYYYMMDD:HH00", "Correct the stamp.");
    }
}
