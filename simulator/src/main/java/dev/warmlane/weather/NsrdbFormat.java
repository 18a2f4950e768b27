package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * NSRDB csv of the physical solar model, versions 3 and 4 (the national solar radiation database's own documentation of
 * its files): a line of names and a line of values on the place, its clock and the units, a line of column names, then a
 * row for each time step of one year or of a typical one. Irradiance is that of the minute in the row; several rows an
 * hour are averaged.
 */
final class NsrdbFormat implements WeatherFormat {

    private static final String ADVICE = "Fetch the file again with this column, in the publisher's usual units.";

    /** What multiplies the file's number, by the unit in small letters. */
    private static final Map<String, Double> SCALES = Map.ofEntries(
            Map.entry("w/m2", 1.0),
            Map.entry("w/m^2", 1.0),
            Map.entry("c", 1.0),
            Map.entry("°c", 1.0),
            Map.entry("%", 1.0),
            Map.entry("m/s", 1.0),
            Map.entry("mbar", 0.1),
            Map.entry("millibar", 0.1),
            Map.entry("hpa", 0.1),
            Map.entry("pa", 0.001),
            Map.entry("kpa", 1.0));

    @Override
    public String title() {
        return "NSRDB csv";
    }

    @Override
    public boolean recognises(FileText text) {
        return text.line(text.first()).startsWith("Source,Location ID,");
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        int first = text.first();
        List<String> keys = List.of(CsvRows.cells(text.line(first)));
        List<String> values = List.of(CsvRows.cells(text.line(first + 1)));
        List<String> names = names(text, first + 2);
        int[] time = new int[5];
        String[] of = {"Year", "Month", "Day", "Hour", "Minute"};
        for (int i = 0; i < time.length; i++) {
            time[i] = place(text, first + 2, names, of[i]);
        }
        int[] minutes = minutes(text, first + 3, time);
        double centre = 0;
        for (int minute : minutes) {
            centre += minute / 60.0 / minutes.length;
        }
        RawHeader header = new RawHeader(
                title(),
                site(text, first + 1, keys, values),
                first + 1,
                isUtc(text, first + 1, keys, values) ? RawHeader.Clock.UTC_WITH_OFFSET : RawHeader.Clock.LOCAL_STANDARD,
                minutes.length == 1,
                centre,
                true,
                0,
                WeatherYear.LongWaveOrigin.FILE);
        RawWeather raw = new RawWeather(text, header);
        List<CsvField> fields = fields(text, first, keys, values, names);
        CsvRows.read(raw, first + 3, text.lines() + 1, names.size(), time, new RowTime(minutes), fields);
        return HourMeans.of(raw, minutes.length);
    }

    private static List<String> names(FileText text, int line) {
        List<String> names = new ArrayList<>(List.of(CsvRows.cells(text.line(line))));
        while (!names.isEmpty() && names.get(names.size() - 1).isBlank()) {
            names.remove(names.size() - 1);
        }
        return names;
    }

    private static int place(FileText text, int line, List<String> names, String name) throws WeatherFileException {
        int place = names.indexOf(name);
        if (place < 0) {
            throw text.error(line, name, "no such column", "the column " + name, ADVICE);
        }
        return place;
    }

    /** The minutes that an hour has rows of, from the first rows. */
    private static int[] minutes(FileText text, int first, int[] time) throws WeatherFileException {
        TreeSet<Integer> minutes = new TreeSet<>();
        for (int line = first; line < first + 61 && line <= text.lines(); line++) {
            String[] cells = CsvRows.cells(text.line(line));
            if (cells.length > time[4] && !cells[time[4]].isBlank()) {
                minutes.add(CsvRows.whole(text, line, "Minute", cells[time[4]]));
            }
        }
        if (minutes.isEmpty() || minutes.first() < 0 || minutes.last() > 59) {
            throw text.error(first, "Minute", minutes.toString(), "0 to 59", "Correct the column.");
        }
        return minutes.stream().mapToInt(Integer::intValue).toArray();
    }

