package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import dev.warmlane.site.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoublePredicate;

/**
 * The project's own plain csv: lines {@code # key: value} on the place, a row of column names with units, and a row for
 * each hour of the year in local standard time, labelled by its start. The whole format is described in
 * {@code docs/formats.md}.
 */
final class PlainFormat implements WeatherFormat {

    static final String FIRST_LINE = "# Warmlane plain weather csv";
    static final String NAME = "name";
    static final String SOURCE = "source";
    static final String LATITUDE = "latitude, degrees north";
    static final String LONGITUDE = "longitude, degrees east";
    static final String ELEVATION = "elevation, m";
    static final String UTC_OFFSET = "utc offset, h";
    static final String IRRADIANCE = "irradiance";
    static final String CENTRE = "irradiance time, h after the start of the hour";
    static final String LONG_WAVE = "sky long-wave from";
    static final String CLOCK = "clock";
    static final String LABEL = "label";
    static final String WIND_HEIGHT = "wind height, m";
    private static final String LOCAL = "local standard time";
    private static final String UTC = "utc";
    private static final String START = "start of the hour";
    private static final String END = "end of the hour";
    private static final String TIME = "time";
    static final String MEAN = "mean over the hour";
    static final String INSTANT = "instant";

    /** Of what a file says of its source, characters. */
    private static final int SOURCE_AT_MOST = 500;

    /** Taken where there is no column of years: neither it nor its neighbours is a leap year. */
    static final int YEAR_UNLESS_GIVEN = 2002;

    private static final Map<String, Quantity> QUANTITIES = quantities();

    private record Quantity(WeatherColumn column, double scale) {}

    @Override
    public String title() {
        return "plain csv";
    }

    @Override
    public boolean recognises(FileText text) {
        return text.line(text.first()).startsWith("#");
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        Map<String, String> keys = new HashMap<>();
        Map<String, Integer> lineOf = new HashMap<>();
        int line = text.first();
        for (; text.line(line).startsWith("#"); line++) {
            // a spreadsheet splits at commas, may drop the blank behind one, and fills the line up with more
            String content = text.line(line).substring(1).replaceFirst("[,\\s]+$", "");
            int colon = content.indexOf(':');
            if (colon > 0) {
                String key = content.substring(0, colon)
                        .strip()
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("\\s*,\\s*", ", ");
                if (keys.put(key, content.substring(colon + 1).strip()) != null) {
                    throw text.error(
                            line,
                            key,
                            "it a second time, first on line " + lineOf.get(key),
                            "every key once",
                            "Remove one of the two lines.");
                }
                lineOf.put(key, line);
            }
        }
        RawWeather raw = new RawWeather(text, header(text, keys, lineOf));
        String[] names = CsvRows.cells(text.line(line).toLowerCase(Locale.ROOT).replaceFirst("[,\\s]+$", ""));
        String windHeight = keys.get(WIND_HEIGHT);
        if (windHeight != null) {
            int at = lineOf.getOrDefault(WIND_HEIGHT, 0);
            double height = text.number(at, WIND_HEIGHT, windHeight);
            if (!WeatherReadOptions.WIND_HEIGHT.holds(height)) {
                throw text.error(at, WIND_HEIGHT, windHeight, "1 to 200 m", "Correct the header line.");
            }
            raw.windHeight(height);
        }
        PlainTime time = new PlainTime(
                List.of(names),
                oneOf(text, keys, lineOf, LABEL, List.of(START, END)).equals(END));
        CsvRows.read(
                raw,
                line + 1,
                text.lines() + 1,
                names.length,
                time.places(text, line),
                time,
                fields(text, line, names));
        return raw;
    }