    private static String value(FileText text, int line, List<String> keys, List<String> values, String key)
            throws WeatherFileException {
        int place = keys.indexOf(key);
        if (place < 0 || place >= values.size()) {
            throw text.error(
                    line - 1, key, "no such name", "\"" + key + "\"", "Restore the first two lines of the file.");
        }
        return values.get(place);
    }

    private static double number(FileText text, int line, List<String> keys, List<String> values, String key)
            throws WeatherFileException {
        return text.number(line, key, value(text, line, keys, values, key));
    }

    private static boolean isUtc(FileText text, int line, List<String> keys, List<String> values)
            throws WeatherFileException {
        return number(text, line, keys, values, "Time Zone") == 0
                && number(text, line, keys, values, "Local Time Zone") != 0;
    }

    private static Site site(FileText text, int line, List<String> keys, List<String> values)
            throws WeatherFileException {
        double rows = number(text, line, keys, values, "Time Zone");
        double local = number(text, line, keys, values, "Local Time Zone");
        if (rows != local && rows != 0) {
            throw text.error(
                    line,
                    "Time Zone",
                    Occurrences.number(rows) + " beside a local one of " + Occurrences.number(local),
                    "the local one, or 0",
                    "Fetch the file again in local standard time.");
        }
        double latitude = number(text, line, keys, values, "Latitude");
        double longitude = number(text, line, keys, values, "Longitude");
        String city = value(text, line, keys, values, "City").strip();
        boolean named = !city.isEmpty() && !city.equals("-") && !city.equals("None");
        String name = named ? city : "";
        return Headers.site(
                text, line, name, latitude, longitude, number(text, line, keys, values, "Elevation"), local);
    }

    private static List<CsvField> fields(
            FileText text, int first, List<String> keys, List<String> values, List<String> names)
            throws WeatherFileException {
        Map<String, WeatherColumn> columns = Map.of(
                "GHI", WeatherColumn.GLOBAL,
                "DNI", WeatherColumn.DIRECT,
                "DHI", WeatherColumn.DIFFUSE,
                "Temperature", WeatherColumn.AIR,
                "Dew Point", WeatherColumn.DEW,
                "Relative Humidity", WeatherColumn.RELATIVE_HUMIDITY,
                "Pressure", WeatherColumn.PRESSURE,
                "Wind Speed", WeatherColumn.WIND);
        List<CsvField> fields = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            WeatherColumn column = columns.get(names.get(i));
            if (column != null) {
                String key = names.get(i) + " Units";
                String unit = value(text, first + 1, keys, values, key).strip();
                Double scale = SCALES.get(unit.toLowerCase(Locale.ROOT));
                if (scale == null) {
                    throw text.error(first + 1, key, "\"" + unit + "\"", column.unit(), ADVICE);
                }
                fields.add(new CsvField(column, i, names.get(i), scale, value -> value <= -9999));
            }
        }
        return fields;
    }

    private static final class RowTime implements CsvRows.TimeCells {
        private final int[] minutes;

        RowTime(int[] minutes) {
            this.minutes = minutes;
        }

        @Override
        public void add(RawWeather raw, int line, @Nullable String[] cells) throws WeatherFileException {
            FileText text = raw.text();
            int minute = CsvRows.whole(text, line, "Minute", cells[4]);
            boolean known = false;
            for (int of : minutes) {
                known |= of == minute;
            }
            if (!known) {
                throw text.error(
                        line,
                        "Minute",
                        Integer.toString(minute),
                        "one of the first hour's",
                        "Only files of one time step can be read.");
            }
            raw.add(
                    line,
                    CsvRows.whole(text, line, "Year", cells[0]),
                    CsvRows.whole(text, line, "Month", cells[1]),
                    CsvRows.whole(text, line, "Day", cells[2]),
                    CsvRows.whole(text, line, "Hour", cells[3]));
        }
    }
}