    private RawHeader header(FileText text, Map<String, String> keys, Map<String, Integer> lineOf)
            throws WeatherFileException {
        double[] numbers = new double[4];
        String[] wanted = {LATITUDE, LONGITUDE, ELEVATION, UTC_OFFSET};
        for (int i = 0; i < wanted.length; i++) {
            String value = keys.get(wanted[i]);
            if (value == null) {
                throw text.error(
                        0,
                        "",
                        "no header line \"# " + wanted[i] + ": ...\"",
                        "it before the column names",
                        "Add the line.");
            }
            numbers[i] = text.number(lineOf.getOrDefault(wanted[i], 0), wanted[i], value);
        }
        int line = lineOf.getOrDefault(LATITUDE, 0);
        Site site =
                Headers.site(text, line, keys.getOrDefault(NAME, ""), numbers[0], numbers[1], numbers[2], numbers[3]);
        boolean instants =
                oneOf(text, keys, lineOf, IRRADIANCE, List.of(MEAN, INSTANT)).equals(INSTANT);
        String centre = keys.get(CENTRE);
        int centreLine = lineOf.getOrDefault(CENTRE, 0);
        double centreHours = centre == null
                ? instants ? 0 : 0.5
                : Headers.centre(text, centreLine, CENTRE, text.number(centreLine, CENTRE, centre));
        String origin = oneOf(text, keys, lineOf, LONG_WAVE, List.of("file", "cloud cover", "clearness"));
        String source = Printable.cut(keys.getOrDefault(SOURCE, ""), SOURCE_AT_MOST);
        return new RawHeader(
                source.isEmpty() ? title() : title() + " (" + source + ")",
                site,
                lineOf.getOrDefault(UTC_OFFSET, 0),
                oneOf(text, keys, lineOf, CLOCK, List.of(LOCAL, UTC)).equals(UTC)
                        ? RawHeader.Clock.UTC_WITH_OFFSET
                        : RawHeader.Clock.LOCAL_STANDARD,
                instants,
                centreHours,
                true,
                0,
                WeatherYear.LongWaveOrigin.valueOf(
                        origin.toUpperCase(Locale.ROOT).replace(' ', '_')));
    }

    /** The one of the allowed words that the header has for a key; the first where it has none. */
    private static String oneOf(
            FileText text, Map<String, String> keys, Map<String, Integer> lineOf, String key, List<String> allowed)
            throws WeatherFileException {
        String value = keys.getOrDefault(key, allowed.get(0)).toLowerCase(Locale.ROOT);
        if (!allowed.contains(value)) {
            throw text.error(
                    lineOf.getOrDefault(key, 0),
                    key,
                    "\"" + value + "\"",
                    String.join(" or ", allowed),
                    "Correct the header line.");
        }
        return value;
    }

    private static List<CsvField> fields(FileText text, int line, String[] names) throws WeatherFileException {
        List<CsvField> fields = new ArrayList<>();
        DoublePredicate never = Double::isNaN;
        for (int i = 0; i < names.length; i++) {
            Quantity quantity = QUANTITIES.get(names[i]);
            if (List.of(names).indexOf(names[i]) < i) {
                throw text.error(
                        line, names[i], "the column a second time", "every column once", "Remove one of the two.");
            }
            if (quantity != null) {
                fields.add(new CsvField(quantity.column, i, names[i], quantity.scale, never));
            } else if (!List.of("year", "month", "day", "hour", TIME).contains(names[i])) {
                throw text.error(
                        line,
                        names[i],
                        "a column that is not known",
                        String.join(", ", QUANTITIES.keySet().stream().sorted().toList()),
                        "Correct the name or its unit, or remove the column.");
            }
        }
        return fields;
    }

    private static Map<String, Quantity> quantities() {
        Map<String, Quantity> all = new HashMap<>();
        all.put("global w/m2", new Quantity(WeatherColumn.GLOBAL, 1));
        all.put("direct w/m2", new Quantity(WeatherColumn.DIRECT, 1));
        all.put("diffuse w/m2", new Quantity(WeatherColumn.DIFFUSE, 1));
        all.put("sky long-wave w/m2", new Quantity(WeatherColumn.LONG_WAVE, 1));
        all.put("air degc", new Quantity(WeatherColumn.AIR, 1));
        all.put("dew point degc", new Quantity(WeatherColumn.DEW, 1));
        all.put("relative humidity %", new Quantity(WeatherColumn.RELATIVE_HUMIDITY, 1));
        all.put("pressure kpa", new Quantity(WeatherColumn.PRESSURE, 1));
        all.put("wind m/s", new Quantity(WeatherColumn.WIND, 1));
        all.put("cloud tenths", new Quantity(WeatherColumn.CLOUD, 1));
        all.put("sunshine h", new Quantity(WeatherColumn.SUNSHINE, 1));
        return Map.copyOf(all);
    }
}
